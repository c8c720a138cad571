/** The hours of an order's cost are those of its timetable, its drive both ways in them, fuel and wear charged or not. */
import { beforeAll, expect, it } from 'vitest';
import { mixesOfOrder, workOf } from '../../src/compute/orders/work-of.ts';
import { planWeek } from '../../src/compute/timeline/plan-week.ts';
import type { Content } from '../../src/domain/content.ts';
import type { OrderView } from '../../src/views/order.types.ts';
import { ordersView } from '../../src/views/orders.ts';
import { workedOrders } from '../../src/views/planned-orders.ts';
import { demoContent } from '../samples/demo.ts';

let content: Content;
let orders: OrderView[];
beforeAll(async () => {
  content = await demoContent();
  ({ orders } = ordersView(content));
});

const costOf = (id: string, some = orders): OrderView['cost'] => {
  const found = some.find((order) => order.id === id);
  if (found === undefined) throw new Error(`no order ${id}`);
  return found.cost;
};
const driveNotes = (cost: OrderView['cost']): string[] =>
  cost.notes.filter((note) => note.toLowerCase().includes('drive'));

it('drives there and back, as long each way, wherever an order is not fetched', () => {
  const road = (id: string) =>
    costOf(id).jobs.flatMap(({ kind, name, minutes }) =>
      kind === 'deliver' || kind === 'drive-back' ? [`${name} ${minutes.text}`] : [],
    );
  expect(road('three-tiers-for-sixty')).toEqual(['Driving 45', 'Driving back 45']);
  expect(road('fair-trays')).toEqual(['Driving 45', 'Driving back 45']);
  expect(road('numeral-six')).toEqual([]);
});

it('a charged delivery is named, an uncharged one is warned of', () => {
  expect(driveNotes(costOf('square-and-round'))).toEqual([
    expect.stringMatching(/charged beside the cake: delivery within five miles\.$/),
  ]);
  expect(driveNotes(costOf('three-tiers-for-sixty'))).toEqual([
    expect.stringMatching(/its fuel and wear are not in this cost\. Add ‘per: drive’/),
  ]);
  expect(driveNotes(costOf('orange-birthday'))).toEqual([]);
});

it('where packaging has a line for the drive nothing is left to say', () => {
  const line = { name: 'Van', eachMinor: 300, per: 'drive' } as const;
  const costs = { ...content.costs, packaging: [...content.costs.packaging, line] };
  const told = ordersView({ ...content, costs }).orders;
  for (const id of ['square-and-round', 'three-tiers-for-sixty'])
    expect(driveNotes(costOf(id, told))).toEqual([]);
});

it('the hours of the cost are those of a timetable of the order by itself, the week’s shopping apart', () => {
  const worked = workedOrders(content).orders;
  expect(worked.length).toBeGreaterThan(5);
  for (const { planned, effort, week } of worked) {
    const work = workOf([planned], mixesOfOrder(planned));
    const room = { work: content.work, times: content.times, calendar: week.calendar };
    const plan = planWeek(work, room, { passes: 1 });
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    const byHand = plan.value.steps.filter(({ handsOn, kind }) => handsOn && kind !== 'shop');
    expect(effort.handsOnMin, planned.order.id).toBe(
      byHand.reduce((sum, { from, to }) => sum + to - from, 0),
    );
    expect(effort.loads.map(({ minutes }) => minutes)).toEqual(
      plan.value.loads.map(({ from, to }) => to - from),
    );
  }
});
