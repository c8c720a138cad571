/** Does the checker see what it is there to see? Faults are planted one by one in a sound timetable. */
import { describe, expect, it } from 'vitest';
import type { Step, WeekPlan } from '../../../src/compute/timeline/plan.types.ts';
import { planWeek } from '../../../src/compute/timeline/plan-week.ts';
import { planFaults } from './checker/plan-faults.ts';
import { tinFaults } from './checker/resources.ts';
import { BIRTHDAY, FAIR, ROOM, THREE_TIERS, work } from './sample-week.ts';

const asked = work(THREE_TIERS, BIRTHDAY, FAIR);
const made = planWeek(asked, ROOM);
const sound: WeekPlan = made.ok ? made.value : { steps: [], loads: [], bound: {} as never, warnings: [] };

type Change = (step: Step) => Step;

const withStep = (id: string, change: Change): WeekPlan => ({
  ...sound,
  steps: sound.steps.map((step) => (step.id === id ? change(step) : step)),
});

const without = (kind: Step['kind']): WeekPlan => ({
  ...sound,
  steps: sound.steps.filter((step) => step.kind !== kind),
});

const move =
  (minutes: number): Change =>
  (step) => ({ ...step, from: step.from + minutes, to: step.to + minutes });

const idOf = (kind: Step['kind'], orderId: string): string =>
  sound.steps.find((step) => step.kind === kind && step.orderIds.includes(orderId))?.id ?? 'none';

const BUTTERCREAM =
  sound.steps.find(({ finishId, kind }) => kind === 'make-finish' && finishId === 'vanilla-buttercream')
    ?.id ?? '';

const loads = (
  change: (load: WeekPlan['loads'][number], at: number) => WeekPlan['loads'][number],
): WeekPlan => ({
  ...sound,
  loads: sound.loads.map(change),
});

const found = (plan: WeekPlan): string[] =>
  planFaults(asked, ROOM, plan).map((fault) => fault.split(/[: ]/)[0] ?? '');

