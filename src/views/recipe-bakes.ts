/** What the log has taught about one recipe in this kitchen's oven, and the guidance that follows for any tin. */
import {
  BAKE_CONSTANTS,
  type BakeConstants,
  type BakeGuidance,
  bakeGuidance,
  classOfMethod,
  doneAtAltitudeC,
  fitLog,
  type LogFit,
  RECIPE_CLASSES,
  type RecipeClass,
} from '../compute/bake/index.ts';
import type { BakeLogRow } from '../domain/bake-log.ts';
import type { Content } from '../domain/content.ts';
import { type OvenSetting, PLAIN_OVEN } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';

export interface RecipeBakes {
  recipe: Recipe;
  recipeClass: RecipeClass;
  oven: OvenSetting;
  /** Logged bakes of this recipe, any flavour, oldest first. */
  rows: readonly BakeLogRow[];
  fit: LogFit;
  constants: BakeConstants;
  /** Guidance for a tin baked to a height in mm, worked out once; null when the oven is too cool to bake in. */
  guidance(tin: Tin, heightMm: number): BakeGuidance | null;
}

export type BakeContent = Pick<Content, 'kitchen'> & Partial<Pick<Content, 'bakeLog' | 'altitudeM'>>;

/** The core that guidance speaks of: the kitchen's own, or a hollow one it might buy. */
export const spokenCore = ({ core }: OvenSetting): 'hollow' | 'solid' =>
  core === 'solid' ? 'solid' : 'hollow';

/** The model's constants at a kitchen's altitude. */
export const constantsAt = (altitudeM: number | null): BakeConstants => ({
  ...BAKE_CONSTANTS,
  centreC: doneAtAltitudeC(altitudeM ?? 0, BAKE_CONSTANTS.centreC),
});

/** How high this recipe's cake stands in a tin, mm: its own height, or what the tin lets it have. */
export const heightInTinMm = (recipe: Recipe, tin: Tin): number =>
  Math.min(recipe.finishedHeightMm, tin.depthMm + recipe.allowedRiseMm);

/** The bakes of one recipe. */
export function recipeBakes(recipe: Recipe, content: BakeContent): RecipeBakes {
  const { kitchen, bakeLog = [], altitudeM = null } = content;
  const oven = kitchen.oven ?? PLAIN_OVEN;
  const recipeClass =
    recipe.bakeClass === undefined ? classOfMethod(recipe.method) : RECIPE_CLASSES[recipe.bakeClass];
  const rows = bakeLog.filter(({ recipeId }) => recipeId === recipe.id).map((row) => withHeight(row, recipe));
  const constants = constantsAt(altitudeM);
  const fit = fitLog(rows, { recipeClass, heightMm: recipe.finishedHeightMm }, constants);
  const known = new Map<string, BakeGuidance | null>();
  const work = (tin: Tin, heightMm: number): BakeGuidance | null => {
    const ask = {
      tin,
      heightMm,
      recipeOvenC: recipe.ovenC,
      core: spokenCore(oven),
      band: false,
      dial: oven.dial,
    };
    const plain = bakeGuidance(ask, fit, constants);
    if (!plain.ok) return null;
    const cored = oven.core !== 'none' && plain.value.coreIsWorthIt && plain.value.withCore !== null;
    if (!oven.band || cored || !plain.value.edgeNeedsCare) return plain.value;
    const banded = bakeGuidance({ ...ask, band: true }, fit, constants);
    return banded.ok ? banded.value : plain.value;
  };
  const guidance = (tin: Tin, heightMm: number): BakeGuidance | null => {
    const key = `${tin.id} ${tin.depthMm} ${heightMm}`;
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = work(tin, heightMm);
    known.set(key, made);
    return made;
  };
  return { recipe, recipeClass, oven, rows, fit, constants, guidance };
}

/** A bake whose height nobody measured counts with what the tin lets it have, and is told apart by that alone. */
function withHeight(row: BakeLogRow, recipe: Recipe): BakeLogRow {
  const limited = heightInTinMm(recipe, row.tin);
  return row.finishedHeightMm === undefined && limited < recipe.finishedHeightMm
    ? { ...row, finishedHeightMm: limited }
    : row;
}
