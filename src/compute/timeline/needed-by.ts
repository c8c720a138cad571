/** When must a tier's cakes be out of the oven at the latest, if nothing else were to be done? Sleep is kept free. */
import type { Minute } from '../../domain/calendar.ts';
import type { KitchenTimes } from '../../domain/times.ts';
import { type Awake, latestAwake } from './awake.ts';
import {
  coolInTinMin,
  coolWait,
  orderStages,
  restStages,
  type Stage,
  tierStages,
  waitOf,
} from './process.ts';
import type { OrderWork, TierWork } from './work.ts';

/** Instant before which the tier must be out of the oven; NEVER when the days do not reach so far. */
export function neededBy(order: OrderWork, tier: TierWork, times: KitchenTimes, awake: Awake): Minute {
  const back = (end: Minute, stages: readonly Stage[]): Minute =>
    stages.reduceRight((by, { minutes, waits }) => latestAwake(awake, minutes, by - waitOf(waits)), end);
  const rested = back(order.handOver, [...tierStages(tier, times), ...orderStages(order, times)]);
  const cooled = back(rested, restStages(tier, tier.count, times)) - waitOf(coolWait(tier, times));
  return latestAwake(awake, tier.count * times.turnOutMin, cooled) - coolInTinMin(tier, times);
}
