import { describe, expect, it } from 'vitest';
import { type FoldedSheet, foldOrder } from '../../../src/prints/imposition/fold-order.ts';

/** Turns the leaves of folded sheets: down the right halves from the outside, then up the left ones. */
function leafedThrough(sheets: FoldedSheet[]): number[] {
  const inward = sheets.flatMap(({ front, back }) => [front.right, back.left]);
  const outward = [...sheets].reverse().flatMap(({ front, back }) => [back.right, front.left]);
  return [...inward, ...outward];
}

describe('foldOrder', () => {
  it('of four pages is the sheet that anyone can fold', () => {
    expect(foldOrder(4)).toEqual([{ front: { left: 4, right: 1 }, back: { left: 2, right: 3 } }]);
  });

  it('of eight pages puts the outer sheet first', () => {
    expect(foldOrder(8)).toEqual([
      { front: { left: 8, right: 1 }, back: { left: 2, right: 7 } },
      { front: { left: 6, right: 3 }, back: { left: 4, right: 5 } },
    ]);
  });

  it.each([4, 8, 12, 16, 64, 96])('leafed through gives %i pages in order', (pages) => {
    const order = Array.from({ length: pages }, (_, index) => index + 1);
    expect(leafedThrough(foldOrder(pages))).toEqual(order);
  });

  it('refuses pages that do not come in fours', () => {
    expect(() => foldOrder(6)).toThrow('6 pages');
  });
});
