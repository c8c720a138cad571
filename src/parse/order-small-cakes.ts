/** Cakes by the piece in an order: how many, of what, in which cups, with how much on each. */
import { finishedHeight } from '../compute/batter/finished-height.ts';
import { smallTin } from '../compute/orders/small-tin.ts';
import type { SmallBake } from '../domain/bun-tin.ts';
import { BOX_SIZES, SMALL_KINDS, type SmallCakes, type TierAsk } from '../domain/order.ts';
import { FINISHES, RECIPES, TINS } from './known-names.ts';
import { readName } from './order-names.ts';
import { checkHeat, readFlavours } from './order-tier.ts';
import type { OrderContext } from './orders.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { readSmallBake } from './small-bake.ts';
import { parseFinishedHeight } from './units/length.ts';
import { parseMass } from './units/mass.ts';
import { complete, present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

function readToppings(reader: YamlReader, path: YamlPath, context: OrderContext): SmallCakes['toppings'] {
  const found: SmallCakes['toppings'] = [];
  for (let index = 0; index < reader.items(...path); index += 1) {
    const at = [...path, index];
    const finishId = readName(reader, [...at, 'finish'], FINISHES, context.finishes);
    const eachG = reader.parsed(parseMass, ...at, 'each');
    if (finishId === undefined || eachG === undefined) continue;
    if (found.some((one) => one.finishId === finishId)) {
      const message = `${quote(finishId)} stands here twice`;
      reader.report(error('item-repeated', message, 'Delete one of the two, or add their grams up.'), ...at);
    } else found.push({ finishId, eachG });
  }
  return found;
}

/** The line's own minutes, else the tin's; refused without either. */
function bakeOf(reader: YamlReader, at: YamlPath, own: SmallBake | undefined): SmallBake | undefined {
  const asked = reader.has(...at, 'bake');
  const given = asked ? readSmallBake(reader, ...at, 'bake') : own;
  if (given !== undefined || asked) return given;
  const message = 'Nobody knows how long these small cakes bake: the bake times are made for whole cakes';
  const hint =
    "Add 'bake: { look: 18 min, by: 22 min }' by your own watch, here or to the bun tin in kitchen.yaml.";
  reader.report(error('small-cakes-minutes', message, hint), ...at);
  return undefined;
}

/** Small cakes; null after reporting what is wrong with them. */
export function readSmallCakes(reader: YamlReader, at: YamlPath, context: OrderContext): TierAsk | null {
  const names = {
    ids: [...context.tins.ids, ...context.bunTins.ids],
    broken: context.tins.broken === null ? null : [...context.tins.broken, ...(context.bunTins.broken ?? [])],
  };
  const tinId = readName(reader, [...at, 'tin'], TINS, names);
  const tin = tinId === undefined ? null : smallTin(context.found, tinId);
  const small = complete<Omit<SmallCakes, 'caseG'>>({
    kind: reader.word(SMALL_KINDS, ...at, 'kind'),
    bake: tin === null ? undefined : bakeOf(reader, at, tin.bake),
    toppings: readToppings(reader, [...at, 'finishes'], context),
    box: BOX_SIZES.find((size) => size === (reader.number(...at, 'box') ?? 12)),
  });
  const caseG = reader.parsed(parseMass, ...at, 'case');
  const finishedHeightMm = reader.parsed(parseFinishedHeight, ...at, 'finished_height')?.mm;
  const whole = complete<Omit<TierAsk, 'finishedHeightMm' | 'layers' | 'beside' | 'small'>>({
    tinId,
    recipeId: readName(reader, [...at, 'recipe'], RECIPES, context.recipes),
    flavourIds: readFlavours(reader, at, context),
    count: reader.number(...at, 'pieces'),
    finishes: [],
  });
  if (whole === null || small === null || tin === null) return null;
  const recipe = context.found.recipes.find(({ id }) => id === whole.recipeId);
  if (recipe !== undefined) {
    checkHeat(reader, at, recipe);
    const height = finishedHeight(recipe, tin.cup, finishedHeightMm);
    if (!height.ok) for (const problem of height.problems) reader.report(problem, ...at, 'finished_height');
  }
  const own = { ...small, ...present({ caseG }) };
  return { ...whole, layers: 1, ...present({ finishedHeightMm }), beside: 'small cakes', small: own };
}
