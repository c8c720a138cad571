/** Orders and weeks as views, with boards and boxes. Long because all of it reads one view of the demo’s orders. */
import { beforeAll, describe, expect, it } from 'vitest';
import { orderPieces } from '../../src/compute/costs/order-pieces.ts';
import type { Content } from '../../src/domain/content.ts';
import { NO_COSTS } from '../../src/domain/costs.ts';
import type { OrderView } from '../../src/views/order.types.ts';
import { type OrdersView, ordersView } from '../../src/views/orders.ts';
import { workedOrders } from '../../src/views/planned-orders.ts';
import type { WeekView } from '../../src/views/week.types.ts';
import { demoContent } from '../samples/demo.ts';
import { orderOf } from './support/order-of.ts';

let content: Content;
let view: OrdersView;
beforeAll(async () => {
  content = await demoContent();
  view = ordersView(content);
});

const order = (id: string): OrderView => orderOf(view, id);
const week = (id: string): WeekView => {
  const found = view.weeks.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no week ${id}`);
  return found;
};

describe('the view of an order', () => {
  it('names the day with its weekday, and the place', () => {
    const { handOver } = order('three-tiers-for-sixty');
    expect(handOver.text).toBe('Saturday 28 November 2026, 14:00');
    expect(handOver.placeText).toBe('Set up at the venue');
  });

  it('tells how long each cake keeps, and in its warnings of one without a label', () => {
    const { keeping, warnings } = order('numeral-six');
    expect(keeping.map(({ dateText }) => dateText)).toEqual(['Best before: 30 November 2026']);
    expect(warnings.map(({ code }) => code)).not.toContain('no-label');
    const ingredients = content.ingredients.map((item) => {
      const { allergens: _, ...rest } = item;
      return item.id === 'plain-flour' || item.id === 'self-raising-flour' ? rest : item;
    });
    const other = ordersView({ ...content, ingredients }).orders.find(({ id }) => id === 'numeral-six');
    expect(other?.keeping.map(({ dateText }) => dateText)).toEqual([null]);
    const told = other?.warnings.filter(({ code }) => code === 'no-label').map(({ message }) => message);
    expect(told?.[0]).toMatch(/no label\. Nobody has filled in the allergens of .*flour/i);
  });

  it('holds everything as plain data', () => {
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  });

  it('costs to the penny: each line rounded, then added', () => {
    for (const { cost, quote } of view.orders) {
      const sum = cost.rows.reduce((all, row) => all + row.cost.value, 0);
      expect(sum).toBe(cost.cost.value);
      expect(cost.price.value % content.costs.roundUpToMinor).toBe(0);
      expect(cost.price.value * 0.8).toBeGreaterThanOrEqual(cost.cost.value);
      expect((cost.price.value - content.costs.roundUpToMinor) * 0.8).toBeLessThan(cost.cost.value);
      expect(cost.margin.value).toBe(cost.price.value - cost.cost.value);
      expect(quote.net.value + quote.vat.value).toBe(quote.total.value);
    }
  });

  it('ingredients as used are the sum of their rounded lines, whatever stands on the shelf', () => {
    for (const { cost, shopping } of view.orders) {
      const used = shopping.rows.reduce((all, row) => all + (row.used?.value ?? 0), 0);
      expect(cost.rows[0]?.cost.value).toBe(used);
    }
    const bare = ordersView({ ...content, stock: [] });
    expect(bare.orders.map(({ cost }) => cost.cost.value)).toEqual(
      view.orders.map(({ cost }) => cost.cost.value),
    );
  });

  it('names what has no price, and says when nothing has', () => {
    const ingredients = content.ingredients.map((item) => {
      const { packs: _, ...rest } = item;
      return item.id === 'butter' ? rest : item;
    });
    const [one] = ordersView({ ...content, ingredients }).orders;
    expect(one?.cost.notes).toEqual(['Without the price of butter: the cost is too low by as much.']);
    expect(one?.shopping.notes.join(' ')).toContain('No pack is known for butter');
    expect(order('fair-trays').cost.notes.join(' ')).toMatch(/^The drive is in the hours/);
    const bare = content.ingredients.map(({ packs: _, ...rest }) => rest);
    const [free] = ordersView({ ...content, ingredients: bare, costs: NO_COSTS }).orders;
    expect(free?.cost.notes.join(' ')).toContain('Nothing is priced yet');
    expect(free?.cost.price.value).toBe(0);
  });

  it('says where the week shares the shelf', () => {
    expect(order('orange-birthday').shopping.notes.join(' ')).toContain('only order');
    expect(order('fair-trays').shopping.notes.join(' ')).not.toContain('only order');
  });

  it('hands-on time is the sum of its jobs', () => {
    for (const { cost } of view.orders) {
      const minutes = cost.jobs.reduce((all, job) => all + job.minutes.value, 0);
      expect(cost.handsOn.value).toBeCloseTo(minutes / 60, 6);
    }
  });

  it('times a plain cake by hand: 157 minutes for one eight-inch round, coated', () => {
    // weigh 10, mix 20, wash 5, line 5, fill 3, oven 3 + 3, turn out 3, wrap 5, level 5 + 3 layers of 5,
    // crumb coat 15, final coat 30, buttercream 20, box 15
    expect(order('orange-birthday').cost.jobs.reduce((all, job) => all + job.minutes.value, 0)).toBe(157);
  });

  it('never says that a cake is free from anything', () => {
    for (const one of view.orders) {
      expect(one.allergens.sentence).toMatch(/^Contains /);
      expect(JSON.stringify(one)).not.toMatch(/\b(gluten|dairy|nut|egg)[- ]free|free from|vegan\b/i);
    }
  });

  it('lists what must come off before it is eaten, on the quote too', () => {
    const { inedible, cautions, quote } = order('three-tiers-for-sixty');
    expect(inedible).toEqual(['Fresh flowers in picks']);
    expect(cautions.find(({ code }) => code === 'inedible')?.text).toContain('fresh flowers in picks');
    const flowers = quote.rows.filter(({ note }) => note?.startsWith('not food'));
    expect(flowers.map(({ name }) => name)).toEqual(['Fresh flowers in picks']);
  });

  it('names what is hired as such and not among what is taken off, with the day it comes back', () => {
    const { hired, inedible, cautions, quote } = order('three-tiers-for-sixty');
    expect(hired).toEqual(['Cake stand, by 1 December 2026']);
    expect(inedible.join()).not.toMatch(/stand/i);
    expect(cautions.find(({ code }) => code === 'hired')?.text).toContain('cake stand, by 1 December 2026');
    const row = quote.rows.find(({ name }) => name === 'Cake stand');
    expect(row?.note).toBe('hired: to be returned by 1 December 2026');
    // A hired dummy is both: it is lifted off, and it comes back.
    const { hired: dummies, quote: other } = order('square-and-round');
    expect(dummies).toEqual(['Top tier (dummy)']);
    const note = other.rows.find(({ name }) => name.startsWith('Hire of'))?.note;
    expect(note).toBe('not food: taken off before the cake is eaten; hired: to be returned');
    expect(order('orange-birthday').hired).toEqual([]);
  });

  it('leaves an open decision open', () => {
    const open = order('three-tiers-for-sixty').decisions.filter(({ answer }) => answer === null);
    expect(open.map(({ question }) => question)).toEqual(['Who takes the flowers off before cutting']);
  });
});

describe('boards and boxes', () => {
  it('are the same on the order sheet and in the stack, tier by tier', () => {
    for (const id of ['three-tiers-for-sixty', 'square-and-round']) {
      const { tiers, dummies, stack } = order(id);
      const boards = [...tiers, ...dummies].flatMap((tier) => {
        const stacked = stack?.tiers.find((one) => one.id === tier.id);
        return stacked === undefined ? [] : [[tier.board?.text, stacked.board.across.text]];
      });
      expect(boards).toHaveLength(stack?.tiers.length ?? -1);
      for (const [told, stands] of boards) expect(told).toBe(stands);
    }
  });

  it('are one box where the stack travels put together, as high as the stack and the air above it', () => {
    const { tiers, dummies, stack } = order('square-and-round');
    const { boxHeightClearanceMm } = content.finishing;
    const [lowest, ...above] = (stack?.tiers ?? []).map(({ id }) =>
      [...tiers, ...dummies].find((one) => one.id === id),
    );
    expect(lowest?.boxHeight?.value).toBeCloseTo((stack?.height.value ?? 0) + boxHeightClearanceMm, 6);
    expect(lowest?.boxSide).toEqual(lowest?.board);
    expect(above.length).toBeGreaterThan(0);
    for (const tier of above) expect(tier).toMatchObject({ boxHeight: null, boxText: 'the stack’s box' });
  });

  it('are as high as the cake on the board it really stands on: 12 mm under the lowest tier, 3 mm under the others', () => {
    const { boxHeightClearanceMm: air } = content.finishing;
    const inside = (id: string) => order(id).tiers.map(({ boxHeight }) => boxHeight?.value ?? null);
    const cakes = (id: string) => order(id).tiers.map(({ coatedHeight }) => coatedHeight.value);
    const under = [12, 3, 3];
    expect(inside('three-tiers-for-sixty')).toEqual(
      cakes('three-tiers-for-sixty').map((high, at) => expect.closeTo(high + (under[at] ?? 0) + air, 6)),
    );
    // Plain trays stand on cards.
    expect(inside('fair-trays').slice(0, 1)).toEqual(
      cakes('fair-trays')
        .slice(0, 1)
        .map((high) => expect.closeTo(high + 3 + air, 6)),
    );
  });

  it('are as wide on the shopping list as on the order sheet', () => {
    for (const { planned } of workedOrders(content).orders) {
      const { drum, card } = orderPieces(planned, content.finishing).widthsMm;
      const { tiers, dummies } = order(planned.order.id);
      const told = [
        ...tiers.flatMap(({ board, count }) =>
          board === null ? [] : Array.from({ length: count.value }, () => board.value),
        ),
        ...dummies.flatMap(({ board }) => (board === null ? [] : [board.value])),
      ];
      const upwards = (all: number[]) => [...all].sort((a, b) => a - b);
      expect(upwards([...drum, ...card])).toEqual(upwards(told));
    }
  });

  it('lets one person lift what weighs less than two people are asked for', () => {
    const lift = order('three-tiers-for-sixty').stack?.cautions.find(
      ({ code }) => code === 'two-people-lift',
    );
    expect(lift?.text).toMatch(/^One person can lift it, two above 8\u00a0kg/);
  });
});

describe('the view of a week', () => {
  it('mixes one batter of several orders together, with whole eggs in every bowl', () => {
    const [plain] = week('2026-W48').batters;
    const orders = plain?.bowlfuls.flatMap(({ tins }) => tins.map(({ name }) => name));
    expect(orders).toEqual(
      expect.arrayContaining(['Two jam sandwich cakes', 'Three tiers for sixty: bottom tier']),
    );
    for (const bowl of plain?.bowlfuls ?? [])
      for (const egg of bowl.eggs) expect(Number.isInteger(egg.count.value)).toBe(true);
  });

  it('Σ bowls = Σ what the tins get + what is over, in grams', () => {
    for (const { batters } of view.weeks) {
      for (const { batter, surplus, bowlfuls } of batters) {
        for (const bowl of bowlfuls) {
          const filled = bowl.tins.reduce(
            (all, { count, pieces, each }) => all + (pieces ?? count).value * each.value,
            0,
          );
          const over = Math.max(0, bowl.surplus.value);
          expect(Math.abs(bowl.batter.value - filled - over)).toBeLessThanOrEqual(0.01 * bowl.tins.length);
        }
        const sum = (of: (bowl: (typeof bowlfuls)[number]) => number): number =>
          bowlfuls.reduce((all, bowl) => all + of(bowl), 0);
        expect(sum((bowl) => bowl.batter.value)).toBeCloseTo(batter.value, 3);
        expect(sum((bowl) => bowl.surplus.value)).toBeCloseTo(surplus.value, 3);
      }
    }
  });

  it('tells each order whose batter is shared to weigh from the week sheet', () => {
    expect(order('three-tiers-for-sixty').sharedText).toContain('R-2215');
    expect(order('numeral-six').sharedText).toBeNull();
  });

  it('mixes every bowl on a day before its hand-over', () => {
    const { batters, orders } = week('2026-W48');
    const last =
      orders
        .map(({ handOver }) => handOver.localTime.slice(0, 10))
        .sort()
        .at(-1) ?? '';
    for (const { mixedOn } of batters)
      for (const day of mixedOn) expect(day === null ? '' : day).toMatch(/^2026-11-2\d$/);
    expect(batters.flatMap(({ mixedOn }) => mixedOn).every((day) => day !== null && day < last)).toBe(true);
  });

  it('buys for all orders what buying order by order would never undercut', () => {
    const { shopping, orders } = week('2026-W48');
    const alone = orders.reduce((sum, { id }) => sum + order(id).shopping.total.value, 0);
    expect(shopping.total.value).toBeLessThanOrEqual(alone + 2000);
    const needed = shopping.rows.find(({ ingredient }) => ingredient.id === 'butter')?.needed.value ?? 0;
    expect(needed).toBeGreaterThan(3000);
  });

  it('has hours for the week and for each of its orders, and a calendar day for each', () => {
    const own = view.timetables.filter(({ weekId }) => weekId === '2026-W48');
    expect(own.map(({ orderId }) => orderId)).toEqual([null, ...week('2026-W48').orders.map(({ id }) => id)]);
    for (const { view: hours } of own) expect(hours.days.length).toBeGreaterThan(0);
  });
});

describe('an order that cannot be finished in time', () => {
  it('is told in the week, and everything else of it still stands', () => {
    const work = { ...content.work, workingDay: { fromMin: 720, toMin: 725 } };
    const weeks = content.weeks.map((one) => ({
      ...one,
      calendar: {
        ...one.calendar,
        days: one.calendar.days.map((day) => ({
          ...day,
          workFromMinute: day.startMinute + 720,
          workToMinute: day.startMinute + 725,
        })),
      },
    }));
    const short = ordersView({ ...content, work, weeks });
    expect(short.weeks[0]?.refusals.length).toBeGreaterThan(0);
    expect(short.timetables).toEqual([]);
    expect(short.orders[0]?.batters.length).toBeGreaterThan(0);
  });
});

describe('what goes on a cake', () => {
  it('says between how many layers, and gives what the layers get together', () => {
    const [bottom] = order('three-tiers-for-sixty').tiers;
    const filling = bottom?.finishes.find(({ use }) => use === 'filling');
    const [, layers = '', grams = ''] = /between (\w+) layers, ([\d,]+)/.exec(filling?.useText ?? '') ?? [];
    expect(layers).toBe(['none', 'one', 'two', 'three', 'four'][bottom?.layers.value ?? 0]);
    const gaps = (bottom?.layers.value ?? 0) - 1;
    // Each is rounded to the gram.
    const together = Number(grams.replace(',', '')) * gaps;
    expect(Math.abs(together - (filling?.on.value ?? 0))).toBeLessThanOrEqual(gaps);
  });

  it('tells what a dam is and which coat comes first', () => {
    const texts = view.orders.flatMap(({ tiers }) => tiers.flatMap(({ finishes }) => finishes));
    const dam = texts.find(({ use }) => use === 'dam');
    expect(dam?.useText).toMatch(/^Dam: a bead of .* to hold the filling in$/);
    expect(texts.filter(({ use }) => use === 'coating').map(({ useText }) => useText)).toContainEqual(
      expect.stringMatching(/^Crumb coat, .*; then /),
    );
  });
});

describe('what is written and told at the end', () => {
  it('asks for what is not food and for hired things only where an order has some', () => {
    const lines = (id: string): string[] => order(id).signLines;
    expect(lines('three-tiers-for-sixty')).toEqual(
      expect.arrayContaining(['Told what is not food', 'Hired things back on']),
    );
    expect(lines('fair-trays')).toEqual([
      'Asked about allergies on',
      'Answer',
      'Allergens told to',
      'Handed over by, at',
    ]);
  });

  it('keeps kneaded paste from drying, and tells a stall which label goes where', () => {
    const notes = (orderId: string): string =>
      view.timetables
        .filter((one) => one.orderId === orderId)
        .flatMap((one) => one.view.days.flatMap(({ rows }) => rows.flatMap((row) => row.notes)))
        .join(' ');
    expect(notes('three-tiers-for-sixty')).toContain('Wrap it airtight');
    expect(notes('three-tiers-for-sixty')).not.toContain('sold loose');
    expect(notes('fair-trays')).toContain('beside what is sold loose stands its allergen card');
  });
});
