import { describe, expect, it } from 'vitest';
import type { Kitchen } from '../../src/domain/kitchen.ts';
import { inHomeUnits } from '../../src/views/home-units.ts';
import { cupsText, measuredOut } from '../../src/wording/cups.ts';
import { spoonsFor } from '../../src/wording/spoons.ts';
import { inchesText, usUnitsInSentence } from '../../src/wording/us-units.ts';

const AMERICAN: Pick<Kitchen, 'locale' | 'tins'> = { locale: 'en-US', tins: [] };

describe('inchesText(lengthMm)', () => {
  it.each([
    [63.5, '2½'],
    [101.6, '4'],
    [25.4, '1'],
    [3.175, '⅛'],
    [1.6, '1/16'],
    [65, '2½'],
    [0, '0'],
    [-51, '−2'],
  ])('%d mm is %s in', (mm, text) => expect(inchesText(mm)).toBe(text));
});

describe('usUnitsInSentence(text)', () => {
  it.each([
    ['250 g of batter, 65 mm high', '8.8 oz of batter, 2½ in high'],
    ['Racks of 440 × 360 mm', 'Racks of 17⅜ × 14⅛ in'],
    ['2.4 kg before boards', '5.3 lb before boards'],
    ['65 mm (2½ in)', '2½ in'],
    ['11 in (27.9 cm)', '11 in (27.9 cm)'],
    ['the flour (250 g)', 'the flour (8.8 oz)'],
    ['0.12 g/cm²', '0.027 oz/in²'],
    ['1 × 1.9 l', '1 × 2 qt'],
    ['holds 2,366 mL', 'holds 10 cups'],
    ['0.85 g/ml', '0.85 g/ml'],
    ['320 cm²', '320 cm²'],
  ])('%s', (metric, american) => {
    expect(usUnitsInSentence(metric)).toBe(american);
    expect(usUnitsInSentence(american)).toBe(american);
  });

  it('leaves weights where grams were asked for', () => {
    expect(usUnitsInSentence('250 g, 65 mm high', 'g')).toBe('250 g, 2½ in high');
  });
});

describe('cups and spoons', () => {
  // A US cup is 236.588 mL (NIST Handbook 44, App. C); 120 g of flour to the cup is common practice, no source.
  it.each([
    [236.588, '1'],
    [591.5, '2½'],
    [79, '⅓'],
    [2366, '10'],
  ])('%d mL are %s cups', (ml, text) => expect(cupsText(ml)).toBe(text));

  it.each([
    [118, '½ cup'],
    [473, '2 cups'],
    [30, '2 tbsp'],
    [5, '1 tsp'],
    [0.7, '⅛ tsp'],
  ])('%d mL are measured out as %s', (ml, text) => expect(measuredOut(ml)).toBe(text));

  it('stand beside weights in American kitchens alone, where the density is known', () => {
    const flour = { densityGPerMl: 0.507 };
    expect(spoonsFor(240, flour, { pinch: 'a pinch', cups: true })).toBe('2 cups');
    expect(spoonsFor(240, flour, { pinch: 'a pinch', cups: false })).toBeNull();
    expect(spoonsFor(240, {}, { pinch: 'a pinch', cups: true })).toBeNull();
    expect(spoonsFor(12, { teaspoonG: 4 }, { pinch: 'a pinch', cups: true })).toBe('1 tbsp');
  });
});

describe('inHomeUnits(view, kitchen)', () => {
  const view = {
    name: 'Tin of 250 g',
    height: { value: 63.5, unit: 'mm', text: '64' },
    batter: { value: 250, unit: 'g', text: '250' },
    cell: { figure: { value: 500, unit: 'g', text: '500' }, text: '500' },
    warnings: [{ code: 'deep', message: 'Use a deeper tin: 30 mm more' }],
  } as const;

  it('shows figures, sentences and warnings, keeps values and names, and twice is once', () => {
    const home = inHomeUnits(view, AMERICAN);
    expect(home).toEqual({
      name: 'Tin of 250 g',
      height: { value: 63.5, unit: 'mm', text: '2½' },
      batter: { value: 250, unit: 'g', text: '8.8' },
      cell: { figure: { value: 500, unit: 'g', text: '17.6' }, text: '17.6' },
      warnings: [{ code: 'deep', message: 'Use a deeper pan: 1⅛ in more' }],
    });
    expect(inHomeUnits(home, AMERICAN)).toEqual(home);
  });

  it('gives back what a British kitchen sees', () => {
    expect(inHomeUnits(view, { locale: 'en-GB', tins: [] })).toBe(view);
  });
});
