import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { BAKE_CONSTANTS, bakeSolid, seriesMinutes } from '../../../src/compute/bake/index.ts';
import type { Shape } from '../../../src/domain/shape.ts';

const folder = new URL('.', import.meta.url);
const source = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('model_regression.csv', folder), 'utf8'), {
  columns: true,
});

describe('minutes of the series', () => {
  for (const row of rows) {
    it(`for a ${row.shape} of ${row.size_in} in, ${row.height_in} in high, at ${row.oven_C} °C`, () => {
      const acrossMm = Number(row.size_in) * 25.4;
      const shape: Shape =
        row.shape === 'square' ? { kind: 'square', sideMm: acrossMm } : { kind: 'round', acrossMm };
      const solid = bakeSolid({ shape, depthMm: 102 }, Number(row.height_in) * 25.4);
      const found = seriesMinutes(solid, Number(row.oven_C), BAKE_CONSTANTS) ?? Number.NaN;
      const wanted = Number(row['series_min_alpha4.4e-7_kappa24_T0_22_Tc95']);
      expect(Math.abs(found - wanted)).toBeLessThan(source.tolerance);
      expect(Math.abs(BAKE_CONSTANTS.lagMin + found - Number(row.plus_lag4))).toBeLessThan(0.006);
    });
  }
});
