/** Weeks of orders as they might come in, invented: one to four orders around a night when the clock changes. */
import fc from 'fast-check';
import type {
  Bowlful,
  DummyWork,
  FinishWork,
  OrderWork,
  TierWork,
  Work,
  WorkRoom,
} from '../../../src/compute/timeline/work.ts';
import type { Calendar } from '../../../src/domain/calendar.ts';
import { USUAL_TIMES } from '../../../src/domain/times.ts';
import type { Tin } from '../../../src/domain/tin.ts';
import { USUAL_WORK } from '../../../src/domain/work-settings.ts';
import { kitchenCalendar } from '../../../src/parse/calendar.ts';

export function calendarOf(zone: string, from: string, to: string): Calendar {
  const made = kitchenCalendar(zone, USUAL_WORK.workingDay, from, to);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}

export const OCTOBER = calendarOf('Europe/London', '2026-07-01', '2026-11-02');

const round = (inches: number, owned: number): Tin => ({
  id: `round-${inches}`,
  name: `${inches}-inch round`,
  shape: { kind: 'round', acrossMm: inches * 25.4 },
  depthMm: 76.2,
  owned,
  unit: 'in',
});

export const TINS: Tin[] = [
  round(4, 4),
  round(6, 2),
  round(7, 2),
  round(8, 2),
  round(10, 1),
  { ...round(8, 2), id: 'square-8', name: 'Eight-inch square', shape: { kind: 'square', sideMm: 203.2 } },
  {
    ...round(9, 2),
    id: 'loaf-9-5',
    name: 'Two-pound loaf',
    shape: { kind: 'loaf', lengthMm: 228.6, widthMm: 127, baseLengthMm: 203, baseWidthMm: 102 },
  },
];

const finish = (id: string, kind: FinishWork['finish']['kind'], keepsDays: number): FinishWork['finish'] => ({
  id,
  name: id,
  kind,
  keepsDays,
  chilled: false,
});

const BUTTERCREAM = finish('vanilla-buttercream', 'buttercream', 5);
const CURD = finish('lemon-curd', 'curd', 7);
const GANACHE = finish('dark-ganache', 'ganache', 7);
const SUGARPASTE = finish('sugarpaste', 'sugarpaste', 60);
const SYRUP = finish('syrup', 'syrup', 14);

export const FINISHINGS: FinishWork[][] = [
  [],
  [{ finish: BUTTERCREAM, use: 'filling' }],
  [
    { finish: CURD, use: 'filling' },
    { finish: BUTTERCREAM, use: 'coating' },
  ],
  [
    { finish: SYRUP, use: 'brushed' },
    { finish: GANACHE, use: 'filling' },
    { finish: GANACHE, use: 'coating' },
    { finish: SUGARPASTE, use: 'rolled' },
  ],
];

const CREAM = finish('whipped-cream', 'cream', 1);
FINISHINGS.push([
  { finish: CREAM, use: 'filling' },
  { finish: CREAM, use: 'coating', oneCoat: true },
]);

const GLAZE = finish('chocolate-glaze', 'poured glaze', 3);
FINISHINGS.push([
  { finish: GANACHE, use: 'filling' },
  { finish: GANACHE, use: 'coating' },
  { finish: GLAZE, use: 'coating', oneCoat: true },
]);

const MARZIPAN = finish('marzipan', 'marzipan', 21);
const ICING = finish('royal-icing', 'royal icing', 60);
FINISHINGS.push([
  { finish: MARZIPAN, use: 'rolled' },
  { finish: ICING, use: 'coating' },
]);

const METHODS = ['creamed', 'creamed', 'all-in-one', 'whisked', 'melted'] as const;

/** Three tiers and more, and what travels put together, has a dowel. */
const dowelled = (tiers: number, assembled: boolean): boolean => tiers > 2 || (tiers > 1 && assembled);

interface RawTier {
  tin: number;
  count: number;
  finishing: number;
  layers: number;
  method: number;
  stands: 'tier' | 'beside' | 'small';
  tall: boolean;
  cutInto: number;
}

/** A tray of twelve cups, as it stands in the oven. */
const MUFFIN_TRAY: Tin = {
  ...{ id: 'muffin-12', name: 'Twelve-cup muffin tin', depthMm: 32, owned: 2, unit: 'mm' },
  ...{ shape: { kind: 'rectangle', lengthMm: 350, widthMm: 265 }, measuredVolumeMl: 1096 },
};

/** A tray or two of cupcakes, the last of them part full, topped or plain. */
function smallOf(at: number, { count, finishing, tin }: RawTier): TierWork {
  const trays = Math.min(count, 2);
  return {
    ...{ id: `tier-${at + 1}`, name: MUFFIN_TRAY.name, tin: MUFFIN_TRAY, count: trays },
    ...{ recipeId: 'creamed', method: 'creamed', ovenC: 160, layers: 1, apart: true },
    bake: { firstLook: 18, expected: 20, by: 22 },
    finishes: finishing % 2 === 0 ? [] : [{ finish: BUTTERCREAM, use: 'topping' }],
    small: { kind: 'cupcakes', box: 6, pieces: trays * 12 - tin },
  };
}

