/** A plan past a food's keeping says so, and what to change, on every paper that is worked from. */
import { beforeAll, describe, expect, it } from 'vitest';
import { daySheetPrint } from '../../src/prints/day-sheet.ts';
import { orderSheetPrint } from '../../src/prints/order-sheet.ts';
import type { Print } from '../../src/prints/sheet/surface.ts';
import { weekSheetPrint } from '../../src/prints/week-sheet.ts';
import { type OrdersView, ordersView } from '../../src/views/orders.ts';
import { demoContent } from '../samples/demo.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { recordedText } from './recorded-surface.ts';

const ID = 'numeral-six';
const WEEK = '2026-W48';
const WHAT =
  /A chocolate six for a birthday: Numeral six, Golden carving cake is baked 2\d hours before the hand-over and keeps 10 hours\. Move another order/;
const CHANGE =
  'Move another order of the week, or give the working day more hours, so that it can be baked later, or choose a cake that keeps longer.';

let view: OrdersView;
beforeAll(async () => {
  const content = await demoContent();
  const recipes = content.recipes.map((recipe) =>
    recipe.id === 'golden-carving-cake' ? { ...recipe, keepsDays: 10 / 24 } : recipe,
  );
  view = ordersView({ ...content, recipes });
});

const orderOf = (id: string) => {
  const found = view.orders.find((order) => order.id === id);
  if (found === undefined) throw new Error(`no order ${id}`);
  return found;
};
const weekOf = (id: string) => {
  const found = view.weeks.find((week) => week.id === id);
  if (found === undefined) throw new Error(`no week ${id}`);
  return found;
};
const hoursOf = (id: string | null) => {
  const found = view.timetables.find(({ orderId, weekId }) => orderId === id && weekId === WEEK);
  if (found === undefined) throw new Error(`no hours of ${id}`);
  return found.view;
};
const isWarned = (warnings: readonly { code: string }[]): boolean =>
  warnings.some(({ code }) => code === 'cake-too-old');

describe('a cake that is baked too long before it is handed over', () => {
  it('is warned of on the pages of its order and its week, and on none of another order', () => {
    for (const warnings of [
      orderOf(ID).warnings,
      weekOf(WEEK).warnings,
      hoursOf(ID).warnings,
      hoursOf(null).warnings,
    ])
      expect(warnings.find(({ code }) => code === 'cake-too-old')?.message).toMatch(WHAT);
    expect(isWarned(orderOf('orange-birthday').warnings)).toBe(false);
    expect(isWarned(hoursOf('orange-birthday').warnings)).toBe(false);
    expect(isWarned(weekOf('2026-W49').warnings)).toBe(false);
  });

  it('is warned of on order sheet, day sheets and week sheet, once each, before all work', () => {
    const { metrics } = sampleFonts();
    const prints: Print[] = [
      orderSheetPrint(orderOf(ID), sampleStyle, metrics, 'A4', 'en-GB'),
      daySheetPrint(hoursOf(ID), sampleStyle, metrics, 'A4', 'en-GB'),
      daySheetPrint(hoursOf(null), sampleStyle, metrics, 'A4', 'en-GB'),
      weekSheetPrint(weekOf(WEEK), sampleStyle, metrics, 'A4', 'en-GB'),
    ];
    for (const print of prints) {
      const [first = '', ...others] = recordedText(print);
      expect(first.split(CHANGE), print.path).toHaveLength(2);
      expect(first, print.path).toMatch(WHAT);
      expect(others.join(' '), print.path).not.toMatch(WHAT);
    }
  });
});