describe('the checker', () => {
  it('finds nothing wrong in a sound plan', () => {
    expect(sound.steps.length).toBeGreaterThan(60);
    expect(planFaults(asked, ROOM, sound)).toEqual([]);
  });

  it.each<[string, string, () => WeekPlan]>([
    ['hands at two places', 'hands-double', () => withStep(idOf('build', 'three-tiers'), move(30))],
    [
      'a mixer mixing twice',
      'mixer-double',
      () => withStep(BUTTERCREAM, (step) => ({ ...step, ...span('mix', 'three-tiers') })),
    ],
    ['mixing at midnight', 'asleep', () => withStep(idOf('wrap', 'fair'), move(3 * 60))],
    ['an oven left on in the night', 'asleep', () => withStep(idOf('bake', 'fair'), move(4 * 60))],
    [
      'a step that ends before it begins',
      'backwards',
      () => withStep(idOf('pack', 'fair'), (step) => ({ ...step, to: step.from - 1 })),
    ],
    ['half a minute', 'backwards', () => withStep(idOf('pack', 'fair'), move(0.5))],
    [
      'waiting called work',
      'hands',
      () => withStep(idOf('chill', 'birthday'), (step) => ({ ...step, handsOn: true })),
    ],
    ['batter that waits an hour for the oven', 'stands', () => withStep(idOf('oven-in', 'fair'), move(60))],
    ['a cake never mixed', 'mixed', () => without('mix')],
    [
      'a bowlful mixed by half',
      'mixed',
      () => withStep(idOf('mix', 'fair'), (step) => ({ ...step, share: 0.5 })),
    ],
    ['a bowl not washed', 'washed', () => without('wash-bowl')],
    [
      'butter hard from the refrigerator',
      'early',
      () => withStep(idOf('weigh-out', 'three-tiers'), move(30)),
    ],
    ['weighing out before the shopping', 'early', () => withStep('shop-1', move(2 * 1440))],
    ['a cake filled while warm', 'early', () => withStep(idOf('wrap', 'three-tiers'), move(-60))],
    ['a cold cake left bare', 'bare', () => withStep(idOf('wrap', 'three-tiers'), move(5 * 60))],
    ['a coat on an unsettled cake', 'early', () => withStep(idOf('crumb-coat', 'birthday'), move(-12 * 60))],
    ['buttercream put on before it is made', 'early', () => withStep(BUTTERCREAM, move(60))],
    ['a cake handed over late', 'late', () => withStep(idOf('set-up', 'three-tiers'), move(10))],
    ['supports cut after stacking', 'early', () => withStep(idOf('cut-supports', 'three-tiers'), move(60))],
    ['supports nobody cut', 'missing', () => without('cut-supports')],
    ['a coat stacked while soft', 'early', () => withStep(idOf('final-coat', 'three-tiers'), move(8 * 60))],
    [
      'a cake boxed while its coat is soft',
      'early',
      () => withStep(idOf('coat-chills', 'birthday'), (step) => ({ ...step, to: step.to + 30 })),
    ],
    ['a soft coat left in the warm', 'chilled', () => without('coat-chills')],
    ['a cake labelled before it is cut', 'early', () => withStep(idOf('cut-pieces', 'fair'), move(60))],
    ['a cake sold by the piece and never cut', 'missing', () => without('cut-pieces')],
    [
      'a dummy bored when it is covered',
      'early',
      () => withStep(idOf('bore-holes', 'three-tiers'), move(2 * 1440)),
    ],
    ['a dowel without a hole', 'missing', () => without('bore-holes')],
    ['a stack nobody stacked', 'missing', () => without('stack')],
    ['nobody drives home', 'missing', () => without('drive-back')],
    ['home before the cake is set up', 'early', () => withStep(idOf('drive-back', 'three-tiers'), move(-60))],
    ['a cake left in its tin', 'missing', () => without('turn-out')],
    ['a hurried mix', 'lasts', () => withStep(idOf('mix', 'fair'), (step) => ({ ...step, to: step.to - 5 }))],
    ['a cake forgotten in the oven', 'bake', () => withStep(idOf('oven-out', 'fair'), move(30))],
    ['a cake out too soon', 'bake', () => withStep(idOf('oven-out', 'fair'), move(-20))],
    ['a load too hot', 'heat', () => loads((load) => ({ ...load, ovenC: load.ovenC + 20 }))],
    ['a cold oven', 'oven-cold', () => without('oven-on')],
    [
      'two loads in one oven',
      'oven-double',
      () => loads((load, at) => (at === 1 ? { ...load, from: sound.loads[0]?.from ?? 0 } : load)),
    ],
    [
      'a cake baked twice',
      'baked',
      () => loads((load) => ({ ...load, tins: [...load.tins, ...load.tins.slice(0, 1)] })),
    ],
    [
      'a tin in two places',
      'tin-double',
      () =>
        loads((load) => ({
          ...load,
          tins: load.tins.map((tin) => ({ ...tin, tin: { ...tin.tin, owned: 0 } })),
        })),
    ],
    [
      'tins that touch',
      'air',
      () =>
        loads((load) => ({
          ...load,
          tins: load.tins.map((tin) => ({ ...tin, shelf: 0, xMm: 200, yMm: 170 })),
        })),
    ],
    [
      'a tin against the wall',
      'wall',
      () => loads((load) => ({ ...load, tins: load.tins.map((tin) => ({ ...tin, xMm: tin.xMm - 15 })) })),
    ],
    [
      'a shelf that is not there',
      'shelf',
      () => loads((load) => ({ ...load, tins: load.tins.map((tin) => ({ ...tin, shelf: 2 })) })),
    ],
    [
      'a look at the wrong time',
      'look',
      () =>
        loads((load) => ({
          ...load,
          tins: load.tins.map((tin) => ({ ...tin, firstLook: tin.firstLook - 5 })),
        })),
    ],
    [
      'a cake from another tin',
      'tin',
      () =>
        loads((load) => ({
          ...load,
          tins: load.tins.map((tin) => ({ ...tin, tin: { ...tin.tin, id: 'other' } })),
        })),
    ],
  ])('sees %s', (_, code, plan) => {
    expect(found(plan())).toContain(code);
  });

  it('lets a tin be filled again once it is out and washed, though slower tins of its load still bake', () => {
    const [load] = sound.loads;
    const [first] = load?.tins ?? [];
    if (load === undefined || first === undefined) throw new Error('no tin');
    const only = { ...first, tin: { ...first.tin, owned: 1 } };
    const tiers = [{ orderId: first.orderId, tierId: first.tierId, count: 1 }];
    const step = (kind: Step['kind'], loadId: string, from: number): Step => ({
      ...{ id: `${kind}-${loadId}`, kind, from, to: from + 5, handsOn: true, mixer: false },
      ...{ orderIds: [first.orderId], tiers, bowlfulId: null, share: 1, loadId, finishId: null },
    });
    // Turned out at 105 while its load stays in until 200; the second load is filled from then on.
    const again = (fillAt: number): WeekPlan => ({
      ...sound,
      loads: [
        { ...load, id: 'load-1', from: 10, to: 200, tins: [only] },
        { ...load, id: 'load-2', from: 210, to: 300, tins: [only] },
      ],
      steps: [
        ...[step('fill-tins', 'load-1', 0), step('turn-out', 'load-1', 100)],
        ...[step('fill-tins', 'load-2', fillAt), step('turn-out', 'load-2', 310)],
      ],
    });
    const faults = (plan: WeekPlan): string[] => tinFaults({ work: asked, room: ROOM, plan });
    expect(faults(again(105))).toEqual([]);
    expect(faults(again(100)).map((fault) => fault.split(' ')[0])).toEqual(['tin-double']);
  });

  function span(kind: Step['kind'], orderId: string): Pick<Step, 'from' | 'to'> {
    const step = sound.steps.find((each) => each.id === idOf(kind, orderId));
    return { from: step?.from ?? 0, to: step?.to ?? 0 };
  }
});

it('sees cakes and finishes older than they keep', () => {
  const times = { ...ROOM.times, cakeKeepsMin: { ...ROOM.times.cakeKeepsMin, creamed: 60 } };
  const stale = planFaults(asked, { ...ROOM, times }, sound);
  expect(stale.some((fault) => fault.startsWith('old: birthday'))).toBe(true);
});
