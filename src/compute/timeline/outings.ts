/** Tins coming out of the oven: together where one opening of the door serves, and turned out when they have cooled. */
import type { Tail } from './activity.types.ts';
import type { BatchTin } from './batches.ts';
import { coolWait } from './process.ts';
import { subjectOf } from './subjects.ts';
import type { WorkRoom } from './work.ts';

/** How much longer than it must a cake may stay in its tin, for each cake that comes out with it. */
const PATIENCE_MIN = 20;

export interface Outing {
  tins: BatchTin[];
  /** Offset from the door closing. */
  at: number;
}

/** Tins that come out together: those whose minutes end within one opening of the door. */
export function outings(tins: readonly BatchTin[], doorMin: number, notBefore: number): Outing[] {
  const found: Outing[] = [];
  for (const tin of [...tins].sort((a, b) => a.tier.bake.by - b.tier.bake.by)) {
    const last = found.at(-1);
    const { by, expected } = tin.tier.bake;
    if (last && by < last.at + doorMin && expected <= last.at) last.tins.push(tin);
    else found.push({ tins: [tin], at: Math.max(by, last ? last.at + doorMin : notBefore) });
  }
  return found;
}

/** One turning out for each tier of an outing. */
export function turnings({ tins, at }: Outing, loadId: string, inAt: number, { times }: WorkRoom): Tail[] {
  return tins.map((tin) => ({
    kind: 'turn-out',
    subject: subjectOf([tin], loadId),
    after: inAt + at + times.ovenDoorMin,
    waitMin: times.coolInTinMin,
    patienceMin: PATIENCE_MIN * tins.length,
    minutes: times.turnOutMin * tin.count,
    waits: coolWait(tin.tier, times),
  }));
}
