import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import {
  type Composition,
  compositionTimeFactor,
  thermalProperties,
} from '../../../src/compute/bake/composition.ts';

const folder = new URL('.', import.meta.url);
const source = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('choi_okos_values.csv', folder), 'utf8'), {
  columns: true,
});
const NONE: Composition = { water: 0, protein: 0, fat: 0, carbohydrate: 0, fibre: 0, ash: 0 };
const MADE_OF: Record<string, Composition> = {
  protein: { ...NONE, protein: 1 },
  fat: { ...NONE, fat: 1 },
  carb: { ...NONE, carbohydrate: 1 },
  fibre: { ...NONE, fibre: 1 },
  ash: { ...NONE, ash: 1 },
  water: { ...NONE, water: 1 },
  'batter w.28 p.06 f.22 c.42 a.02': {
    water: 0.28,
    protein: 0.06,
    fat: 0.22,
    carbohydrate: 0.42,
    fibre: 0,
    ash: 0.02,
  },
};

describe('thermal properties', () => {
  for (const row of rows) {
    it(`of ${row.component} at ${row.T_C} °C agree with the tabulated polynomials`, () => {
      const shares = MADE_OF[row.component ?? ''];
      if (!shares) throw new Error(`no composition for ${row.component}`);
      const found = thermalProperties(shares, Number(row.T_C));
      const close = (value: number, wanted: number): void =>
        expect(Math.abs(value / wanted - 1)).toBeLessThan(source.tolerance);
      close(found.conductivityWPerMK, Number(row.k_W_mK));
      close(found.densityKgPerM3, Number(row.rho_kg_m3));
      close(found.heatCapacityKJPerKgK, Number(row.cp_kJ_kgK));
    });
  }

  it('refuse shares that do not add up', () => {
    expect(() => thermalProperties({ ...NONE, water: 0.5 }, 20)).toThrow(RangeError);
  });

  it('make a batter with less water and more fat slower', () => {
    const sponge = { water: 0.3, protein: 0.06, fat: 0.2, carbohydrate: 0.42, fibre: 0, ash: 0.02 };
    const rich = { water: 0.2, protein: 0.06, fat: 0.3, carbohydrate: 0.42, fibre: 0, ash: 0.02 };
    expect(compositionTimeFactor(sponge, sponge)).toBe(1);
    expect(compositionTimeFactor(rich, sponge)).toBeGreaterThan(1);
  });
});
