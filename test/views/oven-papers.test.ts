/** Every paper that tells how the demo's orders are baked says the same minutes, heats, cores and numbers. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { TinInOven } from '../../src/compute/timeline/plan.types.ts';
import { orderCsv, orderJson } from '../../src/data/order-data.ts';
import type { Content } from '../../src/domain/content.ts';
import { type OrdersView, ordersView } from '../../src/views/orders.ts';
import { type WorkedOrders, workedOrders } from '../../src/views/planned-orders.ts';
import type { OvenLoadView, TimetableRow, TimetableView } from '../../src/views/timetable/timetable.types.ts';
import { chartsOf, demoContent } from '../samples/demo.ts';

let content: Content;
let view: OrdersView;
let worked: WorkedOrders;
beforeAll(async () => {
  content = await demoContent();
  view = ordersView(content);
  worked = workedOrders(content);
});

const found = <T>(one: T | undefined, what: string): T => {
  if (one === undefined) throw new Error(`no ${what}`);
  return one;
};
const orderOf = (id: string) =>
  found(
    view.orders.find((order) => order.id === id),
    id,
  );
const hoursOf = (id: string | null, weekId?: string): TimetableView =>
  found(
    view.timetables.find((one) => one.orderId === id && (weekId === undefined || one.weekId === weekId)),
    `hours of ${id}`,
  ).view;
const rowsOf = (hours: TimetableView): TimetableRow[] => hours.days.flatMap(({ rows }) => rows);
const tierOf = ({ orderId, tierId }: TinInOven) =>
  found(
    orderOf(orderId).tiers.find(({ id }) => id === tierId),
    `${orderId} ${tierId}`,
  );

/** '1 h 55 min' as people read it. */
function minutesIn(text: string): number {
  const [, hours = '0', rest = '0'] = /^(?:(\d+)\sh)?\s?(?:(\d+)\smin)?$/.exec(text) ?? [];
  return 60 * Number(hours) + Number(rest);
}

/** From one clock time to the next, within a day. */
function between(from: string, to: string): number {
  const minute = (clock: string): number => {
    const [hours = 0, minutes = 0] = clock.split(':').map(Number);
    return hours * 60 + minutes;
  };
  return (minute(to) - minute(from) + 1440) % 1440;
}

interface Baked {
  hours: TimetableView;
  load: OvenLoadView;
  /** Clock time at which the door shuts, as the plan prints it. */
  inAt: string;
  tins: TinInOven[];
}

/** Every load of every week as its plan prints it, with the tins that it holds. */
const everyLoad = (): Baked[] =>
  worked.weeks.flatMap(({ planned, plan }) => {
    if (!plan.ok) throw new Error('no plan');
    const hours = hoursOf(null, planned.week.id);
    return hours.ovenPlan.loads.map((load, at) => {
      const { tins } = found(plan.value.loads[at], load.id);
      const inAt = /in at (\d\d:\d\d), the last out by/.exec(load.whenText)?.[1] ?? '';
      return { hours, load, inAt, tins };
    });
  });

