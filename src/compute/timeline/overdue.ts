/**
 * How far past their keeping are cakes and finishes at the hand-over? A cake counts from the oven, a finish from its
 * making. A timetable with less of that is the better one, whatever else is said for it.
 */
import { DAY_MIN } from '../../domain/times.ts';
import type { Placed, Subject } from './activity.types.ts';
import type { Network } from './network.ts';
import { keepsMin } from './process.ts';
import type { OrderWork, WorkRoom } from './work.ts';

export interface Overdue {
  /** Of all cakes and finishes together. */
  minutes: number;
  /** Activities that bear on what is past its keeping: to be put later. */
  late: Set<number>;
}

type IsAbout = (subject: Subject) => boolean;

interface Late {
  minutes: number;
  isAbout: IsAbout;
}

const lateCakes = ({ loads }: Network, placed: readonly Placed[], { times }: WorkRoom): Late[] =>
  loads.flatMap(({ load, activity }) =>
    load.tins.map(({ order, tier }) => ({
      minutes: order.handOver - ((placed[activity]?.start ?? 0) + load.inAt) - keepsMin(tier, times),
      isAbout: ({ tiers }) => tiers.some((ref) => ref.orderId === order.id && ref.tierId === tier.id),
    })),
  );

function lateFinishes(
  { activities }: Network,
  placed: readonly Placed[],
  orders: readonly OrderWork[],
): Late[] {
  return activities.flatMap(({ id, parts }) => {
    const [part] = parts;
    if (part?.kind !== 'make-finish') return [];
    const { finishId, orderIds } = part.subject;
    return orders
      .filter((order) => orderIds.includes(order.id))
      .flatMap((order) => {
        const uses = [...order.tiers, ...(order.dummies ?? [])].flatMap(({ finishes }) => finishes);
        const keepsDays = uses.find(({ finish }) => finish.id === finishId)?.finish.keepsDays;
        if (keepsDays === undefined) return [];
        return [
          {
            minutes: order.handOver - (placed[id]?.start ?? 0) - keepsDays * DAY_MIN,
            isAbout: (subject: Subject) => subject.orderIds.includes(order.id),
          },
        ];
      });
  });
}

/** What of a placed plan is past its keeping. */
export function overdueOf(
  network: Network,
  placed: readonly Placed[],
  orders: readonly OrderWork[],
  room: WorkRoom,
): Overdue {
  const late = [...lateCakes(network, placed, room), ...lateFinishes(network, placed, orders)].filter(
    ({ minutes }) => minutes > 0,
  );
  const isLate: IsAbout = (subject) => late.some(({ isAbout }) => isAbout(subject));
  return {
    minutes: late.reduce((sum, { minutes }) => sum + minutes, 0),
    late: new Set(
      network.activities
        .filter(({ parts }) => late.length > 0 && parts.some(({ subject }) => isLate(subject)))
        .map(({ id }) => id),
    ),
  };
}
