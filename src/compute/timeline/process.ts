/**
 * What is done to a cake between oven and hand-over, and in what order: cool, wrap and rest, level and fill,
 * settle, crumb coat, chill, final coat or rolled cover, set; then stack, pack, deliver and set up.
 */

import { DAY_MIN, type KitchenTimes } from '../../domain/times.ts';
import { isPoured } from '../finishes/poured.ts';
import type { Waiting } from './activity.types.ts';
import type { StepKind } from './plan.types.ts';
import { cakesOf, type DummyWork, type FinishWork, type OrderWork, type TierWork } from './work.ts';

/** A piece of hands-on work and the waiting after it. */
export interface Stage {
  kind: StepKind;
  minutes: number;
  /** The finish that is put on; null for other work. */
  finishId: string | null;
  /** Finishes that must be ready for it. */
  needs: string[];
  waits: Waiting[];
}

const waiting = (kind: StepKind, minutes: number): Waiting[] => (minutes > 0 ? [{ kind, minutes }] : []);

const isInside = ({ use }: FinishWork): boolean => use === 'filling' || use === 'brushed';

function buildStage(tier: DummyWork, times: KitchenTimes): Stage[] {
  const inside = tier.finishes.filter(isInside);
  if (tier.layers < 2 && inside.length === 0) return [];
  const isBrushed = inside.some(({ use }) => use === 'brushed');
  const eachMin = tier.layers * times.layerMin + (isBrushed ? times.brushMin : 0);
  const isFilled = inside.some(({ use }) => use === 'filling');
  return [
    {
      kind: 'build',
      minutes: tier.count * times.levelMin + cakesOf(tier) * eachMin,
      finishId: null,
      needs: [
        ...new Set([...(tier.dam === undefined ? [] : [tier.dam]), ...inside.map(({ finish }) => finish.id)]),
      ],
      waits: isFilled ? waiting('filling-settles', times.fillingSettlesMin) : [],
    },
  ];
}

const DOZEN = 12;

/** Marzipan is dry in a day for sugarpaste, and hard for royal icing a day later. */
function sheetSetsMin({ kind }: FinishWork['finish'], { finishes }: DummyWork, times: KitchenTimes): number {
  if (kind !== 'marzipan') return times.rolledSetsMin;
  const isIced = finishes.some(({ finish, use }) => finish.kind === 'royal icing' && use === 'coating');
  return isIced ? times.marzipanHardensMin : times.marzipanDriesMin;
}

/** What is spread round and over a tier: a first coat, unless it goes on in one, and the final one. */
function spreadStages({ finish, oneCoat }: FinishWork, count: number, times: KitchenTimes): Stage[] {
  const put = { finishId: finish.id, needs: [finish.id] };
  const [crumb, final] = [count * times.crumbCoatMin, count * times.finalCoatMin];
  // Royal icing is not chilled: each coat dries hard before the next. Buttercream, ganache and cream are firm before
  // they are stacked or boxed.
  const dries = waiting('coat-sets', times.royalIcingDriesMin);
  const isIcing = finish.kind === 'royal icing';
  const firstWaits = isIcing ? dries : waiting('chill', times.chillMin);
  const lastWaits = isIcing ? dries : waiting('coat-chills', times.coatSetsMin);
  const first: Stage = { ...put, kind: 'crumb-coat', minutes: crumb, waits: firstWaits };
  const last: Stage = { ...put, kind: 'final-coat', minutes: final, waits: lastWaits };
  return oneCoat === true ? [last] : [first, last];
}

/** Syrup that has soaked in no longer needs the fridge. */
const isCold = ({ finish }: FinishWork): boolean => finish.chilled && finish.kind !== 'syrup';

/** A glaze is poured in one go. It dulls in the fridge, and sets there only where something on the cake must be cold. */
function pourStage({ finish }: FinishWork, tier: DummyWork, times: KitchenTimes): Stage {
  const put = { finishId: finish.id, needs: [finish.id] };
  const sets = waiting(tier.finishes.some(isCold) ? 'coat-chills' : 'glaze-sets', times.glazeSetsMin);
  return { ...put, kind: 'pour', minutes: cakesOf(tier) * times.pourMin, waits: sets };
}

function coatStages(one: FinishWork, tier: DummyWork, times: KitchenTimes): Stage[] {
  const { finish, use } = one;
  const { small } = tier;
  const count = cakesOf(tier);
  const put = { finishId: finish.id, needs: [finish.id] };
  if (use === 'topping') {
    const minutes = Math.ceil(((small?.pieces ?? 0) / DOZEN) * times.topDozenMin);
    return [{ ...put, kind: 'top', minutes, waits: [] }];
  }
  if (use === 'coating' && isPoured(finish)) return [pourStage(one, tier, times)];
  if (use === 'coating') return spreadStages(one, count, times);
  if (use !== 'rolled') return [];
  const setsMin = sheetSetsMin(finish, tier, times);
  return [
    { ...put, kind: 'cover', minutes: count * times.rollOutMin, waits: waiting('cover-sets', setsMin) },
  ];
}

/** What is sold by the piece is cut when all is done to it: as its cutting guide says, before it is boxed. */
function cutStage(tier: DummyWork, times: KitchenTimes): Stage[] {
  if (tier.cutInto === undefined) return [];
  const dozens = (cakesOf(tier) * tier.cutInto) / DOZEN;
  return [stage('cut-pieces', Math.ceil(dozens * times.cutDozenMin))];
}

