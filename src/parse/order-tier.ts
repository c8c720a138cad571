/** One cake of an order: its tin, recipe, flavours, height, layers and finishes, and whether they go together. */
import { finishedHeight } from '../compute/batter/finished-height.ts';
import { levelMm } from '../compute/orders/levelled.ts';
import { stacksOnItself, tierBakes, tierLayers } from '../compute/orders/tier-bakes.ts';
import { tinBoundsMm } from '../compute/shapes/index.ts';
import type { TierAsk } from '../domain/order.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import { FINISHES, FLAVOURS, RECIPES, readNames, TINS } from './known-names.ts';
import { readFinishAsks } from './order-finishes.ts';
import { readName } from './order-names.ts';
import { checkClash, checkUses } from './order-tier-finishes.ts';
import type { OrderContext } from './orders.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { exampleAt } from './schemas/example-at.ts';
import { orderSchema } from './schemas/order-schema.ts';
import { parseFinishedHeight } from './units/length.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

function checkHeight(reader: YamlReader, at: YamlPath, ask: TierAsk, tin: Tin, recipe: Recipe): void {
  const { bakes, heightMm } = tierBakes(ask, tin, recipe);
  const height = finishedHeight(recipe, tin, heightMm);
  const key = bakes > 1 && ask.finishedHeightMm === undefined ? 'bakes' : 'finished_height';
  if (!height.ok) for (const problem of height.problems) reader.report(problem, ...at, key);
}

/** Levelling that leaves nothing of so low a bake. */
function checkLevel(reader: YamlReader, at: YamlPath, ask: TierAsk, tin: Tin, recipe: Recipe): void {
  const { heightMm = recipe.finishedHeightMm } = tierBakes(ask, tin, recipe);
  const cut = levelMm(recipe, tin);
  if (cut < heightMm) return;
  const message = `${quote(recipe.name)} loses ${cut} mm to be level, and a bake here is only ${Math.round(heightMm)} mm high`;
  const hint = `Bake it higher, or write a smaller 'level' in the recipe.`;
  reader.report(error('level-too-deep', message, hint), ...at, 'recipe');
}

/** Every bake is cut into the same number of layers, and never less than one. */
function checkBakes(reader: YamlReader, at: YamlPath, ask: TierAsk, tin: Tin, recipe: Recipe): void {
  const { bakes } = tierBakes(ask, tin, recipe);
  if (bakes > 1 && !stacksOnItself(tin)) {
    const message = `Cakes of ${quote(tin.id)} cannot be stacked into one`;
    reader.report(
      error('bakes-not-stacked', message, 'Leave bakes out, or choose another tin.'),
      ...at,
      'bakes',
    );
  }
  if (bakes === 1 || ask.layers === undefined || ask.layers % bakes === 0) return;
  const more = Math.ceil(ask.layers / bakes) * bakes;
  const message = `${ask.layers} layers cannot be cut alike from ${bakes} bakes`;
  const hint = `Write 'layers: ${more}'${more > bakes ? ` or 'layers: ${more - bakes}'` : ''}.`;
  reader.report(error('bakes-layers', message, hint), ...at, 'layers');
}

function checkLayers(reader: YamlReader, at: YamlPath, ask: TierAsk, tin: Tin, recipe: Recipe): void {
  const filling = ask.finishes.findIndex(({ use }) => use === 'filling');
  if (filling < 0 || tierLayers(ask, tierBakes(ask, tin, recipe), recipe) > 1) return;
  const message = 'This cake has one layer, so there is nothing for a filling to lie between';
  const hint = "Write 'layers: 2' or more, or leave the filling out.";
  reader.report(error('filling-without-joint', message, hint), ...at, 'finishes', filling);
}

/** At the boiling point of water and below no middle of a cake is ever done. */
const COOLEST_C = 100;

