/** What a step is about, in words: cakes by their tins, finishes and batters by name. */

import type { Step, StepKind, TierRef } from '../../compute/timeline/plan.types.ts';
import { jointsOf, stackIds } from '../../compute/timeline/process.ts';
import type { FinishWork } from '../../compute/timeline/work.ts';
import { PLAIN_OVEN } from '../../domain/kitchen.ts';
import { bakeWordsFor } from '../../wording/bake/index.ts';
import { formatLength } from '../../wording/length.ts';
import { listInWords } from '../../wording/list.ts';
import { orderWordsFor } from '../../wording/orders/index.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { RowKind, RowNames } from '../../wording/timetable/index.ts';
import { dialTextsOf } from '../bake-figures.ts';
import type { TimetableSource } from './timetable-input.ts';

/** Names of nothing, for a line that is about none. */
export const NO_NAMES: RowNames = {
  ...{ cakes: '', finish: '', batter: '', load: '', dial: '' },
  ...{ kneaded: false, oneCoat: false, layers: 1, layerHigh: '', brushed: '', filling: '' },
  ...{ stackedThere: false, dowel: false, dummy: false, pieces: '', hired: '' },
};

/** Bought as a paste. */
const KNEADED = new Set<FinishWork['finish']['kind']>(['sugarpaste', 'marzipan']);

export const isKneaded = (finish: FinishWork['finish'] | undefined): boolean =>
  finish !== undefined && KNEADED.has(finish.kind);

/** Steps on small cakes that no longer stand in their tins. */
const BY_PIECES = new Set<StepKind>(['top', 'pack']);

/** Steps at which a cake is known by its tin; later by its place in the stack. */
const IN_ITS_TIN = new Set<RowKind>(['weigh-out', 'fill-tins', 'look', 'oven-out', 'turn-out']);

/** Some cakes of a line; other orders' are not named on an order's own paper. */
type Cakes = Pick<Step, 'tiers'> & { kind: RowKind | StepKind };

const shownTiers = ({ tiers }: Pick<Step, 'tiers'>, { orders }: TimetableSource): TierRef[] =>
  tiers.filter(({ orderId }) => orders.some(({ id }) => id === orderId));

/** 'bottom tier'; null for what is not one of several tiers. */
function placeInStack({ orderId, tierId }: TierRef, { work, kitchen }: TimetableSource): string | null {
  const order = work.orders.find(({ id }) => id === orderId);
  if (order === undefined || jointsOf(order) === 0) return null;
  const stack = stackIds(order);
  const at = stack.indexOf(tierId);
  if (at < 0) return null;
  return uncapitalised(orderWordsFor(kitchen.locale).tierName(at, stack.length, true));
}

function cakeName(ref: TierRef, kind: RowKind | StepKind, source: TimetableSource): string {
  const { words } = source;
  const tier = source.tierOf(ref.orderId, ref.tierId);
  const name = tier !== undefined && 'tin' in tier ? uncapitalised(tier.tin.name) : words.dummy;
  // A cake for cutting may be of a tier's own tin.
  if (tier !== undefined && 'apart' in tier && tier.apart && tier.small === undefined)
    return words.forCutting(name);
  const place = placeInStack(ref, source);
  if (place === null) return name;
  if (tier !== undefined && !('tin' in tier)) return orderWordsFor(source.kitchen.locale).beside.dummy(place);
  return IN_ITS_TIN.has(kind as RowKind) ? words.inTin(name, place) : words.inTin(place, name);
}

const times = (count: number, name: string): string => (count === 1 ? name : `${count} × ${name}`);

/** 'bottom tier (ten-inch round) and 2 × two-pound loaf tin'. */
export function cakesText(step: Cakes, source: TimetableSource): string {
  const counts = new Map<string, number>();
  const whole: string[] = [];
  for (const ref of shownTiers(step, source)) {
    const tier = source.tierOf(ref.orderId, ref.tierId);
    if (tier?.small !== undefined && BY_PIECES.has(step.kind as StepKind)) {
      whole.push(source.words.small(tier.small.pieces, tier.small.kind));
      continue;
    }
    const name = cakeName(ref, step.kind, source);
    counts.set(name, (counts.get(name) ?? 0) + ref.count);
  }
  const names = [...counts].map(([name, count]) => times(count, name));
  return listInWords([...names, ...whole], source.words.and);
}