/** Work on one tier's cakes once they have cooled and rested. */
export const tierStages = (tier: DummyWork, times: KitchenTimes): Stage[] => [
  ...buildStage(tier, times),
  ...tier.finishes.flatMap((finish) => coatStages(finish, tier, times)),
  ...cutStage(tier, times),
];

const stage = (kind: StepKind, minutes: number, waits: Waiting[] = []): Stage => ({
  kind,
  minutes,
  finishId: null,
  needs: [],
  waits,
});

/** Boxes of small cakes. */
const boxesOf = ({ tiers }: OrderWork): number =>
  tiers.reduce((sum, { small }) => sum + (small === undefined ? 0 : Math.ceil(small.pieces / small.box)), 0);

/** Whether a cake or a dummy is one of the tiers. */
const isStanding = (tier: DummyWork & Pick<Partial<TierWork>, 'apart'>): boolean => tier.apart !== true;

/** How often one tier is set on another; 0 where nothing is stacked. */
export function jointsOf({ arrangement, tiers, dummies = [] }: OrderWork): number {
  if (arrangement !== 'stacked') return 0;
  const standing = tiers.filter(isStanding);
  return Math.max(0, standing.reduce((sum, tier) => sum + cakesOf(tier), dummies.length) - 1);
}

/** Tiers and dummies by id, bottom first. */
export const stackIds = ({ stack, tiers, dummies = [] }: OrderWork): string[] =>
  stack ?? [...tiers.filter(isStanding), ...dummies].map(({ id }) => id);

/** Dummies with something standing on them, which they hold by themselves. */
const solidBelow = (order: OrderWork): number =>
  stackIds(order)
    .slice(0, -1)
    .filter((id) => order.dummies?.some((dummy) => dummy.id === id)).length;

/**
 * Before any tier goes onto its card: the cards above the drum and the dummies are bored for the centre dowel. The
 * drum is not: the dowel's point is driven into it. Common practice, no source.
 */
export function boreStages(order: OrderWork, times: KitchenTimes): Stage[] {
  const joints = jointsOf(order);
  if (joints === 0 || order.dowel !== true) return [];
  const minutes = (joints + (order.dummies?.length ?? 0)) * times.boreHoleMin;
  return minutes > 0 ? [stage('bore-holes', minutes)] : [];
}

/**
 * Supports are cut at home, whoever stacks where: their length is marked at the firm coat, and there is no saw in a
 * hall. They are set where the tiers are stacked. Common practice, no source. A dummy takes none.
 */
function supportStages(order: OrderWork, times: KitchenTimes): Stage[] {
  const joints = jointsOf(order);
  const sets = joints - solidBelow(order) + (order.dowel === true ? 1 : 0);
  return joints === 0 || sets === 0 ? [] : [stage('cut-supports', sets * times.cutSupportsMin)];
}

/** Work on an order once all its cakes are done. */
export function orderStages(order: OrderWork, times: KitchenTimes): Stage[] {
  const stackMin = jointsOf(order) * times.stackMin;
  const isSetUp = order.place === 'set up at the venue' || order.place === 'sold at a stall';
  const stacksThere = stackMin > 0 && !order.travelsAssembled;
  return [
    ...supportStages(order, times),
    ...(stackMin > 0 && order.travelsAssembled
      ? [stage('stack', stackMin, waiting('stack-settles', times.stackSettlesMin))]
      : []),
    stage('pack', times.packMin + boxesOf(order) * times.packBoxMin),
    ...(order.place === 'collected' ? [] : [stage('deliver', times.deliverMin)]),
    ...(isSetUp ? [stage('set-up', times.setUpMin + (stacksThere ? stackMin : 0))] : []),
  ];
}

/** Minutes on the road home after the hand-over, as long as the way there; none where the cake is fetched. */
export const driveBackMin = ({ place }: OrderWork, { deliverMin }: KitchenTimes): number =>
  place === 'collected' ? 0 : deliverMin;

/** After turning out: cooling, then wrapping and resting where the method asks for it; small cakes do not rest. */
export function restStages(tier: TierWork, cakes: number, times: KitchenTimes): Stage[] {
  const restMin = tier.small === undefined ? times.restMin[tier.method] : 0;
  return restMin > 0 ? [stage('wrap', times.wrapMin * cakes, waiting('rest', restMin))] : [];
}

/** In its tin before it is turned out; small cakes are through sooner, whatever the method. */
export const coolInTinMin = ({ method, small }: TierWork, times: KitchenTimes): number =>
  small === undefined ? times.coolInTinMin[method] : Math.min(times.coolInTinMin[method], times.coolSmallMin);

export const coolWait = (tier: TierWork, times: KitchenTimes): Waiting[] =>
  waiting('cool', tier.small === undefined ? times.coolMin[tier.method] : times.coolSmallMin);

/** Longest from the oven to the hand-over: by the recipe's own word or the method; small cakes dry out first. */
export function keepsMin({ method, small, keepsDays }: TierWork, times: KitchenTimes): number {
  const own = keepsDays === undefined ? times.cakeKeepsMin[method] : keepsDays * DAY_MIN;
  return small === undefined ? own : Math.min(times.smallKeepsMin, own);
}

export const waitOf = (waits: readonly Waiting[]): number =>
  waits.reduce((sum, { minutes }) => sum + minutes, 0);