/** Reports a recipe whose oven never bakes a cake through. */
export function checkHeat(reader: YamlReader, at: YamlPath, { name, ovenC }: Recipe): void {
  if (ovenC > COOLEST_C) return;
  const message = `${quote(name)} is baked at ${Math.round(ovenC)} °C, which never bakes a cake through`;
  reader.report(
    error('oven-too-cool', message, "Put the recipe's oven right, or choose another recipe."),
    ...at,
    'recipe',
  );
}

function checkWidth(reader: YamlReader, at: YamlPath, ask: TierAsk, tin: Tin): void {
  if (ask.finishes.length === 0 || tinBoundsMm(tin) !== null) return;
  const message = `Nobody knows how wide ${quote(tin.id)} is, so nothing that goes on it can be worked out`;
  const hint = 'Give the tin its shape and size, or leave the finishes out.';
  reader.report(error('finish-without-width', message, hint), ...at, 'finishes');
}

/** A tier is a cake unless it is a dummy, so that the schema alone cannot ask for these. */
function checkNamed(reader: YamlReader, at: YamlPath): void {
  for (const key of ['tin', 'recipe']) {
    if (at[0] !== 'tiers' || reader.has(...at, key)) continue;
    const index = Number(at[1]) + 1;
    const hint = `Add it, for example '${key}: ${exampleAt(orderSchema, [...at, key], null)}'.`;
    reader.report(error('key-missing', `Item ${index} of 'tiers' has no '${key}'`, hint), ...at);
  }
}

/** The name of the tin; a tin of several cups is refused by what it is. */
function readTin(reader: YamlReader, at: YamlPath, context: OrderContext): string | undefined {
  const name = reader.text(...at, 'tin');
  if (name === undefined || !context.bunTins.ids.includes(name))
    return readName(reader, [...at, 'tin'], TINS, context.tins);
  const message = `${quote(name)} is a tin of several cups, which bakes no whole cake`;
  reader.report(
    error('bun-tin-as-tin', message, "Name a tin of 'tins', or write it under 'small_cakes'."),
    ...at,
    'tin',
  );
  return undefined;
}

/** The flavours of a cake, those that are known. */
export const readFlavours = (reader: YamlReader, at: YamlPath, context: OrderContext): string[] =>
  reader.has(...at, 'flavours') ? readNames(reader, [...at, 'flavours'], FLAVOURS, context.flavours) : [];

/** A tier, or a cutting cake; null after reporting what is wrong with it. */
export function readTier(reader: YamlReader, at: YamlPath, context: OrderContext): TierAsk | null {
  checkNamed(reader, at);
  const whole = complete<Omit<TierAsk, 'finishedHeightMm' | 'layers' | 'bakes' | 'beside' | 'small'>>({
    tinId: readTin(reader, at, context),
    recipeId: readName(reader, [...at, 'recipe'], RECIPES, context.recipes),
    flavourIds: readFlavours(reader, at, context),
    count: reader.has(...at, 'count') ? reader.number(...at, 'count') : 1,
    finishes: readFinishAsks(reader, [...at, 'finishes'], FINISHES, context.finishes),
  });
  const optional = present({
    finishedHeightMm: reader.parsed(parseFinishedHeight, ...at, 'finished_height')?.mm,
    layers: reader.number(...at, 'layers'),
    bakes: reader.number(...at, 'bakes'),
  });
  if (whole === null) return null;
  const ask: TierAsk = { ...whole, ...optional };
  const tin = context.found.tins.find(({ id }) => id === ask.tinId);
  const recipe = context.found.recipes.find(({ id }) => id === ask.recipeId);
  if (tin !== undefined && recipe !== undefined) {
    checkHeight(reader, at, ask, tin, recipe);
    checkBakes(reader, at, ask, tin, recipe);
    checkLevel(reader, at, ask, tin, recipe);
    checkLayers(reader, at, ask, tin, recipe);
  }
  if (tin !== undefined) checkWidth(reader, at, ask, tin);
  if (recipe !== undefined) checkHeat(reader, at, recipe);
  checkUses(reader, at, ask.finishes, context.found.finishes);
  checkClash(reader, at, ask.finishes, context.found.finishes);
  return ask;
}
