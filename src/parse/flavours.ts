/** flavours/ID.yaml: what changes in a recipe's formula, for which recipes, and why it still balances. */
import type { Adjustment, Basis, Flavour } from '../domain/flavour.ts';
import type { Problem } from '../domain/problem.ts';
import { type FormulaLine, MIXING_METHODS, type MixingMethod, type Recipe } from '../domain/recipe.ts';
import { checkClaim } from './claims.ts';
import { readAdjustment } from './flavours-adjustment.ts';
import type { Shelf } from './formula.ts';
import { RECIPES, readNames } from './known-names.ts';
import { error, warning } from './problems.ts';
import { quote } from './quote.ts';
import { flavourSchema } from './schemas/flavour-schema.ts';
import { plainLines } from './yaml/readable-text.ts';
import { complete, isSound, present, type YamlReader, yamlReader } from './yaml/yaml-reader.ts';
import { yamlSource } from './yaml/yaml-source.ts';

export interface FlavourContext {
  shelf: Shelf;
  /** Recipes that could be read. */
  recipes: readonly Recipe[];
  /** Ids of recipes that are there but wrong. */
  brokenRecipes: readonly string[];
}

export interface FlavourOutcome {
  flavour: Flavour | null;
  problems: Problem[];
}

function readSuits(reader: YamlReader, context: FlavourContext): Flavour['suits'] {
  if (reader.has('suits') && !reader.has('suits', 'recipes') && !reader.has('suits', 'methods')) {
    const hint = "Write 'suits: { recipes: [vanilla] }', or 'suits: { methods: [creamed] }'.";
    reader.report(error('suits-empty', 'This flavour does not say what it suits', hint), 'suits');
  }
  const known = { ids: context.recipes.map(({ id }) => id), broken: context.brokenRecipes };
  const methods = reader.texts('suits', 'methods') ?? [];
  return {
    recipeIds: readNames(reader, ['suits', 'recipes'], RECIPES, known),
    methods: MIXING_METHODS.filter((method): method is MixingMethod => methods.includes(method)),
  };
}

function holds(lines: readonly FormulaLine[], basis: Basis, earlier: readonly Adjustment[]): boolean {
  if ('whole' in basis) return true;
  const put = earlier.flatMap((adjustment) => {
    if (adjustment.kind === 'multiply') return [];
    if (adjustment.kind === 'split-self-raising') return [adjustment.flour, adjustment.powder];
    return [adjustment.entry];
  });
  const entries = [...lines, ...put];
  return 'role' in basis
    ? entries.some((line) => line.role === basis.role)
    : entries.some((line) => line.ingredientId === basis.ingredientId);
}

/** Warns of an adjustment that finds nothing to change in any recipe that the flavour suits. */
function checkEffect(
  reader: YamlReader,
  adjustments: readonly (Adjustment | null)[],
  recipes: readonly Recipe[],
): void {
  if (recipes.length === 0) return;
  adjustments.forEach((adjustment, index) => {
    if (adjustment === null || adjustment.kind === 'split-self-raising') return;
    const earlier = adjustments.slice(0, index).filter((one) => one !== null);
    const { basis } = adjustment;
    if (recipes.some((recipe) => holds(recipe.formula, basis, earlier))) return;
    const what = 'role' in basis ? basis.role : 'ingredientId' in basis ? basis.ingredientId : 'batter';
    const hint = 'Check the name, or delete the adjustment.';
    const message = `None of the recipes this flavour suits holds ${quote(what)}, so this changes nothing`;
    reader.report(warning('adjustment-without-effect', message, hint), 'adjustments', index);
  });
}

function readAdjustments(reader: YamlReader, shelf: Shelf): (Adjustment | null)[] {
  return Array.from({ length: reader.items('adjustments') }, (_, index) =>
    readAdjustment(reader, ['adjustments', index], shelf),
  );
}

function read(reader: YamlReader, id: string, context: FlavourContext): Flavour | null {
  checkClaim(reader, 'name');
  checkClaim(reader, 'summary');
  const suits = readSuits(reader, context);
  const adjustments = readAdjustments(reader, context.shelf);
  checkEffect(
    reader,
    adjustments,
    context.recipes.filter(
      (recipe) => suits.recipeIds.includes(recipe.id) || suits.methods.includes(recipe.method),
    ),
  );
  const whole = complete<Omit<Flavour, 'method'>>({
    id,
    name: reader.text('name'),
    summary: reader.text('summary'),
    suits,
    why: reader.text('why')?.trim(),
    batter: reader.word(['grows'] as const, 'batter') ?? 'kept',
    adjustments: adjustments.filter((one) => one !== null),
  });
  if (whole === null || !isSound(reader.problems) || adjustments.includes(null)) return null;
  return { ...whole, ...present({ method: reader.text('method')?.trim() }) };
}

/** The flavour of a file's text, or everything that is wrong with it. The id is the file's name. */
export function parseFlavourYaml(
  text: string,
  file: string,
  id: string,
  context: FlavourContext,
): FlavourOutcome {
  const source = yamlSource(plainLines(text), file);
  if (!source.ok) return { flavour: null, problems: source.problems };
  const reader = yamlReader(source.value, flavourSchema);
  const flavour = read(reader, id, context);
  return { flavour, problems: reader.problems };
}
