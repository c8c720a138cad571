import { readFileSync } from 'node:fs';
import bessel from 'bessel';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { besselJ01 } from '../../../src/compute/bake/bessel.ts';
import { type Geometry, seriesTerm } from '../../../src/compute/bake/eigenvalues.ts';
import { theta } from '../../../src/compute/bake/theta.ts';

type Row = Record<string, string>;
const folder = new URL('.', import.meta.url);
const source = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const table = (name: string): Row[] =>
  parse(readFileSync(new URL(name, folder), 'utf8'), { columns: true, relax_column_count: true });
const figure = (row: Row, column: string): number => Number(row[column]);

const GEOMETRY: Record<string, Geometry> = { wall: 'wall', cyl: 'cylinder', sphere: 'sphere' };
const geometryOf = (name = ''): Geometry => {
  const geometry = GEOMETRY[name];
  if (!geometry) throw new Error(`no geometry ${name}`);
  return geometry;
};

describe('J0 and J1', () => {
  // Abramowitz & Stegun, Handbook of Mathematical Functions (1964), Table 9.1 and 9.5; from memory.
  it('agree with printed values and zeros', () => {
    expect(Math.abs(besselJ01(1).j0 - 0.765197686557967)).toBeLessThan(1e-14);
    expect(Math.abs(besselJ01(1).j1 - 0.440050585744934)).toBeLessThan(1e-14);
    expect(Math.abs(besselJ01(10).j0 + 0.245935764451348)).toBeLessThan(1e-14);
    expect(Math.abs(besselJ01(2.404825557695773).j0)).toBeLessThan(1e-14);
    expect(Math.abs(besselJ01(3.831705970207512).j1)).toBeLessThan(1e-14);
  });

  // The package's own accuracy is about 1e-8 (rational fits); the differences say so, not ours.
  it('agree with another library to that library’s accuracy from 0 to 200', () => {
    for (let x = 0.05; x < 200; x += 0.37) {
      const { j0, j1 } = besselJ01(x);
      expect(Math.abs(j0 - bessel.besselj(x, 0))).toBeLessThan(2e-7);
      expect(Math.abs(j1 - bessel.besselj(x, 1))).toBeLessThan(2e-7);
    }
  });

  // The integral form J(n) = 1/π ∫ cos(nτ − x sin τ) dτ; the trapezoidal rule is exact to the last digits for it.
  it('agree with their integral form to 1e-12', () => {
    const integral = (n: number, x: number): number => {
      const slices = 2048;
      let sum = 0;
      for (let k = 0; k < slices; k++) {
        const tau = (2 * Math.PI * k) / slices;
        sum += Math.cos(n * tau - x * Math.sin(tau));
      }
      return sum / slices;
    };
    for (let x = 0; x < 400; x += 0.617) {
      expect(Math.abs(besselJ01(x).j0 - integral(0, x))).toBeLessThan(1e-12);
      expect(Math.abs(besselJ01(x).j1 - integral(1, x))).toBeLessThan(1e-12);
    }
  });
});

describe('eigenvalues', () => {
  for (const row of table('eigenvalues.csv')) {
    it(`of a ${row.geometry} at Bi ${row.Bi} agree with 40-digit figures and, in four decimals, with the table`, () => {
      const { zeta, coefficient } = seriesTerm(geometryOf(row.geometry), figure(row, 'Bi'), 1);
      expect(Math.abs(zeta - figure(row, 'zeta1'))).toBeLessThan(source.tolerance);
      expect(Math.abs(coefficient - figure(row, 'C1'))).toBeLessThan(source.tolerance);
      expect(Math.abs(zeta - figure(row, 'zeta1_table_from_memory'))).toBeLessThan(6e-5);
      expect(Math.abs(coefficient - figure(row, 'C1_table_from_memory'))).toBeLessThan(6e-5);
    });
  }

  it('satisfy their own equation by the other library’s functions, and none is skipped', () => {
    for (const biot of [0.01, 0.5, 2, 24, 300]) {
      const zetas = Array.from({ length: 30 }, (_, index) => seriesTerm('cylinder', biot, index + 1).zeta);
      for (const zeta of zetas) {
        const left = zeta * bessel.besselj(zeta, 1);
        expect(Math.abs(left - biot * bessel.besselj(zeta, 0))).toBeLessThan(1e-6 * (1 + biot));
      }
      // Zeros of ζJ1 − Bi·J0 found by walking: as many as terms.
      let walked = 0;
      const last = (zetas[29] ?? 0) + 1e-4;
      const value = (x: number): number => x * bessel.besselj(x, 1) - biot * bessel.besselj(x, 0);
      for (let x = 1e-4; x < last; x += 0.01) {
        const next = Math.min(x + 0.01, last);
        if (value(x) < 0 !== value(next) < 0) walked += 1;
      }
      expect(walked).toBe(30);
    }
  });
});

describe('theta', () => {
  const rows = table('theta_checks.csv');
  for (const row of rows.filter((candidate) => candidate.Bi)) {
    it(`of a ${row.geometry}, Bi ${row.Bi}, Fo ${row.Fo}, at ${row.x_star}`, () => {
      const [biot, fourier, position] = [figure(row, 'Bi'), figure(row, 'Fo'), figure(row, 'x_star')];
      const found = theta(geometryOf(row.geometry), biot, fourier, position);
      expect(Math.abs(found - figure(row, 'theta_mpmath40'))).toBeLessThan(source.tolerance);
    });
  }

  const PRODUCTS: Record<string, () => number> = {
    'short_cyl Bi_r=2 Fo_r=.25 Bi_z=1 Fo_z=1 centre': () => theta('cylinder', 2, 0.25) * theta('wall', 1, 1),
    'block Bi=2,2,1 Fo=.25,.25,1 centre': () => theta('wall', 2, 0.25) ** 2 * theta('wall', 1, 1),
    'block Bi=5,10,5 Fo=.1,.05,.4 centre': () =>
      theta('wall', 5, 0.1) * theta('wall', 10, 0.05) * theta('wall', 5, 0.4),
  };
  it('of short cylinders and blocks is the product of its sides', () => {
    const blocks = rows.filter((candidate) => !candidate.Bi);
    expect(blocks).toHaveLength(Object.keys(PRODUCTS).length);
    for (const row of blocks) {
      const found = PRODUCTS[row.geometry ?? '']?.() ?? Number.NaN;
      expect(Math.abs(found - figure(row, 'theta_mpmath40'))).toBeLessThan(source.tolerance);
    }
  });

  it('falls from 1 without a wiggle, however short the time', () => {
    for (const geometry of ['wall', 'cylinder', 'sphere'] as const) {
      let before = 1 + 1e-12;
      for (let fourier = 1e-4; fourier < 2; fourier *= 1.3) {
        const now = theta(geometry, 3, fourier);
        expect(now).toBeLessThanOrEqual(before + 1e-12);
        before = now;
      }
    }
  });
});
