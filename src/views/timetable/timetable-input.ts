/** What timetables and oven plans are made from, with look-ups by id. */
import type { WeekPlan } from '../../compute/timeline/plan.types.ts';
import type { Bowlful, DummyWork, OrderWork, TierWork, Work, WorkRoom } from '../../compute/timeline/work.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import type { TimetableWords } from '../../wording/timetable/index.ts';
import { timetableWordsFor } from '../../wording/timetable/index.ts';

export interface TimetableInput {
  /** Of the order or the week; names files. */
  id: string;
  /** 'Three tiers for sixty', 'Week 48'. */
  title: string;
  kitchen: Pick<Kitchen, 'name' | 'edition' | 'locale' | 'oven'>;
  work: Work;
  room: WorkRoom;
  plan: WeekPlan;
  /** Only what this order needs; left out: everything. */
  orderId?: string;
}

/** The input with its words and look-ups. */
export interface TimetableSource extends TimetableInput {
  words: TimetableWords;
  /** Orders that are shown. */
  orders: OrderWork[];
  /** A tier, or a dummy. */
  tierOf(orderId: string, tierId: string): TierWork | DummyWork | undefined;
  bowlfulOf(id: string | null): Bowlful | undefined;
  loadNumber(id: string | null): number;
}

export function timetableSource(input: TimetableInput): TimetableSource {
  const { work, plan, orderId, kitchen } = input;
  const tiers = new Map(
    work.orders.flatMap((order) =>
      [...order.tiers, ...(order.dummies ?? [])].map((tier) => [`${order.id} ${tier.id}`, tier] as const),
    ),
  );
  const bowlfuls = new Map(work.bowlfuls.map((bowlful) => [bowlful.id, bowlful]));
  return {
    ...input,
    words: timetableWordsFor(kitchen.locale),
    orders: work.orders.filter(({ id }) => orderId === undefined || id === orderId),
    tierOf: (order, tier) => tiers.get(`${order} ${tier}`),
    bowlfulOf: (id) => (id === null ? undefined : bowlfuls.get(id)),
    loadNumber: (id) => plan.loads.findIndex((load) => load.id === id) + 1,
  };
}
