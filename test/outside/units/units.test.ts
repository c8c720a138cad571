/** Units are exact by definition: what the parsers read must be what the definitions say. */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../src/parse/units/length.ts';
import { parseMass } from '../../../src/parse/units/mass.ts';
import { parseVolume } from '../../../src/parse/units/volume.ts';

const folder = new URL('.', import.meta.url);
const { tolerance } = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('units.csv', folder), 'utf8'), { columns: true });

/** How each row is written in a content file. */
const WRITTEN: Record<string, () => number> = {
  '1 inch': () => mm('1 inch'),
  '1 ounce (avoirdupois)': () => grams('1 oz'),
  '1 pound (avoirdupois)': () => grams('1 lb'),
  '1 US fluid ounce': () => ml('1 us fl oz'),
  '1 US cup (customary)': () => ml('1 cup'),
  '1 US tablespoon (nutrition labelling)': () => ml('1 tbsp'),
  '1 US teaspoon (nutrition labelling)': () => ml('1 tsp'),
  '1 UK fluid ounce': () => ml('1 uk fl oz'),
  '1 UK pint': () => ml('1 uk pint'),
  '1 US liquid quart': () => ml('1 us qt'),
};

function mm(text: string): number {
  const result = parseLength(text);
  return result.ok ? result.value.mm : Number.NaN;
}
function grams(text: string): number {
  const result = parseMass(text);
  return result.ok ? result.value : Number.NaN;
}
function ml(text: string): number {
  const result = parseVolume(text);
  return result.ok ? result.value.ml : Number.NaN;
}

describe('units, as defined', () => {
  for (const row of rows.filter(({ quantity }) => WRITTEN[quantity ?? ''] !== undefined)) {
    it(`${row.quantity} is ${row.value} ${row.unit} (${row.source}; ${row.seen})`, () => {
      const expected = Number(row.value);
      const read = WRITTEN[row.quantity ?? '']?.() ?? Number.NaN;
      expect(Math.abs(read / expected - 1)).toBeLessThan(tolerance);
    });
  }

  it('leaves out only sheets of paper, the point of a page and the cup of nutrition labels', () => {
    const left = rows.map(({ quantity }) => quantity ?? '').filter((quantity) => WRITTEN[quantity] === undefined);
    expect(left).toEqual([
      '1 US cup (nutrition labelling)',
      'A4 sheet',
      'A5 sheet',
      'A6 sheet',
      'A3 sheet',
      'A2 sheet',
      'US Letter sheet',
      '1 PostScript point as PDF user unit',
    ]);
  });
});