describe('bake minutes of every order of the demo', () => {
  it('are on the oven plan what they are on the order sheet: first look, likely, out by', () => {
    let seen = 0;
    for (const { load, inAt, tins } of everyLoad()) {
      tins.forEach((tin, at) => {
        const look = found(load.looks[at], `look ${at}`);
        const bake = found(tierOf(tin).bake ?? undefined, 'bake');
        const told = [bake.firstLook, bake.likely, bake.expectedBy];
        expect([look.firstLook, look.likely, look.by].map((clock) => between(inAt, clock))).toEqual(
          told.map(({ text }) => minutesIn(text)),
        );
        expect(told.map(({ value }) => value)).toEqual(told.map(({ text }) => minutesIn(text)));
        expect([look.firstLookMinutes, look.likelyMinutes, look.byMinutes]).toEqual(told);
        expect(load.dial).toBe(bake.dial.text);
        seen += 1;
      });
      const last = Math.max(...tins.map((tin) => tierOf(tin).bake?.expectedBy.value ?? 0));
      expect(load.minutes.value).toBe(last);
      expect(between(inAt, /out by (\d\d:\d\d)/.exec(load.whenText)?.[1] ?? '')).toBe(last);
    }
    expect(seen).toBe(view.orders.flatMap(({ tiers }) => tiers).length + 3);
  });

  it('are on the day sheet what they are on the oven plan: each look, and out when it is due', () => {
    for (const { hours, load, inAt, tins } of everyLoad()) {
      const rows = rowsOf(hours).filter(({ loadId }) => loadId === load.id);
      const due = new Set(tins.map((tin) => tierOf(tin).bake?.expectedBy.value));
      const outs = rows.filter(({ kind }) => kind === 'oven-out').map(({ from }) => between(inAt, from));
      expect(new Set(outs)).toEqual(due);
      const said = rows
        .filter(({ kind }) => kind === 'look')
        .map(({ from, notes }) =>
          [from, ...(/at (\S+), out by (\S+)\./.exec(notes[0] ?? '') ?? []).slice(1)].join(),
        );
      const planned = load.looks.map(({ firstLook, likely, by }) => [firstLook, likely, by].join());
      expect(new Set(said)).toEqual(new Set(planned));
    }
  });

  it('are in the cost’s words and in data what they are on the sheet', () => {
    for (const order of view.orders) {
      const texts = order.tiers.map(({ bake }) => bake?.expectedBy.text ?? '');
      const said = order.cost.ovenText.match(/for ((?:\d+\sh)?\s?(?:\d+\smin)?)(?=[;,]| and)/g) ?? [];
      expect(said.length).toBeGreaterThan(0);
      for (const one of said) expect(texts).toContain(one.replace('for ', ''));
      const csv = orderCsv(order);
      const json = orderJson(order);
      for (const { id, tin, bake } of order.tiers) {
        const by = found(bake?.expectedBy, 'by');
        expect(csv).toContain(`cake,${id},${tin.id},out by,${by.value},min,${by.text}`);
        expect(json).toContain(JSON.stringify(by.text));
      }
    }
  });

  it('are those of chart and recipe card, where a cake is as high as its recipe says', () => {
    let seen = 0;
    for (const { planned } of worked.orders) {
      for (const { at, ask, bakes, recipe, tin } of planned.tiers) {
        const usual = ask.finishedHeightMm === undefined && bakes === 1 && ask.small === undefined;
        const chart = chartsOf(content).find(({ chart: { recipe: one } }) => one.id === recipe.id);
        const row = chart?.chart.rows.find(({ tinId }) => tinId === tin.id);
        const sheet = orderOf(planned.order.id).tiers[at]?.bake;
        if (!usual || row?.bake == null || sheet == null) continue;
        const texts = ({ dial, firstLook, likely, expectedBy }: typeof sheet) =>
          [dial, firstLook, likely, expectedBy].map(({ text }) => text);
        expect(texts(sheet), `${planned.order.id} ${tin.id}`).toEqual(texts(row.bake));
        expect([sheet.core, sheet.band]).toEqual([row.bake.core, row.bake.band]);
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(5);
  });
});

describe('loads of one order among the week’s', () => {
  it('keep the week’s numbers on its day sheet, and its tins theirs on the plan', () => {
    for (const { orderId, weekId, view: hours } of view.timetables) {
      if (orderId === null) continue;
      const week = hoursOf(null, weekId);
      for (const load of hours.ovenPlan.loads) {
        expect(week.ovenPlan.loads.find(({ name }) => name === load.name)).toEqual(load);
      }
      for (const { id, loadName, notes, kind } of rowsOf(hours)) {
        const same = rowsOf(week).find((row) => row.id === id);
        if (loadName !== null && same !== undefined) expect(same.loadName).toBe(loadName);
        if (kind === 'oven-in')
          expect(notes).toContain(`Places on the shelves: oven plan, ${loadName?.toLowerCase()}.`);
      }
    }
  });

  it('and the plan says how many there are and whether fewer would do', () => {
    expect(hoursOf(null, '2026-W48').ovenPlan.loadsText).toBe('Six oven loads; fewer are not possible.');
    expect(hoursOf('three-tiers-for-sixty').ovenPlan.loadsText).toBe('Two oven loads of the week’s six.');
  });
});

describe('the heating core', () => {
  it('stands on order sheet, oven plan, week sheet, and where tins are lined and cakes turned out', () => {
    const order = orderOf('three-tiers-for-sixty');
    expect(order.tiers.map(({ bake }) => bake?.core)).toEqual([true, false, false]);
    for (const hours of [hoursOf(order.id), hoursOf(null, order.weekId)]) {
      const looks = hours.ovenPlan.loads.flatMap((load) => load.looks);
      expect(
        looks.filter(({ aidText }) => aidText === 'with the heating core').map(({ name }) => name),
      ).toEqual(['Ten-inch round']);
      const cored = rowsOf(hours).filter(({ notes }) => notes.some((note) => note.includes('heating core')));
      expect(cored.map(({ kind }) => kind)).toEqual(['weigh-out', 'turn-out']);
      expect(cored[0]?.notes[0]).toMatch(
        /^Grease the heating core too and stand it in the middle: ten-inch round/,
      );
      expect(cored[1]?.notes[0]).toMatch(
        /^The heating core in ten-inch round.* is as hot as the tin, .*dry cloth/,
      );
      for (const some of [hours.cautions, hours.ovenPlan.cautions])
        expect(some.find(({ code }) => code === 'hot-core')?.text).toMatch(/as hot as the tin, .*dry cloth/);
    }
    const week = found(
      view.weeks.find(({ id }) => id === order.weekId),
      'week',
    );
    const filled = week.batters.flatMap(({ bowlfuls }) => bowlfuls.flatMap(({ tins }) => tins));
    expect(filled.filter(({ aidText }) => aidText !== '').map(({ tinName }) => tinName)).toEqual([
      'Ten-inch round',
    ]);
    expect(week.cautions.map(({ code }) => code)).toContain('hot-core');
  });

  it('is spoken of nowhere in hours and weeks that have none', () => {
    const fair = hoursOf('fair-trays');
    expect(JSON.stringify([fair.cautions, fair.ovenPlan.cautions])).not.toContain('hot-core');
    expect(JSON.stringify(rowsOf(fair))).not.toContain('heating core');
    expect(view.weeks.find(({ id }) => id === '2026-W49')?.cautions.map(({ code }) => code)).not.toContain(
      'hot-core',
    );
  });
});

describe('the insulated band', () => {
  it('stands where the core would, in a kitchen that has the one and not the other', () => {
    const { oven } = content.kitchen;
    if (oven === undefined) throw new Error('no oven');
    const kitchen = { ...content.kitchen, oven: { ...oven, core: 'none' as const, band: true } };
    const recipes = content.recipes.map((recipe) => ({ ...recipe, ovenC: recipe.ovenC + 30 }));
    const banded = ordersView({ ...content, kitchen, recipes });
    const hours = found(
      banded.timetables.find(({ orderId }) => orderId === 'three-tiers-for-sixty'),
      'hours',
    ).view;
    const looks = hours.ovenPlan.loads.flatMap((load) => load.looks);
    const sheet = banded.orders.find(({ id }) => id === 'three-tiers-for-sixty')?.tiers ?? [];
    expect(sheet.some(({ bake }) => bake?.band)).toBe(true);
    for (const { tin, bake } of sheet) {
      const look = looks.find(({ name }) => name === tin.name);
      expect(look?.aidText).toBe(bake?.band ? 'with the insulated band' : '');
    }
    const lined = rowsOf(hours).filter(({ kind }) => kind === 'weigh-out');
    expect(
      lined.some(({ notes }) => notes.some((note) => note.startsWith('Put the insulated band round: '))),
    ).toBe(true);
  });
});

describe('papers of a week', () => {
  it('number its bowls alike on week sheet and day sheet', () => {
    const told = view.weeks.flatMap(({ id, batters }) => {
      const mixed = rowsOf(hoursOf(null, id))
        .filter(({ kind }) => kind === 'mix')
        .flatMap(
          ({ what }) => /^Mix (.*), bowlful (\d+) of (?:the week’s )?(\d+)/.exec(what)?.slice(1).join() ?? [],
        );
      const bowls = batters.flatMap(({ name, bowlfuls }) =>
        bowlfuls.flatMap((bowl) => {
          const [, at, of] = /^Bowlful (\d+) of (\d+)$/.exec(bowl.name) ?? [];
          return at === undefined ? [] : [[`${name.charAt(0).toLowerCase()}${name.slice(1)}`, at, of].join()];
        }),
      );
      expect([...new Set(mixed)].sort()).toEqual(bowls.sort());
      return bowls;
    });
    expect(told.length).toBeGreaterThan(5);
  });

  it('name the order of every tin in the oven where there are several', () => {
    const { ovenPlan } = hoursOf(null, '2026-W48');
    expect(ovenPlan.loads.flatMap(({ looks }) => looks).map(({ forText }) => forText)).not.toContain('');
  });

  it('give ribbon to cakes that are covered, and to no others', () => {
    const ribboned = (id: string) => orderOf(id).tiers.map(({ ribbon }) => ribbon !== null);
    // Two stacked tiers in ganache, then the cutting cake, which is filled and no more.
    expect(ribboned('square-and-round')).toEqual([true, true, false]);
    expect(ribboned('fair-trays')).not.toContain(true);
  });

  it('say how high each layer is cut: 65 mm in three, 52 mm of the levelled six in two', () => {
    const built = (id: string) => rowsOf(hoursOf(id)).find(({ kind }) => kind === 'build')?.what;
    expect(built('three-tiers-for-sixty')).toContain('into three layers of 21.7 mm: ');
    expect(built('numeral-six')).toContain('into two layers of 26 mm: ');
  });

  it('have the dam’s buttercream made before the jam goes in', () => {
    const rows = rowsOf(hoursOf('numeral-six'));
    const at = (start: string) => rows.findIndex(({ what }) => what.startsWith(start));
    expect(at('Make the chocolate buttercream')).toBeGreaterThan(-1);
    expect(at('Make the chocolate buttercream')).toBeLessThan(at('Level and cut'));
  });
});
