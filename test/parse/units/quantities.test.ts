import { describe, expect, it } from 'vitest';
import type { Result } from '../../../src/domain/result.ts';
import { parseDay } from '../../../src/parse/units/date.ts';
import { parseDensity } from '../../../src/parse/units/density.ts';
import { parseDuration } from '../../../src/parse/units/duration.ts';
import { parseLength } from '../../../src/parse/units/length.ts';
import { parseMass } from '../../../src/parse/units/mass.ts';
import { parseShare } from '../../../src/parse/units/share.ts';
import { parseVolume } from '../../../src/parse/units/volume.ts';

/** The value, or the codes of what is wrong. */
const outcome = <T>(result: Result<T>): T | string =>
  result.ok ? result.value : result.problems.map(({ code }) => code).join(' ');

describe('parseLength', () => {
  it.each([
    ['9in', 228.6, 'in'],
    ['2 3/4in', 69.85, 'in'],
    ['2 3⁄4 in', 69.85, 'in'],
    ['2¾in', 69.85, 'in'],
    ['2 ¾ inches', 69.85, 'in'],
    ['½ inch', 12.7, 'in'],
    ['7/8in', 22.225, 'in'],
    ['.5in', 12.7, 'in'],
    ['9″', 228.6, 'in'],
    ['9"', 228.6, 'in'],
    ['23 cm', 230, 'cm'],
    ['22.5cm', 225, 'cm'],
    ['65mm', 65, 'mm'],
    ['65\u00a0mm', 65, 'mm'],
    ['  65 MM ', 65, 'mm'],
  ])('%s is %d mm and keeps its unit', (text, mm, unit) => {
    expect(outcome(parseLength(text))).toEqual({ mm, unit });
  });

  it.each([
    ['6', 'unit-missing'],
    ['2 3/4', 'unit-missing'],
    ['6 feet', 'unit-unknown'],
    ['6g', 'unit-unknown'],
    ['1e3mm', 'unit-unknown'],
    ['0in', 'quantity-not-positive'],
    ['-3in', 'quantity-not-positive'],
    ['−3in', 'quantity-not-positive'],
    ['2,5cm', 'quantity-unreadable'],
    ['1,000 mm', 'quantity-unreadable'],
    ['2 7/4in', 'quantity-unreadable'],
    ['1/0in', 'quantity-unreadable'],
    ['1.2.3in', 'quantity-unreadable'],
    ['six inches', 'quantity-unreadable'],
    ['', 'quantity-unreadable'],
    ['6in 3mm', 'quantity-order'],
    ['99999999999mm', 'quantity-unreadable'],
    ['9999cm', 'quantity-out-of-range'],
    ['0.01mm', 'quantity-out-of-range'],
  ])('%s is refused: %s', (text, code) => {
    expect(outcome(parseLength(text))).toBe(code);
  });

  it('shows the fix for a bare number', () => {
    const result = parseLength('2 3/4');
    expect(result.ok ? '' : result.problems[0]?.hint).toBe('Write 2 3/4 in, 2 3/4 cm or 2 3/4 mm.');
  });

  it('takes nought only where nought makes sense', () => {
    expect(outcome(parseLength('0 mm', { zero: true }))).toEqual({ mm: 0, unit: 'mm' });
    expect(outcome(parseLength('0 mm'))).toBe('quantity-not-positive');
  });
});

describe('parseMass', () => {
  it.each([
    ['250 g', 250],
    ['1.2 kg', 1200],
    ['1 lb 2 oz', 453.59237 + 2 * 28.349523125],
    ['1lb2oz', 453.59237 + 2 * 28.349523125],
    ['1½ lb', 680.388555],
    ['9 ounces', 9 * 28.349523125],
  ])('%s is %d g', (text, grams) => {
    expect(outcome(parseMass(text))).toBeCloseTo(grams, 6);
  });

  it.each([
    ['250', 'unit-missing'],
    ['1 lb 2', 'unit-missing'],
    ['2 oz 1 lb', 'quantity-order'],
    ['1 lb 2 lb', 'quantity-order'],
    ['250 ml', 'unit-unknown'],
    ['900 kg', 'quantity-out-of-range'],
  ])('%s is refused: %s', (text, code) => {
    expect(outcome(parseMass(text))).toBe(code);
  });

  it('points at the part that is wrong', () => {
    const result = parseMass('1 lb 2 stones');
    expect(result.ok ? 0 : result.problems[0]?.column).toBe(6);
  });
});

describe('the other quantities', () => {
  it.each([
    ['1850ml', 1850],
    ['4.8 l', 4800],
    ['2 tsp', 10],
    ['1 tbsp', 15],
    ['½ cup', 118.29411825],
    ['4 us fl oz', 118.29411825],
    ['1 uk pint', 568.26125],
    ['1 us pint', 473.176473],
    ['5 us qt', 4731.76473],
  ])('parseVolume: %s is %d ml', (text, ml) => {
    const volume = outcome(parseVolume(text));
    expect(typeof volume === 'string' ? volume : volume.ml).toBeCloseTo(ml, 6);
  });

  it('a fluid ounce or a pint alone is refused, because it differs between the UK and the US', () => {
    expect(outcome(parseVolume('4 fl oz'))).toBe('unit-ambiguous');
    expect(outcome(parseVolume('1 pint'))).toBe('unit-ambiguous');
    expect(outcome(parseVolume('5 qt'))).toBe('unit-ambiguous');
  });

  it('shares are percentages up to 100', () => {
    expect(outcome(parseShare('6 %'))).toBe(0.06);
    expect(outcome(parseShare('6'))).toBe('unit-missing');
    expect(outcome(parseShare('0.06'))).toBe('unit-missing');
    expect(outcome(parseShare('101 %'))).toBe('quantity-out-of-range');
  });

  it('densities are grams a millilitre', () => {
    expect(outcome(parseDensity('0.85 g/ml'))).toBe(0.85);
    expect(outcome(parseDensity('85 g/ml'))).toBe('quantity-out-of-range');
    expect(outcome(parseDensity('0.85'))).toBe('unit-missing');
  });

  it('times are whole minutes', () => {
    expect(outcome(parseDuration('45 min'))).toBe(45);
    expect(outcome(parseDuration('1 h 30 min'))).toBe(90);
    expect(outcome(parseDuration('1½ h'))).toBe(90);
    expect(outcome(parseDuration('2 days'))).toBe(2880);
    expect(outcome(parseDuration('0.3 min'))).toBe('quantity-out-of-range');
    expect(outcome(parseDuration('1.5 min'))).toBe('quantity-unreadable');
    expect(outcome(parseDuration('30 min 1 h'))).toBe('quantity-order');
  });

  it('days are days of the calendar', () => {
    expect(outcome(parseDay('2028-02-29'))).toBe('2028-02-29');
    for (const text of ['2027-02-29', '2026-13-01', '1/11/2026', '2026-11-1', 'tomorrow']) {
      expect(outcome(parseDay(text))).toBe('date-unreadable');
    }
  });
});