/** '2 × two-pound loaf tin, 36 pieces each'. */
function piecesText(step: Step, source: TimetableSource): string {
  const { words } = source;
  const texts = shownTiers(step, source).flatMap((ref) => {
    const pieces = source.tierOf(ref.orderId, ref.tierId)?.cutInto;
    if (pieces === undefined) return [];
    const cakes = times(ref.count, cakeName(ref, step.kind, source));
    return [(ref.count === 1 ? words.inPieces : words.inPiecesEach)(cakes, pieces)];
  });
  return listInWords(texts, words.and);
}

/** A batter, and which bowlful of it: on an order's paper among its own, on the week's among the week's. */
function batterText(bowlfulId: string | null, source: TimetableSource): string {
  const { words, work, orders } = source;
  const bowlful = source.bowlfulOf(bowlfulId);
  if (bowlful === undefined) return '';
  const { batterKey, batter = bowlful.name } = bowlful;
  const same = work.bowlfuls.filter(
    (one) =>
      one.batterKey === batterKey && one.tins.some(({ orderId }) => orders.some(({ id }) => id === orderId)),
  );
  const at = same.indexOf(bowlful) + 1;
  const name = uncapitalised(batter);
  if (bowlful.batter === undefined || same.length < 2) return name;
  return (orders.length > 1 ? words.bowlfulOfWeek : words.bowlfulOfOrder)(name, at, same.length);
}

const tiersOf = (step: Pick<Step, 'tiers'>, source: TimetableSource) =>
  shownTiers(step, source).flatMap(({ orderId, tierId }) => source.tierOf(orderId, tierId) ?? []);

/** Finishes of one use by name, from the inside out. */
function usedText(use: FinishWork['use'], step: Step, source: TimetableSource): string {
  const uses = tiersOf(step, source).flatMap(({ finishes }) => finishes.filter((each) => each.use === use));
  const names = new Set(uses.map(({ finish }) => uncapitalised(finish.name)));
  return listInWords([...names], source.words.and);
}

/** How high each layer is cut; '' where that is not one height for all. */
function layerText(step: Step, source: TimetableSource): string {
  const [heightMm, ...others] = new Set(tiersOf(step, source).map(({ layerMm }) => layerMm));
  return heightMm === undefined || others.length > 0 ? '' : formatLength(heightMm, 'mm');
}

/** Every use of a step's finish on its cakes. */
const usesOf = (step: Step, source: TimetableSource): FinishWork[] =>
  tiersOf(step, source)
    .flatMap(({ finishes }) => finishes)
    .filter(({ finish }) => finish.id === step.finishId);

export const finishOf = (step: Step, source: TimetableSource): FinishWork['finish'] | undefined =>
  usesOf(step, source)[0]?.finish;

function isStackedThere(orderId: string, { work }: TimetableSource): boolean {
  const order = work.orders.find(({ id }) => id === orderId);
  return order !== undefined && !order.travelsAssembled && jointsOf(order) > 0;
}

export function rowNames(step: Step, source: TimetableSource): RowNames {
  const { plan, kitchen, words } = source;
  const load = plan.loads.find(({ id }) => id === step.loadId);
  const finish = finishOf(step, source);
  const orders = source.orders.filter(({ id }) => step.orderIds.includes(id));
  return {
    cakes: cakesText(step, source),
    finish: uncapitalised(finish?.name ?? ''),
    batter: batterText(step.bowlfulId, source),
    load: words.load(source.loadNumber(step.loadId)),
    dial:
      load === undefined
        ? ''
        : dialTextsOf(load.ovenC, kitchen.oven ?? PLAIN_OVEN, bakeWordsFor(kitchen.locale)).set,
    kneaded: isKneaded(finish),
    oneCoat: usesOf(step, source).some(({ oneCoat }) => oneCoat === true),
    layers: Math.max(1, ...tiersOf(step, source).map(({ layers }) => layers)),
    layerHigh: layerText(step, source),
    brushed: usedText('brushed', step, source),
    filling: usedText('filling', step, source),
    pieces: piecesText(step, source),
    hired: '',
    dowel: orders.some(({ dowel }) => dowel === true),
    dummy: orders.some(({ dummies = [] }) => dummies.length > 0),
    stackedThere: step.orderIds.some((id) => isStackedThere(id, source)),
  };
}
