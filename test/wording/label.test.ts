/**
 * Rounding of nutrition figures by the rules named in src/wording/label/nutrition-rounding.ts (both from memory), each
 * on either side of its limits.
 */
import { describe, expect, it } from 'vitest';
import { euFigure, usFigure } from '../../src/wording/label/nutrition-rounding.ts';

describe('in the EU and the UK', () => {
  it.each([
    [0, '0'],
    [0.3, '<0.5'],
    [0.5, '<0.5'],
    [0.51, '0.5'],
    [9.94, '9.9'],
    [9.96, '10'],
    [10.4, '10'],
    [62.5, '63'],
  ])('%s g of fat is told as %s', (grams, text) => expect(euFigure(grams, 'major')).toBe(text));
  it.each([
    [0.1, '<0.1'],
    [0.14, '0.1'],
    [9.96, '10'],
  ])('%s g of saturates is told as %s', (grams, text) => expect(euFigure(grams, 'saturates')).toBe(text));
  it.each([
    [0, '0'],
    [0.0125, '<0.01'],
    [0.013, '0.01'],
    [0.125, '0.13'],
    [0.994, '0.99'],
    [0.996, '1.0'],
    [1.26, '1.3'],
  ])('%s g of salt is told as %s', (grams, text) => expect(euFigure(grams, 'salt')).toBe(text));
  it('energy is told in whole kJ and kcal', () => expect(euFigure(1862.49, 'energy')).toBe('1,862'));
});

describe('in the US', () => {
  it.each([
    [4.9, '0'],
    [5, '5'],
    [47.4, '45'],
    [50, '50'],
    [51, '50'],
    [446, '450'],
  ])('%s calories are told as %s', (kcal, text) => expect(usFigure(kcal, 'calories')).toBe(text));
  it.each([
    [0.49, '0'],
    [0.5, '0.5'],
    [4.7, '4.5'],
    [4.8, '5'],
    [22.6, '23'],
  ])('%s g of fat is told as %s', (grams, text) => expect(usFigure(grams, 'fat')).toBe(text));
  it.each([
    [4.9, '0'],
    [7.4, '5'],
    [139, '140'],
    [146, '150'],
  ])('%s mg of sodium is told as %s', (mg, text) => expect(usFigure(mg, 'sodium')).toBe(text));
  it.each([
    [0.4, '0'],
    [0.7, 'less than 1'],
    [1.4, '1'],
    [55.5, '56'],
  ])('%s g of sugars is told as %s', (grams, text) => expect(usFigure(grams, 'other')).toBe(text));
});
