import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Shape } from '../../src/domain/shape.ts';
import type { LengthUnit } from '../../src/domain/units.ts';
import { eggsInWords } from '../../src/wording/eggs.ts';
import { formatEighths } from '../../src/wording/fraction.ts';
import { formatBothLengths, formatLength } from '../../src/wording/length.ts';
import { listInWords } from '../../src/wording/list.ts';
import { enGB } from '../../src/wording/locales/en-GB.ts';
import { wordsFor } from '../../src/wording/locales/index.ts';
import { formatGrams, formatWholeGrams } from '../../src/wording/mass.ts';
import { formatFixed, formatNumber, formatShare } from '../../src/wording/number.ts';
import { spoonsFor } from '../../src/wording/spoons.ts';
import { surplusInWords } from '../../src/wording/surplus.ts';
import { tinAlt, tinOtherSize, tinSize } from '../../src/wording/tin-size.ts';
import { round, tin } from '../compute/mixes/sample.ts';

describe('numbers', () => {
  it.each([
    [1234567.5, 1, '1,234,567.5'],
    [-0.5, 1, '−0.5'],
    [-0.04, 1, '0.0'],
    [999.96, 1, '1,000.0'],
    [0, 0, '0'],
  ])('%d with %d decimals is %s', (value, decimals, text) => {
    expect(formatFixed(value, decimals)).toBe(text);
  });

  it('drop idle noughts', () => {
    expect([250, 12.5, 1.85, 0.1].map((value) => formatNumber(value))).toEqual([
      '250',
      '12.5',
      '1.85',
      '0.1',
    ]);
    expect(formatNumber(1200, 0)).toBe('1,200');
    expect(formatShare(0.0432, 1)).toBe('4.3 %');
  });

  it('read back as what they stand for', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), (number, decimals) => {
        for (const text of [formatFixed(number, decimals), formatNumber(number, decimals)]) {
          const read = Number(text.replaceAll(',', '').replace('−', '-'));
          expect(Math.abs(read - number)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe('weights', () => {
  it('are exact where they are weighed, whole where they are totals', () => {
    expect([250, 12.5, 0.05].map(formatGrams)).toEqual(['250', '12.5', '0.05']);
    expect([1005.2, 7.46, -12.4].map(formatWholeGrams)).toEqual(['1,005', '7.5', '−12']);
  });
});

describe('lengths', () => {
  it.each([
    [69.85, 'in', '2¾ in'],
    [152.4, 'in', '6 in'],
    [12.7, 'in', '½ in'],
    [61, 'in', '2.4 in'],
    [230, 'cm', '23 cm'],
    [65, 'mm', '65 mm'],
  ] as [number, LengthUnit, string][])('%d mm in %s is %s', (mm, unit, text) => {
    expect(formatLength(mm, unit)).toBe(text);
  });

  it('come in both systems where that helps', () => {
    expect(formatBothLengths(152.4, 'in')).toBe('6 in (15.2 cm)');
    expect(formatBothLengths(65, 'mm')).toBe('65 mm (2½ in)');
  });

  it('have real fractions', () => {
    expect([0.125, 0.5, 1, 2.75, 3.96].map(formatEighths)).toEqual(['⅛', '½', '1', '2¾', '4']);
  });
});

describe('tin sizes', () => {
  const of = (shape: Shape, depthMm: number, unit: LengthUnit) => ({ ...tin('t', shape, depthMm), unit });
  it.each([
    [round(6), 'round 6 × 3 in', '(15.2 × 7.6 cm)'],
    [
      of(
        { kind: 'loaf', lengthMm: 228.6, widthMm: 127, baseLengthMm: 203.2, baseWidthMm: 101.6 },
        69.85,
        'in',
      ),
      'loaf 9 × 5 × 2¾ in, base 8 × 4 in',
      '(22.9 × 12.7 × 7 cm)',
    ],
    [
      of({ kind: 'hexagon', acrossMm: 200, measured: 'corners' }, 75, 'mm'),
      'hexagon 200 × 75 mm, across corners',
      '(7⅞ × 3 in)',
    ],
    [
      of({ kind: 'long-octagon', lengthMm: 304.8, widthMm: 228.6, slantMm: 76.2 }, 76.2, 'in'),
      'long octagon 12 × 9 × 3 in, slant 3 in',
      '(30.5 × 22.9 × 7.6 cm)',
    ],
    [of({ kind: 'petal', petals: 8, acrossMm: 228.6 }, 76.2, 'in'), '8-petal 9 × 3 in', '(22.9 × 7.6 cm)'],
    [
      of({ kind: 'ring', acrossMm: 250, tubeMm: 60 }, 100, 'cm'),
      'ring 25 × 10 cm, tube 6 cm',
      '(9⅞ × 3⅞ in)',
    ],
    [
      of({ kind: 'measured', volumeMl: 1850 }, 90, 'mm'),
      'measured 90 mm deep, holds 1,850 mL',
      '(3½ in deep)',
    ],
  ])('$name', (each, own, other) => {
    expect(tinSize(each, enGB)).toBe(own);
    expect(tinOtherSize(each, enGB)).toBe(other);
  });

  it('describe a drawing', () => {
    expect(tinAlt(round(6), enGB)).toBe('Round tin, 6 in and 3 in deep');
    expect(tinAlt(round(6), wordsFor('en-US'))).toBe('Round pan, 6 in and 3 in deep');
  });
});

describe('eggs in words', () => {
  it.each([
    [[{ part: 'egg', whole: 1 }], 'One egg'],
    [
      [
        { part: 'egg', whole: 3 },
        { part: 'yolk', whole: 2 },
      ],
      'Three eggs and two yolks',
    ],
    [[{ part: 'white', whole: 21 }], '21 whites'],
    [[], 'No eggs'],
  ] as const)('%j', (parts, text) => {
    expect(eggsInWords(parts, enGB)).toBe(text);
  });
});

describe('surplus in words', () => {
  it.each([
    [140, '140 g over: 5 fairy cakes and 15 g'],
    [25, '25 g over: 1 fairy cake'],
    [12.4, '12 g over'],
    [0.3, 'nothing over'],
    [-0.49, 'nothing over'],
    [-8.2, '8.2 g short, shared by volume'],
  ])('%d g', (surplusG, text) => {
    expect(surplusInWords(surplusG, 25, enGB)).toBe(text);
  });
});

describe('spoons', () => {
  it.each([
    [3, 4, '¾ tsp'],
    [4.9, 2, '2½ tsp'],
    [1.6, 4, '⅜ tsp'],
    [0.2, 6, 'a pinch'],
    [0.4, 6, '⅛ tsp'],
    [5, 4, null],
    [3, undefined, null],
  ])('%d g at %s g a teaspoon', (massG, teaspoonG, text) => {
    expect(spoonsFor(massG, teaspoonG === undefined ? {} : { teaspoonG }, enGB)).toBe(text);
  });
});

describe('lists', () => {
  it('end with and', () => {
    expect(
      [[], ['milk'], ['milk', 'eggs'], ['milk', 'eggs', 'wheat']].map((items) => listInWords(items, 'and')),
    ).toEqual(['', 'milk', 'milk and eggs', 'milk, eggs and wheat']);
  });
});
