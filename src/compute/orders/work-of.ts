/** Orders and their mixes as a timetable needs them: who is baked when, from which bowlful. */

import { isStacked, type Order } from '../../domain/order.ts';
import type { LoadTin } from '../mixes/plan-mix.ts';
import { wantsDowel } from '../stacks/stack-plan.ts';
import type {
  Bowlful,
  DummyWork,
  FilledTins,
  FinishWork,
  OrderWork,
  TierWork,
  Work,
} from '../timeline/work.ts';
import { isCovered } from './order-boards.ts';
import { isDummyPart, stackParts } from './order-stack.ts';
import { dummyId } from './planned-dummy.ts';
import type {
  PlannedDummy,
  PlannedMix,
  PlannedOrder,
  PlannedTier,
  TierFinish,
} from './planned-order.types.ts';
import { tierOven } from './tier-oven.ts';

/** The tier that a mix's tin belongs to. */
export interface TierRef {
  orderId: string;
  tierAt: number;
}

/** A mix with the tier of each of its tins; of one order, or of several. */
export interface MixOfTiers extends Pick<PlannedMix, 'recipe' | 'flavours' | 'mix' | 'actsAtOnce'> {
  tiers: readonly TierRef[];
}

/** A tier's own id within its order: 'tier-1' at the bottom. */
export const tierId = (at: number): string => `tier-${at + 1}`;

/** A batter as people call it: 'Equal-weights vanilla sponge, orange'. */
export const batterName = ({ recipe, flavours }: Pick<PlannedMix, 'recipe' | 'flavours'>): string =>
  [recipe.name, ...flavours.map(({ name }) => name.toLowerCase())].join(', ');

const isUse = (use: TierFinish['use']): use is FinishWork['use'] => use !== 'dam';

/** The bead is piped before the filling goes in, so that its finish must be made by then. */
function damWork({ finishes }: Pick<PlannedTier, 'finishes'>): Pick<TierWork, 'dam'> {
  const dam = finishes.find(({ use }) => use === 'dam');
  return dam === undefined ? {} : { dam: dam.finish.id };
}

const isOneCoat = ({ finish, use }: TierFinish): boolean =>
  use === 'coating' && finish.use.coating?.crumbMm === 0;

function finishWork({ finishes }: Pick<PlannedTier, 'finishes'>): FinishWork[] {
  return finishes.flatMap((one) => {
    const { finish, use } = one;
    return isUse(use) ? [{ finish, use, ...(isOneCoat(one) ? { oneCoat: true as const } : {}) }] : [];
  });
}

/** Heat, minutes and what helps. Fails to a bug where a tier has no bake. */
function ovenWork(tier: PlannedTier): Pick<TierWork, 'ovenC' | 'bake' | 'core' | 'band'> {
  const oven = tierOven(tier);
  if (oven === null) throw new Error(`${tier.recipe.name} cannot be baked at ${tier.recipe.ovenC} °C.`);
  const { core, band, ...heat } = oven;
  return { ...heat, ...(core ? { core } : {}), ...(band ? { band } : {}) };
}

/** A stall sells by the piece what is not handed over whole: its cakes are cut beforehand, as portions are counted. */
const cutIntoOf = ({ handOver, portions }: Order, { ask, portionsEach }: PlannedTier): number | null =>
  handOver.place === 'sold at a stall' && portions !== undefined && ask.small === undefined
    ? portionsEach
    : null;

function tierWork(order: Order, tier: PlannedTier): TierWork {
  const cutInto = cutIntoOf(order, tier);
  const { recipe, ask, smallTins, count, bakes } = tier;
  const { beside, small } = ask;
  return {
    id: tierId(tier.at),
    name: `${tier.tin.name}, ${batterName(tier)}`,
    tin: tier.tin,
    count: smallTins?.tins ?? count * bakes,
    ...(bakes === 1 ? {} : { bakes }),
    recipeId: recipe.id,
    method: recipe.method,
    ...ovenWork(tier),
    layers: tier.layers,
    ...(tier.layers > 1 ? { layerMm: tier.level.layerMm } : {}),
    ...(recipe.keepsDays === undefined ? {} : { keepsDays: recipe.keepsDays }),
    finishes: finishWork(tier),
    ...damWork(tier),
    ...(beside === undefined ? {} : { apart: true }),
    ...(cutInto === null ? {} : { cutInto }),
    ...(small === undefined ? {} : { small: { kind: small.kind, box: small.box, pieces: count } }),
  };
}

