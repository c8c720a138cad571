/** Hands and oven of one order by itself, added up by hand from the usual times. */
import { describe, expect, it } from 'vitest';
import { effortOf } from '../../../src/compute/costs/order-effort.ts';
import { planWeek } from '../../../src/compute/timeline/plan-week.ts';
import { BIRTHDAY, FAIR, ROOM, THREE_TIERS, work } from '../timeline/sample-week.ts';

const minutesOf = (effort: ReturnType<typeof effortOf>): Record<string, number> =>
  Object.fromEntries(effort.jobs.map(({ kind, minutes }) => [kind, minutes]));

describe('the hours of an order', () => {
  it('two loaves cut for a stall: 96 minutes in the kitchen and 120 away from it, the drive back with it', () => {
    const effort = effortOf(work(FAIR), ROOM);
    // One bowl: weigh 10, mix 10, wash 5; two tins: line 2 × 5, fill 2 × 3, door 3 + 3, turn out 2 × 3,
    // wrap 2 × 5 where all-in-one sponge rests; not levelled, for it is one layer; 72 pieces cut in 18; box 15.
    // Away: 45 there, 30 to set up the stall, 45 back.
    expect(minutesOf(effort)).toMatchObject({ deliver: 45, 'set-up': 30, 'drive-back': 45 });
    expect(effort.handsOnMin).toBe(10 + 10 + 5 + 10 + 6 + 6 + 6 + 10 + 18 + 15 + 45 + 30 + 45);
  });

  it('what is collected has no road at all', () => {
    const kinds = effortOf(work(BIRTHDAY), ROOM).jobs.map(({ kind }) => kind);
    expect(kinds).not.toContain('deliver');
    expect(kinds).not.toContain('drive-back');
  });

  it('are those of its timetable, the week’s shopping apart', () => {
    for (const order of [FAIR, BIRTHDAY, THREE_TIERS]) {
      const plan = planWeek(work(order), ROOM);
      if (!plan.ok) throw new Error('no plan');
      const steps = plan.value.steps.filter(({ handsOn, kind }) => handsOn && kind !== 'shop');
      const byHand = steps.reduce((sum, { from, to }) => sum + to - from, 0);
      expect(effortOf(work(order), ROOM).handsOnMin, order.id).toBe(byHand);
    }
  });
});

describe('the oven of an order', () => {
  it('is opened once for each time something is due: three tiers due at 60, 70 and 85 minutes, 3 × 3 minutes', () => {
    const effort = effortOf(work(THREE_TIERS), ROOM);
    const load = effort.loads.reduce((sum, { outings }) => sum + outings, 0);
    expect(load).toBe(3);
    expect(minutesOf(effort)['oven-out']).toBe(9);
  });

  it('bakes as long as the last cake is due, and is on for the three minutes of taking it out', () => {
    // Two loaves, out by 60: 60 min; oven 63 min at 0.8 kWh an hour and 0.4 to heat it: 0.4 + 0.84 = 1.24 kWh.
    const { loads, ovenKwh } = effortOf(work(FAIR), ROOM);
    expect(loads).toMatchObject([{ ovenC: 160, bakeMin: 60, minutes: 63, tins: 2 }]);
    expect(ovenKwh).toBeCloseTo(ROOM.work.ovenRoom.kwhToHeat + (63 / 60) * ROOM.work.ovenRoom.kwhPerHour, 6);
  });
});
