/** What stands below a line: what waits until when, what stays cold, where the places in the oven are. */
import type { Step, StepKind } from '../../compute/timeline/plan.types.ts';
import type { DummyWork, TierWork } from '../../compute/timeline/work.ts';
import { listInWords } from '../../wording/list.ts';
import { formatWholeGrams } from '../../wording/mass.ts';
import { formatShare } from '../../wording/number.ts';
import { uncapitalised } from '../../wording/sentence-case.ts';
import type { WaitKind } from '../../wording/timetable/index.ts';
import { untilText } from './local-clock.ts';
import { cakesText, finishOf, isKneaded } from './row-names.ts';
import { alongNotes, ribbonNotes } from './take-along.ts';
import type { TimetableSource } from './timetable-input.ts';

/** Every kind of waiting that has words: none can be forgotten. */
const WAITS: Readonly<Record<WaitKind, true>> = {
  'finish-stands': true,
  soften: true,
  'cool-in-tin': true,
  cool: true,
  rest: true,
  'filling-settles': true,
  chill: true,
  'coat-chills': true,
  'coat-sets': true,
  'glaze-sets': true,
  'cover-sets': true,
  'stack-settles': true,
};

export const isWait = (kind: StepKind): kind is WaitKind & StepKind => Object.hasOwn(WAITS, kind);
const sameSubject = (a: Step, b: Step): boolean =>
  a.bowlfulId === b.bowlfulId &&
  a.loadId === b.loadId &&
  a.finishId === b.finishId &&
  a.tiers.length === b.tiers.length &&
  a.tiers.every(
    ({ orderId, tierId }, at) => b.tiers[at]?.orderId === orderId && b.tiers[at]?.tierId === tierId,
  );

/** The waiting that follows a step: it begins as the step ends, about the same thing. */
function waitNotes(group: readonly Step[], waits: readonly Step[], source: TimetableSource): string[] {
  const { words, room } = source;
  const notes = group.flatMap((step) =>
    waits
      .filter((wait) => wait.from === step.to && sameSubject(wait, step))
      .map((wait) => ({ kind: wait.kind as WaitKind, to: wait.to })),
  );
  const kinds = [...new Set(notes.map(({ kind }) => kind))];
  const at = group.at(-1)?.to ?? 0;
  return kinds.map((kind) => {
    const to = Math.max(...notes.filter((note) => note.kind === kind).map((note) => note.to));
    return words.wait[kind](untilText(room.calendar, to, at, words));
  });
}

/** Longest that eggs and milk stand about for the sake of their warmth. */
const LONGEST_OUT_MIN = 240;

const mixingOf = (step: Step, { plan }: TimetableSource): Step | undefined =>
  plan.steps.find(
    ({ kind, bowlfulId, loadId }) => kind === 'mix' && bowlfulId === step.bowlfulId && loadId === step.loadId,
  );

function isLongBeforeMixing(step: Step, source: TimetableSource): boolean {
  if (step.kind !== 'weigh-out') return false;
  return (mixingOf(step, source)?.from ?? step.to) - step.to > LONGEST_OUT_MIN;
}

function coldNotes(step: Step, source: TimetableSource): string[] {
  if (!isLongBeforeMixing(step, source)) return [];
  const { words, room } = source;
  const out = (mixingOf(step, source)?.from ?? step.to) - room.times.softenMin;
  return [words.keepCold(untilText(room.calendar, out, step.to, words))];
}

/** A bowlful whose tins do not bake together is made in goes: which one this is, and how much of every weight. */
function partNotes({ kind, share, bowlfulId, loadId }: Step, source: TimetableSource): string[] {
  const bowlful = source.bowlfulOf(bowlfulId);
  if ((kind !== 'weigh-out' && kind !== 'mix') || share === 1 || bowlful === undefined) return [];
  const goes = source.plan.steps.filter((step) => step.kind === 'mix' && step.bowlfulId === bowlfulId);
  const grams = (massG: number): string => `${formatWholeGrams(massG)}\u00a0g`;
  return [
    source.words.part({
      at: goes.findIndex((step) => step.loadId === loadId) + 1,
      of: goes.length,
      now: grams(bowlful.massG * share),
      whole: grams(bowlful.massG),
      share: formatShare(share),
    }),
  ];
}

