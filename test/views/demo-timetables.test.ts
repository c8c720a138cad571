/** The demo kitchen's own weeks under the checker of timetables: real tins, shelves, bake windows and clocks. */
import { beforeAll, expect, it } from 'vitest';
import { workedOrders } from '../../src/views/planned-orders.ts';
import { timetableView } from '../../src/views/timetable/timetable.ts';
import { planFaults } from '../compute/timeline/checker/plan-faults.ts';
import { demoContent } from '../samples/demo.ts';

let weeks: ReturnType<typeof workedOrders>['weeks'];
beforeAll(async () => {
  ({ weeks } = workedOrders(await demoContent()));
});

/** Every finish of an order is spread, brushed or laid on in a line that names it, and readied before. */
it('every finish of every order of the demo is made or kneaded in a step, and named where it is used', () => {
  let seen = 0;
  for (const { planned, room, plan } of weeks) {
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    for (const order of planned.work.orders) {
      const kitchen = { name: 'Test', edition: '2026-11-01', locale: 'en-GB' as const };
      const asked = { id: order.id, title: order.title, kitchen, work: planned.work, room, plan: plan.value };
      const rows = timetableView({ ...asked, orderId: order.id }).days.flatMap((day) => day.rows);
      const finishes = [...order.tiers, ...(order.dummies ?? [])].flatMap((tier) => tier.finishes);
      for (const { finish } of finishes) {
        const name = finish.name.toLowerCase();
        const lines = rows.filter(({ what }) => what.toLowerCase().includes(name));
        expect(lines[0]?.what.toLowerCase(), `${order.id} ${name}`).toMatch(/^(make|knead) the /);
        expect(lines.length, `${order.id} ${name}`).toBeGreaterThan(1);
        seen += 1;
      }
    }
  }
  expect(seen).toBeGreaterThan(10);
});

it('a cutting cake is told from a tier of the same tin', () => {
  const lines = weeks.flatMap(({ planned, room, plan }) => {
    const kitchen = { name: 'Test', edition: '2026-11-01', locale: 'en-GB' as const };
    if (!plan.ok) return [];
    const asked = { id: 'week', title: 'Week', kitchen, work: planned.work, room, plan: plan.value };
    return timetableView(asked).days.flatMap((day) => day.rows.map(({ what }) => what));
  });
  expect(lines.filter((what) => what.includes('eight-inch square (cutting cake)')).length).toBeGreaterThan(3);
  expect(lines.some((what) => /eight-inch square(?! \(cutting)/.test(what))).toBe(true);
});

it('every week of the demo has a timetable without fault, close to its bound', () => {
  expect(weeks.length).toBeGreaterThan(1);
  for (const { planned, room, plan } of weeks) {
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    expect(planFaults(planned.work, room, plan.value)).toEqual([]);
    expect(plan.value.bound.gap).toBeLessThanOrEqual(0.1);
    expect(plan.value.warnings).toEqual([]);
  }
});