const dummyWork = (dummy: PlannedDummy): DummyWork => ({
  id: dummyId(dummy.at),
  name: dummyId(dummy.at),
  count: 1,
  layers: 1,
  finishes: finishWork(dummy),
});

/** Tiers from the bottom up, and whether a dowel goes through them. */
function stackWork(planned: PlannedOrder): Pick<OrderWork, 'stack' | 'dowel'> {
  if (!isStacked(planned.order)) return {};
  const stack = stackParts(planned).map((part) => (isDummyPart(part) ? dummyId : tierId)(part.at));
  return { stack, ...(wantsDowel(stack.length, planned.order.travelsAssembled) ? { dowel: true } : {}) };
}

/** What comes back; a dummy has no name of its own. */
function hiredWork({ order, dummies }: PlannedOrder): Pick<OrderWork, 'hired'> {
  const extras = order.extras
    .filter(({ comesBack }) => comesBack === true)
    .map(({ name, backBy }) => ({ name, ...(backBy === undefined ? {} : { backBy }) }));
  const hired = [
    ...extras,
    ...dummies.flatMap(({ ask }) => (ask.supply === 'hired' ? [{ name: null }] : [])),
  ];
  return hired.length === 0 ? {} : { hired };
}

/** One order as work. */
export function orderWork(planned: PlannedOrder): OrderWork {
  const { order, tiers, dummies } = planned;
  const putOn = order.extras.filter(({ inedible }) => inedible).map(({ name }) => name);
  return {
    id: order.id,
    title: order.title,
    reference: order.reference,
    handOver: order.handOver.minute,
    place: order.handOver.place,
    arrangement: order.arrangement,
    travelsAssembled: order.travelsAssembled,
    tiers: tiers.map((tier) => tierWork(order, tier)),
    ...(dummies.length === 0 ? {} : { dummies: dummies.map(dummyWork) }),
    ...stackWork(planned),
    ...hiredWork(planned),
    ...([...tiers, ...dummies].some(isCovered) ? { covered: true } : {}),
    ...(putOn.length === 0 ? {} : { putOn }),
  };
}

function filled({ tin, count, askedG, ofParts, parts }: LoadTin, tiers: readonly TierRef[]): FilledTins[] {
  const ref = tiers[tin];
  if (ref === undefined) return [];
  return [
    {
      orderId: ref.orderId,
      tierId: tierId(ref.tierAt),
      count,
      massG: askedG,
      ...(ofParts === undefined ? {} : { ofParts, parts: parts ?? 1 }),
    },
  ];
}

/** A bowlful's own id within the work: 'mix-1-2'. */
export const bowlfulId = (mixAt: number, loadAt: number): string => `mix-${mixAt + 1}-${loadAt + 1}`;

function bowlfuls(mix: MixOfTiers, mixAt: number): Bowlful[] {
  const name = batterName(mix);
  const { loads } = mix.mix;
  return loads.map((load, at) => ({
    id: bowlfulId(mixAt, at),
    name: loads.length === 1 ? name : `${name}, bowlful ${at + 1} of ${loads.length}`,
    batter: name,
    batterKey: [mix.recipe.id, ...mix.flavours.map(({ id }) => id)].join('+'),
    method: mix.recipe.method,
    actsAtOnce: mix.actsAtOnce,
    massG: load.batterG,
    tins: load.tins.flatMap((tin) => filled(tin, mix.tiers)),
  }));
}

/** The mixes of one order with the tiers they serve. */
export const mixesOfOrder = ({ order, mixes }: PlannedOrder): MixOfTiers[] =>
  mixes.map((mix) => ({ ...mix, tiers: mix.tierAt.map((tierAt) => ({ orderId: order.id, tierAt })) }));

/** All work of some orders, from these mixes. */
export function workOf(orders: readonly PlannedOrder[], mixes: readonly MixOfTiers[]): Work {
  return { orders: orders.map(orderWork), bowlfuls: mixes.flatMap(bowlfuls) };
}
