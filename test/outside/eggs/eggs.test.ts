/** What an egg gives without its shell: US household portions as printed, UK and EU from the middle of the grade. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { parseEggWeight } from '../../../src/parse/units/egg-size.ts';

const folder = new URL('.', import.meta.url);
const { tolerance } = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('eggs.csv', folder), 'utf8'), { columns: true });
const shellShare = Number.parseFloat(rows.find(({ size }) => size === 'shell share')?.low_g ?? '') / 100;

function shelledG(text: string): number {
  const egg = parseEggWeight(text);
  return egg.ok ? egg.value.shelledG : Number.NaN;
}

describe('US eggs without shell', () => {
  const portions = rows.filter(({ scheme, measure }) => scheme === 'US' && measure === 'without shell');
  it.each(portions)('$size is $low_g g ($source; $seen)', ({ size, low_g }) => {
    expect(Math.abs(shelledG(`US ${size}`) - Number(low_g))).toBeLessThan(tolerance);
  });
  it('are the five sizes of that table', () => expect(portions).toHaveLength(5));
});

describe('UK and EU eggs without shell', () => {
  const closed = rows.filter(({ scheme, low_g, high_g }) => scheme === 'EU/UK' && low_g !== '' && high_g !== '');
  it.each(closed)('$size: the middle of $low_g to $high_g g in shell, less the shell', ({ size, low_g, high_g }) => {
    const middle = (Number(low_g) + Number(high_g)) / 2;
    expect(Math.abs(shelledG(`UK ${size}`) - middle * (1 - shellShare))).toBeLessThan(tolerance);
    expect(shelledG(`EU ${size}`)).toBe(shelledG(`UK ${size}`));
  });
  it('small and extra large, which have no middle, lie within their open grades', () => {
    expect(closed).toHaveLength(2);
    expect(shelledG('UK S')).toBeLessThan(53 * (1 - shellShare));
    expect(shelledG('UK XL')).toBeGreaterThanOrEqual(73 * (1 - shellShare));
  });
});
