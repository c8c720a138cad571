/** Tins coming out of the oven: together where one opening of the door serves, and turned out when they have cooled. */
import type { KitchenTimes } from '../../domain/times.ts';
import type { Tail } from './activity.types.ts';
import type { BatchTin } from './batches.ts';
import { coolInTinMin, coolWait } from './process.ts';
import { subjectOf } from './subjects.ts';
import type { WorkRoom } from './work.ts';

/** How much longer than it must a cake may stay in its tin, for each cake that comes out with it. */
const PATIENCE_MIN = 20;
/** What cools in its tin for so long may stand there as long again: nobody gets up at night for a fruit cake. */
const LONG_COOLING_MIN = 4 * 60;

const patienceMin = (coolingMin: number, tins: number): number =>
  PATIENCE_MIN * tins + (coolingMin >= LONG_COOLING_MIN ? coolingMin : 0);

export interface Outing {
  tins: BatchTin[];
  /** Offset from the door closing. */
  at: number;
  /** In the tin. */
  coolingMin: number;
}

/** Groups of tins in the order they are due: those due within one opening of the door, and that cool alike, are one. */
function dueTogether(tins: readonly BatchTin[], times: KitchenTimes): Outing[] {
  const found: Outing[] = [];
  for (const tin of [...tins].sort((a, b) => a.tier.bake.by - b.tier.bake.by)) {
    const last = found.at(-1);
    const { by, expected } = tin.tier.bake;
    const coolingMin = coolInTinMin(tin.tier, times);
    const alike = last?.coolingMin === coolingMin;
    if (last && alike && by < last.at + times.ovenDoorMin && expected <= last.at) last.tins.push(tin);
    else found.push({ tins: [tin], at: by, coolingMin });
  }
  return found;
}

/**
 * Tins that come out together, each by the minute it is due. Where two are due at once, one leaves as much sooner as
 * the door needs, unless it is not likely done by then: then the other waits.
 */
export function outings(tins: readonly BatchTin[], times: KitchenTimes, notBefore: number): Outing[] {
  const { ovenDoorMin: doorMin } = times;
  const due = dueTogether(tins, times);
  let next = Number.POSITIVE_INFINITY;
  const early = due.reverse().map((outing) => {
    const likely = Math.max(...outing.tins.map(({ tier }) => tier.bake.expected));
    next = Math.max(likely, Math.min(outing.at, next - doorMin));
    return { ...outing, at: next };
  });
  let free = notBefore;
  return early.reverse().map((outing) => {
    const at = Math.max(outing.at, free);
    free = at + doorMin;
    return { ...outing, at };
  });
}

/** One turning out for each tier of an outing. */
export function turnings(
  { tins, at, coolingMin }: Outing,
  loadId: string,
  inAt: number,
  { times }: WorkRoom,
): Tail[] {
  return tins.map((tin) => ({
    kind: 'turn-out',
    subject: subjectOf([tin], loadId),
    after: inAt + at + times.ovenDoorMin,
    waitMin: coolingMin,
    patienceMin: patienceMin(coolingMin, tins.length),
    minutes: times.turnOutMin * tin.count,
    waits: coolWait(tin.tier, times),
  }));
}
