/** Two orders for one Saturday, and one for the Sunday on which the clock goes back. Invented. */
import type { FinishWork, OrderWork, TierWork, Work, WorkRoom } from '../../../src/compute/timeline/work.ts';
import { USUAL_TIMES } from '../../../src/domain/times.ts';
import type { Tin } from '../../../src/domain/tin.ts';
import { USUAL_WORK } from '../../../src/domain/work-settings.ts';
import { minuteOfLocal } from '../../../src/parse/local-time.ts';
import { bowlfulsOf, FINISHINGS, OCTOBER, TINS } from './random-week.ts';

export function london(localTime: string): number {
  const made = minuteOfLocal(localTime, 'Europe/London');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

export function tin(id: string): Tin {
  const found = TINS.find((each) => each.id === id);
  if (!found) throw new Error(`no tin ${id}`);
  return found;
}

const BUTTERCREAM: FinishWork[] = FINISHINGS[2] ?? [];
const SUGARPASTE: FinishWork[] = FINISHINGS[3] ?? [];

const tier = (id: string, tinId: string, expected: number, finishes: FinishWork[]): TierWork => ({
  id,
  name: `${tin(tinId).name}, vanilla`,
  tin: tin(tinId),
  count: 1,
  recipeId: 'vanilla-equal-weights',
  method: 'creamed',
  ovenC: 160,
  bake: { firstLook: expected - 8, expected, by: expected + 10 },
  layers: 3,
  finishes,
});

const order = (
  id: string,
  wanted: Partial<OrderWork> & Pick<OrderWork, 'handOver' | 'tiers' | 'title'>,
): OrderWork => ({
  id,
  reference: 'R-1042',
  place: 'collected',
  arrangement: 'stacked',
  travelsAssembled: true,
  ...wanted,
});

export const THREE_TIERS = order('three-tiers', {
  title: 'Three tiers for sixty',
  handOver: london('2026-10-24T14:00'),
  place: 'set up at the venue',
  dowel: true,
  tiers: [
    tier('tier-1', 'round-10', 75, SUGARPASTE),
    tier('tier-2', 'round-8', 60, SUGARPASTE),
    tier('tier-3', 'round-6', 50, SUGARPASTE),
  ],
});

export const BIRTHDAY = order('birthday', {
  title: 'Lemon birthday cake',
  reference: 'R-1043',
  handOver: london('2026-10-24T10:00'),
  arrangement: 'separate',
  tiers: [{ ...tier('tier-1', 'round-8', 55, BUTTERCREAM), name: 'Eight-inch round, lemon' }],
});

export const FAIR = order('fair', {
  title: 'Loaves for the fair',
  reference: 'R-1044',
  handOver: london('2026-10-25T09:30'),
  place: 'sold at a stall',
  arrangement: 'separate',
  tiers: [
    {
      ...tier('tier-1', 'loaf-9-5', 50, []),
      name: 'Loaf',
      count: 2,
      layers: 1,
      method: 'all-in-one',
      cutInto: 36,
    },
  ],
});

export const work = (...orders: OrderWork[]): Work => ({
  orders,
  bowlfuls: orders.flatMap((each) => bowlfulsOf(each, 2)),
});

export const ROOM: WorkRoom = { work: USUAL_WORK, times: USUAL_TIMES, calendar: OCTOBER };
