/** One tier of an order: its tin, recipe, flavours, height, layers and finishes, and whether they go together. */
import { finishedHeight } from '../compute/batter/finished-height.ts';
import { finishClashes } from '../compute/finishes/clashes.ts';
import { tinBoundsMm } from '../compute/shapes/index.ts';
import type { Finish } from '../domain/finish.ts';
import type { TierAsk } from '../domain/order.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import { FINISHES, FLAVOURS, RECIPES, readNames, TINS } from './known-names.ts';
import { readFinishAsks } from './order-finishes.ts';
import { readName } from './order-names.ts';
import type { OrderContext } from './orders.ts';
import { error } from './problems.ts';
import { orList, quote } from './quote.ts';
import { parseFinishedHeight } from './units/length.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';

type At = readonly ['tiers', number];

function checkHeight(reader: YamlReader, at: At, ask: TierAsk, tin: Tin, recipe: Recipe): void {
  const height = finishedHeight(recipe, tin, ask.finishedHeightMm);
  if (!height.ok) for (const problem of height.problems) reader.report(problem, ...at, 'finished_height');
}

/** Ways a finish can be used, in the words of the file. */
const usesOf = ({ use }: Finish): string[] => Object.keys(use);

function checkUses(reader: YamlReader, at: At, ask: TierAsk, finishes: readonly Finish[]): void {
  ask.finishes.forEach(({ finishId, use }, index) => {
    const finish = finishes.find(({ id }) => id === finishId);
    if (finish === undefined) return;
    if (finish.use[use] === undefined) {
      const hint = `It can be used as ${orList(usesOf(finish))}; or add '${use}' to its file.`;
      const message = `${quote(finishId)} does not say how it is used as ${use}`;
      reader.report(error('finish-use-missing', message, hint), ...at, 'finishes', index, 'use');
    }
  });
}

/** Only what this tier uses of each finish counts: jam that could also coat is a filling here. */
function asUsed(ask: TierAsk, finishes: readonly Finish[]): Finish[] {
  return ask.finishes.flatMap(({ finishId, use }) => {
    const finish = finishes.find(({ id }) => id === finishId);
    return finish === undefined ? [] : [{ ...finish, use: { [use]: finish.use[use] } }];
  });
}

function checkClash(reader: YamlReader, at: At, ask: TierAsk, finishes: readonly Finish[]): void {
  for (const { code, message } of finishClashes(asUsed(ask, finishes))) {
    if (code !== 'cream-under-sheet') continue;
    reader.report(
      error('cream-under-sheet', message, 'Choose another filling, or leave the sheet off.'),
      ...at,
      'finishes',
    );
  }
}

function checkLayers(reader: YamlReader, at: At, ask: TierAsk, recipe: Recipe): void {
  const filling = ask.finishes.findIndex(({ use }) => use === 'filling');
  if (filling < 0 || (ask.layers ?? recipe.layers) > 1) return;
  const message = 'This cake has one layer, so there is nothing for a filling to lie between';
  const hint = "Write 'layers: 2' or more, or leave the filling out.";
  reader.report(error('filling-without-joint', message, hint), ...at, 'finishes', filling);
}

/** At the boiling point of water and below no middle of a cake is ever done. */
const COOLEST_C = 100;

function checkHeat(reader: YamlReader, at: At, { name, ovenC }: Recipe): void {
  if (ovenC > COOLEST_C) return;
  const message = `${quote(name)} is baked at ${Math.round(ovenC)} °C, which never bakes a cake through`;
  reader.report(
    error('oven-too-cool', message, "Put the recipe's oven right, or choose another recipe."),
    ...at,
    'recipe',
  );
}

function checkWidth(reader: YamlReader, at: At, ask: TierAsk, tin: Tin): void {
  if (ask.finishes.length === 0 || tinBoundsMm(tin) !== null) return;
  const message = `Nobody knows how wide ${quote(tin.id)} is, so nothing that goes on it can be worked out`;
  const hint = 'Give the tin its shape and size, or leave the finishes out.';
  reader.report(error('finish-without-width', message, hint), ...at, 'finishes');
}

/** A tier; null after reporting what is wrong with it. */
export function readTier(reader: YamlReader, index: number, context: OrderContext): TierAsk | null {
  const at = ['tiers', index] as const;
  const flavourIds = reader.has(...at, 'flavours')
    ? readNames(reader, [...at, 'flavours'], FLAVOURS, context.flavours)
    : [];
  const whole = complete<Omit<TierAsk, 'finishedHeightMm' | 'layers'>>({
    tinId: readName(reader, [...at, 'tin'], TINS, context.tins),
    recipeId: readName(reader, [...at, 'recipe'], RECIPES, context.recipes),
    flavourIds,
    count: reader.has(...at, 'count') ? reader.number(...at, 'count') : 1,
    finishes: readFinishAsks(reader, [...at, 'finishes'], FINISHES, context.finishes),
  });
  const optional = present({
    finishedHeightMm: reader.parsed(parseFinishedHeight, ...at, 'finished_height')?.mm,
    layers: reader.number(...at, 'layers'),
  });
  if (whole === null) return null;
  const ask: TierAsk = { ...whole, ...optional };
  const tin = context.found.tins.find(({ id }) => id === ask.tinId);
  const recipe = context.found.recipes.find(({ id }) => id === ask.recipeId);
  if (tin !== undefined && recipe !== undefined) checkHeight(reader, at, ask, tin, recipe);
  if (tin !== undefined) checkWidth(reader, at, ask, tin);
  if (recipe !== undefined) {
    checkLayers(reader, at, ask, recipe);
    checkHeat(reader, at, recipe);
  }
  checkUses(reader, at, ask, context.found.finishes);
  checkClash(reader, at, ask, context.found.finishes);
  return ask;
}
