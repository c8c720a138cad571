/** What goes on in one coat has no first coat before it: not in the hours, not in the timetable's words. */
import { describe, expect, it } from 'vitest';
import { planOrder } from '../../../src/compute/orders/plan-order.ts';
import { orderWork } from '../../../src/compute/orders/work-of.ts';
import { planWeek } from '../../../src/compute/timeline/plan-week.ts';
import { tierStages } from '../../../src/compute/timeline/process.ts';
import type { FinishWork } from '../../../src/compute/timeline/work.ts';
import { timetableView } from '../../../src/views/timetable/timetable.ts';
import { orderContent, orderNamed, plannedDemo } from '../orders/demo-orders.ts';
import { planFaults } from './checker/plan-faults.ts';
import { BIRTHDAY, ROOM, work } from './sample-week.ts';

const cream: FinishWork['finish'] = {
  ...{ id: 'whipped-cream', name: 'Whipped cream', kind: 'cream' },
  ...{ keepsDays: 1, chilled: true },
};
const [tier] = BIRTHDAY.tiers;
if (tier === undefined) throw new Error('no tier');
const inCream = { ...tier, finishes: [{ finish: cream, use: 'coating' as const, oneCoat: true as const }] };

describe('a cake coated with whipped cream, in one', () => {
  it('takes the half hour of a final coat and the hour in the fridge, and nothing before it', () => {
    const coats = tierStages(inCream, ROOM.times).filter(({ finishId }) => finishId === 'whipped-cream');
    expect(coats.map(({ kind, minutes, waits }) => [kind, minutes, waits])).toEqual([
      ['final-coat', 30, [{ kind: 'coat-chills', minutes: 60 }]],
    ]);
  });

  it('is told as one coat, and its timetable has no fault', () => {
    const asked = work({ ...BIRTHDAY, tiers: [inCream] });
    const made = planWeek(asked, ROOM);
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    expect(planFaults(asked, ROOM, made.value)).toEqual([]);
    const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
    const { days } = timetableView({
      ...{ id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan: made.value },
    });
    const said = days.flatMap(({ rows }) => rows.map(({ what }) => what));
    expect(said.filter((text) => /^Coat .+ with whipped cream$/.test(text))).toHaveLength(1);
    expect(said.join('; ')).not.toMatch(/(First|Final) coat/);
  });

  it('is known as such from the finish’s own file; buttercream with a crumb coat is not', async () => {
    const { content, orders } = await plannedDemo();
    const { order } = orderNamed(orders, 'orange-birthday');
    const coated = (finishId: string): FinishWork[] => {
      const finishes = [{ finishId, use: 'coating' as const }];
      const tiers = order.tiers.map((one) => ({ ...one, finishes }));
      const planned = planOrder({ ...order, tiers }, orderContent(content));
      if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
      return orderWork(planned.value).tiers.flatMap((one) => one.finishes);
    };
    expect(coated('whipped-cream')).toMatchObject([{ use: 'coating', oneCoat: true }]);
    expect(coated('vanilla-buttercream').map(({ oneCoat }) => oneCoat)).toEqual([undefined]);
  });
});
