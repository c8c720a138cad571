/** A glaze in the timetable: poured once over a firm coat, left where it stands until it has set. Common practice, no source. */
import { describe, expect, it } from 'vitest';
import type { Step, WeekPlan } from '../../../src/compute/timeline/plan.types.ts';
import { planWeek } from '../../../src/compute/timeline/plan-week.ts';
import { tierStages } from '../../../src/compute/timeline/process.ts';
import { tierDays } from '../../../src/compute/timeline/tier-days.ts';
import type { FinishWork, Work } from '../../../src/compute/timeline/work.ts';
import { timetableView } from '../../../src/views/timetable/timetable.ts';
import { planFaults } from './checker/plan-faults.ts';
import { BIRTHDAY, ROOM, work } from './sample-week.ts';

const finish = (name: string, kind: FinishWork['finish']['kind'], chilled = false): FinishWork => ({
  finish: { id: name, name, kind, keepsDays: 3, chilled },
  use: 'coating',
});
const [tier] = BIRTHDAY.tiers;
if (tier === undefined) throw new Error('no tier');

const glazed = (chilled = false) => ({
  ...tier,
  finishes: [finish('ganache', 'ganache'), finish('chocolate glaze', 'poured glaze', chilled)],
});
const asked: Work = work({ ...BIRTHDAY, tiers: [glazed()] });

function planned(): WeekPlan {
  const made = planWeek(asked, ROOM);
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value;
}
const plan = planned();
const rules = (steps: Step[]): string[] =>
  planFaults(asked, ROOM, { ...plan, steps }).map((fault) => fault.split(':')[0] ?? '');

describe('a cake in ganache with a glaze poured over it', () => {
  it('has two coats of ganache, then a quarter of an hour of pouring and two hours to set', () => {
    const coats = (chilled: boolean) => tierStages(glazed(chilled), ROOM.times).slice(1);
    expect(coats(false).map(({ kind, minutes }) => [kind, minutes])).toEqual([
      ['crumb-coat', 15],
      ['final-coat', 30],
      ['pour', 15],
    ]);
    expect(coats(false).at(-1)?.waits).toEqual([{ kind: 'glaze-sets', minutes: 120 }]);
    expect(coats(true).at(-1)?.waits).toEqual([{ kind: 'coat-chills', minutes: 120 }]);
    const filled = (inside: FinishWork) => [{ ...inside, use: 'filling' as const }, ...glazed().finishes];
    const over = (inside: FinishWork) =>
      tierStages({ ...tier, finishes: filled(inside) }, ROOM.times).at(-1)?.waits[0]?.kind;
    expect(over(finish('cream', 'cream', true))).toBe('coat-chills');
    expect(over(finish('syrup', 'syrup', true))).toBe('glaze-sets');
  });

  it('is planned without fault, and a glaze moved while it runs, forgotten or poured early is seen', () => {
    expect(rules(plan.steps)).toEqual([]);
    expect(rules(plan.steps.filter(({ kind }) => kind !== 'pour'))).toContain('missing');
    expect(rules(plan.steps.filter(({ kind }) => kind !== 'glaze-sets'))).toContain('glaze');
    const moved = (minutes: number) => (step: Step) =>
      step.kind === 'pour' ? { ...step, from: step.from + minutes, to: step.to + minutes } : step;
    expect(rules(plan.steps.map(moved(-1440)))).toContain('early');
    expect(rules(plan.steps.map(moved(60)))).toContain('early');
  });

  it('is told as poured, set out of the fridge; one that must be cold sets in it', () => {
    const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
    const { days } = timetableView({ id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan });
    const row = days.flatMap(({ rows }) => rows).find(({ kind }) => kind === 'pour');
    expect(row?.what).toMatch(/^Pour chocolate glaze over .+, on a rack over a tray$/);
    expect(row?.notes.join()).toMatch(/^Then set at room temperature until .+ not in the fridge/);
  });

  it('is finished on the day that it is poured', () => {
    const [order] = asked.orders;
    const { steps } = plan;
    const poured = steps.find(({ kind }) => kind === 'pour');
    const days = tierDays(
      { ...plan, steps: steps.map((step) => (step === poured ? { ...step, from: step.from + 1440 } : step)) },
      { orderId: order?.id ?? '', tierId: tier.id },
      ROOM.calendar,
    );
    const day = ROOM.calendar.days.findLast(({ startMinute }) => startMinute <= (poured?.from ?? 0) + 1440);
    expect(days?.finishedOn).toBe(day?.isoDate);
  });
});
