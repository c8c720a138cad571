/** What a timetable says: in time, by the clock, whose it is, and nothing lost from the plan behind it. */
import { describe, expect, it } from 'vitest';
import { planWeek } from '../../src/compute/timeline/plan-week.ts';
import { timetableView } from '../../src/views/timetable/timetable.ts';
import { BIRTHDAY, FAIR, ROOM, THREE_TIERS, tin, work } from '../compute/timeline/sample-week.ts';
import { sampleTimetable } from '../samples/timetable.ts';

const view = sampleTimetable();
const rows = view.days.flatMap((day) => day.rows);

/** The days of a week planned from these orders alone. */
function daysOf(asked: Parameters<typeof planWeek>[0]) {
  const made = planWeek(asked, ROOM);
  if (!made.ok) throw new Error('no plan');
  const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
  return timetableView({ id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan: made.value }).days;
}

describe('the timetable of a week', () => {
  it('has a line for every piece of work by hand of the plan, one for each look and each hand-over', () => {
    const plan = planWeek(work(THREE_TIERS, BIRTHDAY, FAIR), ROOM);
    const steps = plan.ok ? plan.value.steps.filter(({ handsOn }) => handsOn) : [];
    const minutes = steps.reduce((sum, { from, to }) => sum + to - from, 0);
    expect(view.handsOn.value).toBe(minutes);
    expect(rows.filter(({ kind }) => kind === 'look')).toHaveLength(5);
    expect(rows.filter(({ kind }) => kind === 'hand-over').map(({ from }) => from)).toEqual([
      '10:00',
      '14:00',
      '09:30',
    ]);
  });

  it('is told in order, each line on its own day', () => {
    expect(view.days.map(({ title }) => title)).toEqual([
      'Thursday 22 October',
      'Friday 23 October',
      'Saturday 24 October',
      'Sunday 25 October',
    ]);
    const instants = rows.map(({ fromMinute }) => fromMinute);
    expect(instants).toEqual([...instants].sort((a, b) => a - b));
  });

  it('shows the clock of the day even after it has gone back', () => {
    expect(view.days.map(({ clockNote }) => clockNote !== null)).toEqual([false, false, false, true]);
    const sunday = view.days.at(-1)?.rows ?? [];
    expect(sunday.map(({ from }) => from)).toEqual(['07:40', '08:00', '08:15', '09:00', '09:30', '09:30']);
    expect(view.days.at(-1)?.bars.ticks[0]?.text).toBe('07:00');
  });

  it('says when something waits until another day', () => {
    const wraps = rows.filter(({ kind }) => kind === 'wrap').slice(0, 3);
    expect(wraps.map(({ what, notes }) => [what, ...notes])).toEqual([
      ['Wrap top tier (6-inch round)', 'Then rest until 04:40 on Friday or longer.'],
      [
        'Wrap middle tier (8-inch round) and bottom tier (10-inch round)',
        'Then rest until 05:00 on Friday or longer.',
      ],
      ['Wrap 8-inch round', 'Then rest until 15:05 or longer.'],
    ]);
  });

  it('keeps eggs and milk cold when they are weighed the evening before', () => {
    // A whisked sponge for a quarter past ten: mixed as the day begins, so weighed out as the one before ends.
    const whisked = { method: 'whisked' as const, layers: 1, finishes: [] };
    const tiers = BIRTHDAY.tiers.map((each) => ({ ...each, ...whisked }));
    const asked = work({ ...BIRTHDAY, handOver: BIRTHDAY.handOver + 15, tiers });
    const made = planWeek(asked, ROOM);
    if (!made.ok) throw new Error('no plan');
    const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
    const alone = timetableView({ id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan: made.value });
    const early = alone.days.flatMap((day) => day.rows).find(({ kind }) => kind === 'weigh-out');
    expect(early?.notes).toEqual([
      'Mixed much later: eggs, milk and the like stay in the fridge until 06:10 on Saturday.',
    ]);
  });

  it('says of a bowlful made in goes which go it is and how much of every weight', () => {
    // Two cakes from one tin: 1,000 g each in the sample, so half of the bowlful's 2,000 g at a time.
    const single = { ...tin('round-8'), owned: 1 };
    const twice = { ...BIRTHDAY, tiers: BIRTHDAY.tiers.map((tier) => ({ ...tier, tin: single, count: 2 })) };
    const made = planWeek(work(twice), ROOM);
    if (!made.ok) throw new Error('no plan');
    const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
    const split = timetableView({
      id: 'x',
      title: 'X',
      kitchen,
      work: work(twice),
      room: ROOM,
      plan: made.value,
    });
    const notes = split.days
      .flatMap((day) => day.rows)
      .filter(({ kind }) => kind === 'mix')
      .map((row) => row.notes[0]);
    expect(notes).toEqual([
      'Go 1 of 2: 1,000\u00a0g of the bowlful’s 2,000\u00a0g, because its tins do not go into the oven together. Weigh 50 % of every amount; of the eggs too, beaten first.',
      'Go 2 of 2: 1,000\u00a0g of the bowlful’s 2,000\u00a0g, because its tins do not go into the oven together. Weigh 50 % of every amount; of the eggs too, beaten first.',
    ]);
  });

  it('draws bars within the day, hands never over each other', () => {
    for (const { bars } of view.days) {
      const [hands] = bars.lanes;
      const sorted = [...(hands?.bars ?? [])].sort((a, b) => a.from - b.from);
      for (const bar of bars.lanes.flatMap((lane) => lane.bars)) {
        expect(bar.from).toBeGreaterThanOrEqual(0);
        expect(bar.to).toBeLessThanOrEqual(1);
      }
      sorted.slice(1).forEach((bar, at) => {
        expect(bar.from).toBeGreaterThanOrEqual(sorted[at]?.to ?? 0);
      });
    }
  });

  it('is JSON, and the same after a round trip', () => {
    expect(JSON.parse(JSON.stringify(view))).toEqual(view);
  });
});

