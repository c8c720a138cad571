/** What was set before is found again by all that it was set from, and by nothing less. */
import { describe, expect, it } from 'vitest';
import { setBefore } from '../../src/prints/sheet/set-before.ts';
import { sheetContext } from '../../src/prints/sheet/sheet-context.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';

const { metrics } = sampleFonts();
const context = sheetContext(sampleStyle, metrics);

/** Asks for a few things one after the other; which of them had to be set? */
function setOf(most: number, told: readonly unknown[], contexts = told.map(() => context)): unknown[] {
  const find = setBefore<unknown>(most);
  const set: unknown[] = [];
  for (const [at, one] of told.entries())
    find(one, contexts[at] ?? context, () => {
      set.push(one);
      return one;
    });
  return set;
}

describe('what was set before', () => {
  it('is not set again for an equal text, whoever wrote it', () => {
    expect(setOf(9, [{ name: 'lemon' }, { name: 'lemon' }, { name: 'orange' }])).toEqual([
      { name: 'lemon' },
      { name: 'orange' },
    ]);
  });

  it('is set again in another look or with other fonts', () => {
    const margins = { ...context, marginMm: { ...context.marginMm, left: context.marginMm.left + 1 } };
    const fonts = { ...context, metrics: { ...metrics } };
    expect(setOf(9, ['a', 'a', 'a', 'a'], [context, margins, fonts, context])).toEqual(['a', 'a', 'a']);
  });

  it('is forgotten when so many others were asked for since', () => {
    expect(setOf(2, ['a', 'b', 'a', 'c', 'a', 'b'])).toEqual(['a', 'b', 'c', 'b']);
  });
});
