/** The demo kitchen's own weeks under the checker of timetables: real tins, shelves, bake windows and clocks. */
import { expect, it } from 'vitest';
import { workedOrders } from '../../src/views/planned-orders.ts';
import { planFaults } from '../compute/timeline/checker/plan-faults.ts';
import { demoContent } from '../samples/demo.ts';

it('every week of the demo has a timetable without fault, close to its bound', async () => {
  const content = await demoContent();
  const { weeks } = workedOrders(content);
  expect(weeks.length).toBeGreaterThan(1);
  for (const { planned, room, plan } of weeks) {
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    expect(planFaults(planned.work, room, plan.value)).toEqual([]);
    expect(plan.value.bound.gap).toBeLessThanOrEqual(0.1);
    expect(plan.value.warnings).toEqual([]);
  }
});