/** Put on where the cake is set up; what is fetched or only handed in has it on before it is boxed. */
function putOnNotes({ kind, orderIds }: Step, { work, words }: TimetableSource): string[] {
  return work.orders.flatMap(({ id, place, putOn = [] }) => {
    const isSetUp = place === 'set up at the venue' || place === 'sold at a stall';
    if (putOn.length === 0 || kind !== (isSetUp ? 'set-up' : 'pack') || !orderIds.includes(id)) return [];
    return [words.putOn(listInWords(putOn.map(uncapitalised), words.and))];
  });
}

const isAided = (tier: TierWork | DummyWork | undefined, aid: 'core' | 'band'): boolean =>
  tier !== undefined && 'tin' in tier && tier[aid] === true;

/** The core and the band go on as tins are greased and lined; the core comes out, hot, as cakes are turned out. */
function aidNotes(group: readonly Step[], source: TimetableSource): string[] {
  const [{ kind } = { kind: null }] = group;
  if (kind !== 'weigh-out' && kind !== 'turn-out') return [];
  const all = group.flatMap(({ tiers }) => tiers);
  const aided = (aid: 'core' | 'band', said: (cakes: string) => string): string[] => {
    const tiers = all.filter(({ orderId, tierId }) => isAided(source.tierOf(orderId, tierId), aid));
    return tiers.length === 0 ? [] : [said(cakesText({ kind, tiers }, source))];
  };
  const { words } = source;
  if (kind === 'turn-out') return aided('core', words.coreOut);
  return [...aided('core', words.coreIn), ...aided('band', words.bandOn)];
}

/** A soft filling is held in by a bead, which is piped before the filling goes in. */
function buildNotes(group: readonly Step[], { words, tierOf }: TimetableSource): string[] {
  if (group[0]?.kind !== 'build') return [];
  const tiers = group
    .flatMap((step) => step.tiers)
    .flatMap(({ orderId, tierId }) => tierOf(orderId, tierId) ?? []);
  const notes = tiers.flatMap(({ finishes, dam }) => {
    const held = finishes.find(({ finish }) => finish.id === dam)?.finish.name;
    return held === undefined ? [] : [words.damFirst(uncapitalised(held))];
  });
  return [...new Set(notes)];
}

/** Where the lines of a cut and the places of supports stand, and who sets them. */
function cuttingNotes({ kind, orderIds }: Step, { words, work }: TimetableSource): string[] {
  if (kind === 'cut-pieces') return [words.cutByGuide];
  if (kind === 'bore-holes') return [words.builtOnCards];
  if (kind !== 'cut-supports') return [];
  const there = work.orders.some(({ id, travelsAssembled }) => orderIds.includes(id) && !travelsAssembled);
  return [words.supportsByTemplate(there)];
}

const OF_A_BOWLFUL = new Set<StepKind>(['weigh-out', 'mix', 'fill-tins']);

/** Paste dries as it lies; and what a stall sells says what it is, wrapped or loose. */
function keptNotes(step: Step, source: TimetableSource): string[] {
  const { words, work } = source;
  if (step.kind === 'make-finish' && isKneaded(finishOf(step, source))) return [words.keepWrapped];
  const isStall = work.orders.some(
    ({ id, place }) => place === 'sold at a stall' && step.orderIds.includes(id),
  );
  return step.kind === 'pack' && isStall ? [words.labelForSale] : [];
}

/** On an order's own paper: its bowlful fills tins of other orders too. */
function sharedNotes({ kind, orderIds }: Step, { words, orders }: TimetableSource): string[] {
  const isShared = orderIds.some((id) => orders.every((order) => order.id !== id));
  return OF_A_BOWLFUL.has(kind) && isShared ? [words.shared] : [];
}

/** Notes of steps that make one line; `waits` are the waiting steps of the plan. */
export function notesOf(group: readonly Step[], waits: readonly Step[], source: TimetableSource): string[] {
  const [step] = group;
  if (step === undefined) return [];
  const { words } = source;
  return [
    ...partNotes(step, source),
    ...sharedNotes(step, source),
    ...cuttingNotes(step, source),
    ...aidNotes(group, source),
    ...buildNotes(group, source),
    ...coldNotes(step, source),
    ...(step.kind === 'oven-in' ? [words.seePlan(words.load(source.loadNumber(step.loadId)))] : []),
    ...keptNotes(step, source),
    ...ribbonNotes(step, source),
    ...alongNotes(step, source),
    ...putOnNotes(step, source),
    ...(isLongBeforeMixing(step, source) ? [] : waitNotes(group, waits, source)),
  ];
}
