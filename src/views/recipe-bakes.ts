/** What the log has taught about one recipe in this kitchen's oven, and the guidance that follows for any tin. */
import {
  BAKE_CONSTANTS,
  type BakeConstants,
  type BakeGuidance,
  bakeGuidance,
  classOfMethod,
  compositionBelief,
  doneAtAltitudeC,
  type FactorBelief,
  fitLog,
  type LogFit,
  type MakeUp,
  makeUp,
  type OvenOffset,
  ovenOffset,
  priorBelief,
  priorFromElsewhere,
  RECIPE_CLASSES,
  type RecipeClass,
  type WaterLoss,
  waterLoss,
  weighingsOf,
} from '../compute/bake/index.ts';
import { measuredFills } from '../compute/batter/logged-fills.ts';
import type { BakeLogRow } from '../domain/bake-log.ts';
import type { Content } from '../domain/content.ts';
import { type Kitchen, type OvenSetting, ovenNamed } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';

export interface RecipeBakes {
  recipe: Recipe;
  recipeClass: RecipeClass;
  oven: OvenSetting;
  /** Whether the kitchen has others, so that bakes must say where they were made. */
  severalOvens: boolean;
  /** Logged bakes of this recipe in this oven, any flavour, oldest first. */
  rows: readonly BakeLogRow[];
  /** Those in other ovens too. */
  logged: readonly BakeLogRow[];
  /** Bakes in other ovens that the times started from; 0 where there are none. */
  elsewhere: number;
  ovenOf(row: BakeLogRow): OvenSetting;
  /** Bakes of the log that could tell the yield, whether or not they are enough. */
  measured: number;
  makeUp: MakeUp;
  water: WaterLoss;
  /** How far the oven is off its dial; null while the probe's bakes cannot tell. */
  offset: OvenOffset | null;
  /** Believed before this oven's own bakes. */
  prior: FactorBelief;
  fit: LogFit;
  constants: BakeConstants;
  /** Guidance for a tin baked to a height in mm, worked out once; null when the oven is too cool to bake in. */
  guidance(tin: Tin, heightMm: number): BakeGuidance | null;
}

export type BakeContent = Pick<Content, 'kitchen'> &
  Partial<Pick<Content, 'bakeLog' | 'altitudeM' | 'ingredients'>>;

/** The core that guidance speaks of: the kitchen's own, or a hollow one it might buy. */
const spokenCore = ({ core }: OvenSetting): 'hollow' | 'solid' => (core === 'solid' ? 'solid' : 'hollow');

/** The model's constants at a kitchen's altitude. */
const constantsAt = (altitudeM: number | null): BakeConstants => ({
  ...BAKE_CONSTANTS,
  centreC: doneAtAltitudeC(altitudeM ?? 0, BAKE_CONSTANTS.centreC),
});

/** How high this recipe's cake stands in a tin, mm: its own height, or what the tin lets it have. */
export const heightInTinMm = (recipe: Recipe, tin: Tin): number =>
  Math.min(recipe.finishedHeightMm, tin.depthMm + recipe.allowedRiseMm);

const withBatterHeat = (row: BakeLogRow, recipe: Recipe, kitchen: Kitchen): BakeLogRow =>
  row.batterC === undefined ? { ...row, ...batterOf(recipe, kitchen) } : row;

/** The batter's temperature where recipe or kitchen name it. */
function batterOf({ batterC }: Recipe, kitchen: Kitchen): { batterC?: number } {
  const known = batterC ?? kitchen.batterC;
  return known === undefined ? {} : { batterC: known };
}

/** What is believed before this oven's own bakes: what another taught, else the make-up or the class. */
function priorOf(
  { bakeStart }: Recipe,
  recipeClass: RecipeClass,
  { timeFactor }: MakeUp,
  elsewhere: LogFit,
  constants: BakeConstants,
): FactorBelief {
  if (elsewhere.plain.bakes > 0) return priorFromElsewhere(elsewhere, constants);
  return bakeStart === 'composition'
    ? compositionBelief(recipeClass, timeFactor, constants)
    : priorBelief(recipeClass, constants);
}

/** Remembers the guidance of each tin and height. */
function remembered(
  work: (tin: Tin, heightMm: number) => BakeGuidance | null,
): (tin: Tin, heightMm: number) => BakeGuidance | null {
  const known = new Map<string, BakeGuidance | null>();
  return (tin, heightMm) => {
    const key = `${tin.id} ${tin.depthMm} ${heightMm}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = work(tin, heightMm);
    known.set(key, made);
    return made;
  };
}

function guidanceFor(
  recipe: Recipe,
  oven: OvenSetting,
  fit: LogFit,
  constants: BakeConstants,
): RecipeBakes['guidance'] {
  return remembered((tin, heightMm) => {
    const ask = {
      tin,
      heightMm,
      recipeOvenC: recipe.ovenC,
      core: spokenCore(oven),
      band: false,
      foam: recipe.method === 'angel',
      dial: oven.dial,
    };
    const plain = bakeGuidance(ask, fit, constants);
    if (!plain.ok) return null;
    const cored = oven.core !== 'none' && plain.value.coreIsWorthIt && plain.value.withCore !== null;
    if (!oven.band || cored || !plain.value.edgeNeedsCare) return plain.value;
    const banded = bakeGuidance({ ...ask, band: true }, fit, constants);
    return banded.ok ? banded.value : plain.value;
  });
}

/** The bakes of one recipe in the oven it is baked in. */
export function recipeBakes(recipe: Recipe, content: BakeContent): RecipeBakes {
  const { kitchen, bakeLog = [], altitudeM = null, ingredients = [] } = content;
  const oven = ovenNamed(kitchen, recipe.ovenId);
  const recipeClass =
    recipe.bakeClass === undefined ? classOfMethod(recipe.method) : RECIPE_CLASSES[recipe.bakeClass];
  const logged = bakeLog
    .filter(({ recipeId }) => recipeId === recipe.id)
    .map((row) => withBatterHeat(withHeight(row, recipe), recipe, kitchen));
  const isHere = (row: BakeLogRow): boolean => ovenNamed(kitchen, row.ovenId) === oven;
  const rows = logged.filter(isHere);
  const constants = { ...constantsAt(altitudeM), ...batterOf(recipe, kitchen) };
  const made = makeUp(recipe.formula, ingredients);
  const asked = { recipeClass, heightMm: recipe.finishedHeightMm };
  const elsewhere = fitLog(
    logged.filter((row) => !isHere(row)),
    asked,
    constants,
  );
  const prior = priorOf(recipe, recipeClass, made, elsewhere, constants);
  const fit = fitLog(rows, { ...asked, prior }, constants);
  return {
    recipe,
    recipeClass,
    oven,
    severalOvens: (kitchen.furtherOvens ?? []).length > 0,
    rows,
    logged,
    elsewhere: elsewhere.plain.bakes,
    ovenOf: (row) => ovenNamed(kitchen, row.ovenId),
    measured: measuredFills(bakeLog, recipe).length,
    makeUp: made,
    water: waterLoss({ ...recipe, weighings: weighingsOf(logged) }),
    offset: ovenOffset(rows, asked, constants),
    prior,
    fit,
    constants,
    guidance: guidanceFor(recipe, oven, fit, constants),
  };
}

/** A bake whose height nobody measured counts with what the tin lets it have, and is told apart by that alone. */
function withHeight(row: BakeLogRow, recipe: Recipe): BakeLogRow {
  const limited = heightInTinMm(recipe, row.tin);
  return row.finishedHeightMm === undefined && limited < recipe.finishedHeightMm
    ? { ...row, finishedHeightMm: limited }
    : row;
}
