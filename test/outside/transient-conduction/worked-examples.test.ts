/**
 * Textbook examples. What each book prints carries the book's own rounding (tables to four figures, one term
 * of the series, or a reading from a chart), so every case states its tolerance and why. The independent
 * computation in the same row must agree to its printed digits.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { seriesTerm } from '../../../src/compute/bake/eigenvalues.ts';
import { minutesForTheta } from '../../../src/compute/bake/series-minutes.ts';
import { theta } from '../../../src/compute/bake/theta.ts';

const file = readFileSync(new URL('worked_examples.csv', import.meta.url), 'utf8');
const rows: { example: string; book_answer: string; computed_here: string }[] = parse(file, {
  columns: true,
});

function rowOf(start: string): { computed: (name: string) => number; remark: string } {
  const row = rows.find((candidate) => candidate.example.startsWith(start));
  if (!row) throw new Error(`no example ${start}`);
  const computed = (name: string): number => {
    const found = new RegExp(`(?:^| )${name}=(-?[\\d.e+-]+)`).exec(row.computed_here);
    return Number(found?.[1]);
  };
  return { computed, remark: row.example };
}

const near = (found: number, wanted: number, within: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(within);

describe('worked examples', () => {
  it('short brass cylinder (from memory): the book’s 63 and 62.2 °C within 0.5, its tables having four figures', () => {
    const { computed, remark } = rowOf('Cengel short brass cylinder');
    expect(remark).toContain('from memory');
    const round = theta('cylinder', computed('Bi_c'), computed('Fo_c'));
    const centreC = 25 + 95 * round * theta('wall', computed('Bi_w'), computed('Fo_w'));
    const topC = 25 + 95 * round * theta('wall', computed('Bi_w'), computed('Fo_w'), 1);
    near(centreC, computed('T0'), 2e-3);
    near(topC, computed('Ttop'), 2e-3);
    near(centreC, 63, 0.5);
    near(topC, 62.2, 0.5);
  });

  it('brass plate (from memory): 282 °C from a chart and 279 lumped, within 3', () => {
    const { computed, remark } = rowOf('Cengel brass plate');
    expect(remark).toContain('from memory');
    const surfaceC = 500 - 480 * theta('wall', computed('Bi'), computed('Fo'), 1);
    near(surfaceC, computed('T'), 2e-3);
    near(surfaceC, 282, 3);
    near(surfaceC, 279, 3);
  });

  it('steel pipe wall (from memory): 42.9 and 45.2 °C within 0.3, the book’s Bi having three figures', () => {
    const { computed, remark } = rowOf('Incropera steel pipe wall');
    expect(remark).toContain('from memory');
    const [biot, fourier] = [computed('Bi'), computed('Fo')];
    near(theta('wall', biot, fourier), computed('th0'), 2e-6);
    const innerC = 60 - 80 * theta('wall', biot, fourier);
    const heatedC = 60 - 80 * theta('wall', biot, fourier, 1);
    near(innerC, computed('T0'), 2e-3);
    near(heatedC, computed('TL'), 2e-3);
    near(innerC, 42.9, 0.3);
    near(heatedC, 45.2, 0.3);
  });

  it('short steel cylinder (from memory, face values unsure): 405, 372 and 365 K within 3, from charts', () => {
    const { computed, remark } = rowOf('Incropera AISI304');
    expect(remark).toContain('from memory');
    const [wallAt, roundAt] = [
      (x: number) => theta('wall', computed('Bi_w'), computed('Fo_w'), x),
      (x: number) => theta('cylinder', computed('Bi_c'), computed('Fo_c'), x),
    ];
    const kelvin = (product: number): number => 300 + 300 * product;
    near(kelvin(wallAt(0) * roundAt(0)), computed('T00'), 5e-3);
    near(kelvin(wallAt(1) * roundAt(0)), computed('T0L'), 5e-3);
    near(kelvin(wallAt(0) * roundAt(1)), computed('Tr0'), 5e-3);
    near(kelvin(wallAt(0) * roundAt(0)), 405, 3);
    near(kelvin(wallAt(1) * roundAt(0)), 372, 3);
    near(kelvin(wallAt(0) * roundAt(1)), 365, 3);
  });

  it('boiled egg (from memory): 865 s within 1 %, the book using one term and three figures', () => {
    const { computed, remark } = rowOf('Cengel egg');
    expect(remark).toContain('from memory');
    const biot = computed('Bi');
    const thetaAt = (hundredths: number): number =>
      hundredths < 0.02 ? 1 : theta('sphere', biot, hundredths / 100);
    const fourier = minutesForTheta(thetaAt, (70 - 95) / (5 - 95)) / 100;
    near(fourier, computed('Fo'), 2e-6);
    const seconds = (fourier * 0.025 ** 2) / 0.151e-6;
    near(seconds, computed('t'), 0.02);
    near(seconds, 865, 8.65);
  });

  it('long steel shaft (seen): the book’s one-term 390 °C within 0.5; the whole series says 385.7', () => {
    const { computed, remark } = rowOf('Cengel solution 11-41');
    expect(remark).toContain('SEEN');
    const [biot, fourier] = [computed('Bi'), computed('Fo')];
    const { zeta, coefficient } = seriesTerm('cylinder', biot, 1);
    const oneTerm = coefficient * Math.exp(-zeta * zeta * fourier);
    // The row prints Bi and Fo to five digits.
    near(oneTerm, computed('one'), 1e-5);
    near(oneTerm, 0.9607, 1e-4);
    near(150 + 250 * oneTerm, 390, 0.5);
    near(theta('cylinder', biot, fourier), computed('series'), 1e-5);
  });
});