const tierOf = (at: number, raw: RawTier): TierWork => {
  if (raw.stands === 'small') return smallOf(at, raw);
  const tin = TINS[raw.tin % TINS.length] ?? round(8, 2);
  const method = METHODS[raw.method % METHODS.length] ?? 'creamed';
  const expected = 25 + (raw.tin % TINS.length) * 6;
  return {
    id: `tier-${at + 1}`,
    name: tin.name,
    tin,
    ...(raw.tall ? { count: 2, bakes: 2 } : { count: Math.min(raw.count, 2) }),
    recipeId: method,
    method,
    ovenC: method === 'whisked' ? 180 : 160,
    bake: { firstLook: expected - 6, expected, by: expected + 8 },
    layers: raw.layers,
    finishes: FINISHINGS[raw.finishing % FINISHINGS.length] ?? [],
    ...(raw.stands === 'beside' ? { apart: true } : {}),
    ...(raw.cutInto > 0 ? { cutInto: raw.cutInto } : {}),
  };
};

/** A dummy covered like a tier: coated, or under a sheet. */
const dummyOf = (finishing: number): DummyWork => ({
  ...{ id: 'dummy-1', name: 'dummy-1', count: 1, layers: 1 },
  finishes: (FINISHINGS[finishing] ?? []).filter(({ use }) => use === 'coating' || use === 'rolled'),
});

/** One bowlful a method and order, three tins at most. */
export function bowlfulsOf(order: OrderWork, most = 3): Bowlful[] {
  const methods = [...new Set(order.tiers.map(({ method }) => method))];
  return methods.flatMap((method) => {
    const tins = order.tiers
      .filter((tier) => tier.method === method)
      .flatMap((tier) =>
        Array.from({ length: tier.count }, () => ({ orderId: order.id, tierId: tier.id, count: 1 })),
      );
    const loads = Array.from({ length: Math.ceil(tins.length / most) }, (_, at) =>
      tins.slice(at * most, (at + 1) * most),
    );
    return loads.map((some, at) => ({
      id: `${order.id}-${method.replace(' ', '-')}-${at + 1}`,
      name: `${method}, bowlful ${at + 1}`,
      batterKey: `${order.id} ${method}`,
      method,
      actsAtOnce: method === 'melted',
      massG: 1000 * some.length,
      tins: joined(some),
    }));
  });
}

function joined(tins: Bowlful['tins']): Bowlful['tins'] {
  const ids = [...new Set(tins.map(({ tierId }) => tierId))];
  return ids.flatMap((tierId) => {
    const mine = tins.filter((tin) => tin.tierId === tierId);
    return mine.slice(0, 1).map((tin) => ({ ...tin, count: mine.length }));
  });
}

const anyTier = fc.record({
  tin: fc.integer({ min: 0, max: TINS.length - 1 }),
  count: fc.integer({ min: 1, max: 2 }),
  finishing: fc.integer({ min: 0, max: FINISHINGS.length - 1 }),
  layers: fc.integer({ min: 1, max: 4 }),
  method: fc.integer({ min: 0, max: METHODS.length - 1 }),
  stands: fc.constantFrom(
    'tier' as const,
    'tier' as const,
    'tier' as const,
    'beside' as const,
    'small' as const,
  ),
  tall: fc.constantFrom(false, false, false, true),
  cutInto: fc.constantFrom(0, 0, 0, 24, 35),
});

const anyOrder = fc.record({
  tiers: fc.array(anyTier, { minLength: 1, maxLength: 3 }),
  day: fc.integer({ min: 0, max: 6 }),
  hour: fc.integer({ min: 8, max: 19 }),
  place: fc.constantFrom('collected' as const, 'delivered' as const, 'set up at the venue' as const),
  stacked: fc.boolean(),
  assembled: fc.boolean(),
  dummy: fc.constantFrom(null, null, null, 2, 3),
});

/** Monday 19 October 2026, midnight in London, and six days on: the clock goes back on the Sunday. */
const MONDAY = OCTOBER.days.findIndex(({ isoDate }) => isoDate === '2026-10-19');

export interface Week {
  work: Work;
  room: WorkRoom;
}

export const anyWeek: fc.Arbitrary<Week> = fc
  .record({ orders: fc.array(anyOrder, { minLength: 1, maxLength: 4 }), hands: fc.constantFrom(1, 1, 1, 2) })
  .map(({ orders: raw, hands }) => {
    const orders = raw.map((order, at): OrderWork => {
      const tiers = order.tiers.map((tier, index) => tierOf(index, tier));
      const standing = tiers.filter(({ apart }) => apart !== true).map(({ id }) => id);
      // A dummy at the bottom of every other stack, else on top.
      const [own, dummies] = [at % 2 === 0, order.dummy === null ? [] : ['dummy-1']];
      const stack = own ? [...standing, ...dummies] : [...dummies, ...standing];
      const day = OCTOBER.days[MONDAY + order.day];
      return {
        id: `order-${at + 1}`,
        title: `Order ${at + 1}`,
        reference: `R-${at + 1}`,
        handOver: (day?.startMinute ?? 0) + order.hour * 60,
        place: order.place,
        arrangement: order.stacked ? 'stacked' : 'separate',
        travelsAssembled: order.assembled,
        tiers,
        stack,
        ...(order.stacked && dowelled(stack.length, order.assembled) ? { dowel: true } : {}),
        ...(order.dummy === null ? {} : { dummies: [dummyOf(order.dummy)] }),
      };
    });
    const work = { orders, bowlfuls: orders.flatMap((order) => bowlfulsOf(order)) };
    return { work, room: { work: { ...USUAL_WORK, hands }, times: USUAL_TIMES, calendar: OCTOBER } };
  });
