/** Orders and their mixes as a timetable needs them: who is baked when, from which bowlful. */

import type { LoadTin } from '../mixes/plan-mix.ts';
import type { Bowlful, FilledTins, FinishWork, OrderWork, TierWork, Work } from '../timeline/work.ts';
import type { PlannedMix, PlannedOrder, PlannedTier, TierFinish } from './planned-order.types.ts';

/** The tier that a mix's tin belongs to. */
export interface TierRef {
  orderId: string;
  tierAt: number;
}

/** A mix with the tier of each of its tins; of one order, or of several. */
export interface MixOfTiers extends Pick<PlannedMix, 'recipe' | 'flavours' | 'mix'> {
  tiers: readonly TierRef[];
}

/** A tier's own id within its order: 'tier-1' at the bottom. */
export const tierId = (at: number): string => `tier-${at + 1}`;

/** A batter as people call it: 'Equal-weights vanilla sponge, orange'. */
export const batterName = ({ recipe, flavours }: Pick<PlannedMix, 'recipe' | 'flavours'>): string =>
  [recipe.name, ...flavours.map(({ name }) => name.toLowerCase())].join(', ');

const isUse = (use: TierFinish['use']): use is FinishWork['use'] => use !== 'dam';

function finishWork(tier: PlannedTier): FinishWork[] {
  return tier.finishes.flatMap(({ finish, use }) => (isUse(use) ? [{ finish, use }] : []));
}

/** Fails to a bug where a tier has no bake: such orders are refused before. */
function tierWork(tier: PlannedTier): TierWork {
  const { bake, recipe } = tier;
  if (bake === null) throw new Error(`${recipe.name} cannot be baked at ${recipe.ovenC} °C.`);
  const { firstLookMin, likelyMin, expectedByMin } = bake.window;
  return {
    id: tierId(tier.at),
    name: `${tier.tin.name}, ${batterName(tier)}`,
    tin: tier.tin,
    count: tier.count,
    recipeId: recipe.id,
    method: recipe.method,
    ovenC: bake.dialC,
    bake: {
      firstLook: Math.floor(firstLookMin),
      expected: Math.round(likelyMin),
      by: Math.ceil(expectedByMin),
    },
    layers: tier.layers,
    finishes: finishWork(tier),
  };
}

/** One order as work. */
export function orderWork({ order, tiers }: PlannedOrder): OrderWork {
  return {
    id: order.id,
    title: order.title,
    reference: order.reference,
    handOver: order.handOver.minute,
    place: order.handOver.place,
    arrangement: order.arrangement,
    travelsAssembled: order.travelsAssembled,
    tiers: tiers.map(tierWork),
  };
}

function filled({ tin, count, ofParts, parts }: LoadTin, tiers: readonly TierRef[]): FilledTins[] {
  const ref = tiers[tin];
  if (ref === undefined) return [];
  return [
    {
      orderId: ref.orderId,
      tierId: tierId(ref.tierAt),
      count,
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
    batterKey: [mix.recipe.id, ...mix.flavours.map(({ id }) => id)].join('+'),
    method: mix.recipe.method,
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
