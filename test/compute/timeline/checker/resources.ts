/** Hands, mixer, oven, tins and sleep. */
import type { Step } from '../../../../src/compute/timeline/plan.types.ts';
import { type Asked, must, stepsOf } from './needed-steps.ts';
import { overuse, type Use } from './sweep.ts';

const WAITING = new Set([
  'finish-stands',
  'soften',
  'oven-on',
  'bake',
  'cool-in-tin',
  'cool',
  'rest',
  'filling-settles',
  'chill',
  'coat-chills',
  'coat-sets',
  'glaze-sets',
  'cover-sets',
  'stack-settles',
]);
const MIXED_FINISHES = new Set(['buttercream', 'cream', 'royal icing']);

const use = ({ id, from, to }: Step): Use => ({ from, to, count: 1, who: id });

function mixerRule({ work }: Asked): (step: Step) => boolean {
  const finishes = work.orders.flatMap(({ tiers, dummies = [] }) =>
    [...tiers, ...dummies].flatMap((tier) => tier.finishes),
  );
  const mixed = new Set(
    finishes.filter(({ finish }) => MIXED_FINISHES.has(finish.kind)).map(({ finish }) => finish.id),
  );
  return ({ kind, finishId }) =>
    kind === 'mix' || kind === 'wash-bowl' || (kind === 'make-finish' && mixed.has(finishId ?? ''));
}

export function shapeFaults(asked: Asked): string[] {
  const needsMixer = mixerRule(asked);
  return asked.plan.steps.flatMap((step) => [
    ...must(
      Number.isSafeInteger(step.from) && Number.isSafeInteger(step.to) && step.from <= step.to,
      `backwards: ${step.id}`,
    ),
    ...must(step.handsOn === !WAITING.has(step.kind), `hands: ${step.id}`),
    ...must(step.mixer === needsMixer(step), `mixer: ${step.id}`),
  ]);
}

export function busyFaults(asked: Asked): string[] {
  const { plan, room } = asked;
  const hands = plan.steps.filter(({ kind }) => !WAITING.has(kind)).map(use);
  const mixer = plan.steps.filter(mixerRule(asked)).map(use);
  return [
    ...overuse('hands-double', hands, room.work.hands),
    ...overuse('mixer-double', mixer, 1),
    ...ovenFaults(asked),
  ];
}

function ovenFaults({ plan, room }: Asked): string[] {
  const loads = [...plan.loads].sort((a, b) => a.from - b.from);
  return loads.flatMap((load, at) => {
    const before = loads[at - 1];
    const restedMin = before ? load.from - before.to : Number.POSITIVE_INFINITY;
    const on = stepsOf(plan, 'oven-on', ({ loadId }) => loadId === load.id);
    const heated = on.some(
      ({ from, to }) => to <= load.from && to - from >= room.times.preheatMin && from >= (before?.to ?? 0),
    );
    return [
      ...must(restedMin >= room.work.ovenRoom.recoveryMin, `oven-double: ${load.id}`),
      ...must(load.cold === restedMin > 2 * room.times.preheatMin, `oven-heat: ${load.id}`),
      ...must(heated || !load.cold, `oven-cold: ${load.id}`),
    ];
  });
}

export function sleepFaults({ plan, room }: Asked): string[] {
  const awake = (from: number, to: number) =>
    room.calendar.days.some(
      ({ workFromMinute, workToMinute }) => workFromMinute <= from && to <= workToMinute,
    );
  return (
    plan.steps
      // A hand-over late in the day is driven home from after it.
      .filter(({ kind }) => kind !== 'drive-back')
      .filter(({ kind }) => !WAITING.has(kind) || kind === 'bake' || kind === 'oven-on')
      .flatMap(({ id, from, to }) => must(awake(from, to), `asleep: ${id}`))
  );
}

/** A tin is taken from its first batter until it is turned out and washed. */
export function tinFaults({ plan }: Asked): string[] {
  const uses = plan.loads.flatMap((load) =>
    load.tins.map(({ tin, orderId, tierId }) => {
      const mine = (step: Step) =>
        step.loadId === load.id &&
        step.tiers.some((tier) => tier.orderId === orderId && tier.tierId === tierId);
      const filled = stepsOf(plan, 'fill-tins', mine).map(({ from }) => from);
      const freed = stepsOf(plan, 'turn-out', mine).map(({ to }) => to);
      const from = Math.min(load.from, ...filled);
      // Out and washed before slower tins of its load are done, it may be filled again.
      const to = freed.length > 0 ? Math.max(...freed) : load.to;
      return { tin, use: { from, to, count: 1, who: `${load.id} ${tierId}` } };
    }),
  );
  const ids = [...new Set(uses.map(({ tin }) => tin.id))];
  return ids.flatMap((id) => {
    const mine = uses.filter(({ tin }) => tin.id === id);
    return overuse(
      `tin-double ${id}`,
      mine.map((each) => each.use),
      mine[0]?.tin.owned ?? 0,
    );
  });
}
