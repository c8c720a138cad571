import { describe, expect, it } from 'vitest';
import type { LabelNutrition } from '../../src/views/label.types.ts';
import { nutritionText } from '../../src/views/label-nutrition.ts';
import { labelWordsFor } from '../../src/wording/label/index.ts';

const row = (id: 'energy' | 'fat', name: string, per100GText: string, perPortionText: string) => ({
  ...{ id, name, within: false, per100G: [], perPortion: [], per100GText, perPortionText },
});

/** A slice of 62 g, by hand: 1,700 kJ × 0.62 = 1,054 kJ, 20 g × 0.62 = 12.4 g. */
const nutrition = (perPortionHead: string): LabelNutrition => ({
  title: 'Nutrition',
  per100GHead: 'per 100 g',
  perPortionHead,
  rows: [
    row('energy', 'Energy', '1,700 kJ / 406 kcal', '1,054 kJ / 252 kcal'),
    row('fat', 'Fat', '20 g', '12 g'),
  ],
});

describe('nutrition in words, on a label too small for a table', () => {
  const british = labelWordsFor('en-GB');
  const american = labelWordsFor('en-US');

  it('UK: everything per 100 g, then the energy of a portion with its weight', () => {
    expect(nutritionText(nutrition('per portion (62 g)'), 'UK', british)).toBe(
      'Nutrition per 100 g: energy 1,700 kJ / 406 kcal, fat 20 g. Per portion (62 g): energy 1,054 kJ / 252 kcal.',
    );
  });

  it('US: everything per serving', () => {
    expect(nutritionText(nutrition('per serving (62 g)'), 'US', american)).toBe(
      'Nutrition per serving (62 g): energy 1,054 kJ / 252 kcal, fat 12 g.',
    );
  });

  it('is per 100 g alone where no portion is known', () => {
    for (const rules of ['UK', 'US'] as const) {
      const text = nutritionText(nutrition(''), rules, british);
      expect(text).toBe('Nutrition per 100 g: energy 1,700 kJ / 406 kcal, fat 20 g.');
    }
  });
});