describe('the timetable of one order', () => {
  it('leaves out what is only for the others', () => {
    const fair = sampleTimetable('fair');
    expect(fair.days.flatMap((day) => day.rows).every(({ orderIds }) => orderIds.includes('fair'))).toBe(
      true,
    );
    expect(fair.ovenPlan.loads.map(({ name }) => name)).toEqual(['Load 3']);
    expect(fair.days[0]?.rows[0]).toMatchObject({ what: 'Shop', forText: 'R-1044' });
  });

  it('tells its own oven loads among the week’s', () => {
    expect(sampleTimetable('fair').loadsText).toBe('One oven load of the week’s three.');
  });

  it('stacks at the venue what travels in boxes, and puts on what goes with it', () => {
    const boxed = work({
      ...THREE_TIERS,
      travelsAssembled: false,
      putOn: ['Fresh flowers'],
      hired: [{ name: 'Cake stand' }],
      covered: true,
      dowel: true,
    });
    const days = daysOf(boxed);
    const setUp = days.flatMap((day) => day.rows).find(({ kind }) => kind === 'set-up');
    expect(setUp?.what).toBe('Set the supports, stack the tiers, drive in the centre dowel and set up');
    expect(setUp?.notes).toEqual([
      'When they are stacked, ribbon round the foot of every tier: lengths on the order sheet.',
      'Put on what goes with it, and say what is not eaten: fresh flowers.',
    ]);
    const notes = days.flatMap((day) => day.rows).find(({ kind }) => kind === 'deliver')?.notes;
    expect(notes).toEqual([
      'Take along: order sheet, allergen cards, stack sheet, the supports and the centre dowel, a small spirit level, ribbon for every tier, a little of the cover to mend with, fresh flowers and cake stand.',
    ]);
    const packed = days.flatMap((day) => day.rows).find(({ kind }) => kind === 'pack');
    expect(packed?.notes.join()).not.toContain('Ribbon');
  });

  it('takes the stack sheet where a stack travels whole, and no hired dummy that stands in it', () => {
    const whole = work({ ...THREE_TIERS, place: 'delivered', hired: [{ name: null }] });
    const days = daysOf(whole);
    const notes = days.flatMap((day) => day.rows).find(({ kind }) => kind === 'deliver')?.notes;
    expect(notes).toEqual(['Take along: order sheet, allergen cards and stack sheet.']);
  });

  it('pipes the dam before the filling', () => {
    const [tier] = BIRTHDAY.tiers;
    if (tier === undefined) throw new Error('no tier');
    const held = work({ ...BIRTHDAY, tiers: [{ ...tier, dam: 'vanilla-buttercream' }] });
    const days = daysOf(held);
    const built = days.flatMap((day) => day.rows).find(({ kind }) => kind === 'build');
    expect(built?.notes[0]).toBe(
      'On each layer first the dam of vanilla-buttercream, then the filling inside it.',
    );
  });

  it('cuts supports at home whoever stacks, and says where they are set', () => {
    const cut = (travelsAssembled: boolean) => {
      const asked = work({ ...THREE_TIERS, travelsAssembled });
      const made = planWeek(asked, ROOM);
      if (!made.ok) throw new Error('no plan');
      const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
      const { days } = timetableView({
        ...{ id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan: made.value },
      });
      const all = days.flatMap((day) => day.rows);
      const kinds = all.map(({ kind }) => kind);
      expect(kinds.indexOf('cut-supports')).toBeLessThan(kinds.indexOf(travelsAssembled ? 'stack' : 'pack'));
      return all.find(({ kind }) => kind === 'cut-supports');
    };
    // Two tiers carry another, and the dowel is cut with them: 3 × 10 minutes.
    expect(cut(true)).toMatchObject({
      what: 'Measure and cut the supports of each tier that carries another, and the centre dowel',
      minutes: { value: 30 },
    });
    expect(cut(true)?.notes.join()).toContain('set when the tiers are stacked');
    expect(cut(false)?.notes.join()).toContain('set at the place');
  });

  it('cuts what is sold by the piece before it is boxed, into so many pieces', () => {
    const all = sampleTimetable('fair').days.flatMap((day) => day.rows);
    const kinds = all.map(({ kind }) => kind);
    expect(kinds.indexOf('cut-pieces')).toBe(kinds.indexOf('pack') - 1);
    // 72 pieces, a dozen in three minutes.
    expect(all.find(({ kind }) => kind === 'cut-pieces')).toMatchObject({
      what: 'Cut into pieces: 2 × two-pound loaf, 36 pieces each',
      minutes: { value: 18 },
    });
  });

  it('sets soft coats in the fridge and sugarpaste out of it', () => {
    const notes = (orderId: string, kind: string) =>
      sampleTimetable(orderId)
        .days.flatMap((day) => day.rows)
        .filter((row) => row.kind === kind)
        .flatMap((row) => row.notes)
        .join();
    expect(notes('birthday', 'final-coat')).toMatch(
      /in the fridge until .* before it is covered, stacked or boxed/,
    );
    expect(notes('three-tiers', 'cover')).toMatch(/room temperature until .* not in the fridge/);
  });

  it('names no other order where one bowl serves both, and counts its own bowlfuls', () => {
    const own = BIRTHDAY.tiers.map((each) => ({ ...each, tin: tin('round-6') }));
    const other = { ...BIRTHDAY, id: 'other', reference: 'R-9999', title: 'Other' };
    const mine = { ...BIRTHDAY, tiers: own };
    const bowl = (at: number, orderIds: string[]) => ({
      ...{ id: `mix-1-${at}`, name: `Lemon, bowlful ${at} of 2`, batter: 'Lemon', batterKey: 'lemon' },
      ...{ method: 'creamed' as const, actsAtOnce: false, massG: 900 },
      tins: orderIds.map((orderId) => ({ orderId, tierId: 'tier-1', count: 1 })),
    });
    const twice = { ...other, id: 'third', reference: 'R-8888' };
    const asked = {
      orders: [mine, other, twice],
      bowlfuls: [bowl(1, ['third']), bowl(2, ['birthday', 'other'])],
    };
    const made = planWeek(asked, ROOM);
    if (!made.ok) throw new Error(JSON.stringify(made.problems));
    const kitchen = { name: 'Test', edition: '2026-10-01', locale: 'en-GB' as const };
    const input = { id: 'x', title: 'X', kitchen, work: asked, room: ROOM, plan: made.value };
    const paper = timetableView({ ...input, orderId: 'birthday' });
    const text = JSON.stringify(paper.days);
    expect(text).not.toMatch(/R-9999|R-8888/);
    const mix = (some: typeof paper) =>
      some.days.flatMap((day) => day.rows).filter(({ kind }) => kind === 'mix');
    // One bowlful of its own, which the week counts as its second.
    expect(mix(paper).map(({ what }) => what)).toEqual(['Mix lemon']);
    expect(mix(paper)[0]?.notes.join()).toContain('see the week’s day sheet');
    expect(
      mix(timetableView(input))
        .map(({ what }) => what)
        .sort(),
    ).toEqual(['Mix lemon, bowlful 1 of the week’s 2', 'Mix lemon, bowlful 2 of the week’s 2']);
  });

  it('asks after the hand-over for what was hired', () => {
    const asked = work({
      ...BIRTHDAY,
      hired: [{ name: 'Cake stand', backBy: '2026-10-27' }, { name: null }],
    });
    const days = daysOf(asked);
    const [before, last] = days.flatMap((day) => day.rows).slice(-2);
    expect(before?.kind).toBe('hand-over');
    expect(last?.what).toBe('To come back: cake stand, by 27 October 2026 and dummy tier, day to be agreed');
  });

  it('names what stays in the fridge, and warns of nothing that is not in the order', () => {
    const cold = (some: typeof view) => some.cautions.find(({ code }) => code === 'keep-chilled')?.text;
    expect(cold(sampleTimetable('birthday'))).toMatch(/^Lemon-curd: in the fridge/);
    expect(cold(sampleTimetable('fair'))).toBeUndefined();
  });

  it('speaks American where the kitchen does', () => {
    const fair = sampleTimetable('fair', 'en-US');
    expect(fair.days[0]?.title).toBe('Thursday, October 22');
    expect(fair.days.at(-1)?.rows.at(-1)?.what).toBe('Drive back');
    expect(fair.days.at(-1)?.rows.at(-1)?.from).toBe('9:30\u00a0am');
    expect(fair.days.flatMap((day) => day.rows).find(({ kind }) => kind === 'turn-out')?.what).toContain(
      'wash the pans',
    );
  });
});
