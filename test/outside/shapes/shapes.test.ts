import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { perimeterMm, planAreaMm2, tinOutline, volumeMl } from '../../../src/compute/shapes/index.ts';
import { outlineAreaMm2, outlinePerimeterMm } from '../../../src/compute/outline/index.ts';
import type { Shape } from '../../../src/domain/shape.ts';
import { INSIDE, slicedArea, stackedVolume } from './predicates.ts';

const IN = 25.4;
const folder = new URL('.', import.meta.url);
const source = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const rows: Record<string, string>[] = parse(readFileSync(new URL('shapes.csv', folder), 'utf8'), { columns: true });

interface Case {
  shape: Shape;
  depthIn: number;
  /** Area in in² at a height in in, for tins whose walls are not upright. */
  areaAt?: (z: number) => number;
}

const circle = (r: number) => Math.PI * r * r;
const CASES: Record<string, Case> = {
  round: { shape: { kind: 'round', acrossMm: 8 * IN }, depthIn: 3 },
  square: { shape: { kind: 'square', sideMm: 8 * IN }, depthIn: 3 },
  rectangle: { shape: { kind: 'rectangle', lengthMm: 13 * IN, widthMm: 9 * IN }, depthIn: 2 },
  hexagon_across_flats: { shape: { kind: 'hexagon', acrossMm: 8 * IN, measured: 'flats' }, depthIn: 3 },
  octagon_across_flats: { shape: { kind: 'octagon', acrossMm: 8 * IN, measured: 'flats' }, depthIn: 3 },
  long_octagon: {
    shape: { kind: 'long-octagon', lengthMm: 12 * IN, widthMm: 9 * IN, slantMm: 3 * IN },
    depthIn: 3,
  },
  oval_ellipse: { shape: { kind: 'oval', lengthMm: 10.75 * IN, widthMm: 7.875 * IN }, depthIn: 3 },
  heart_width_across_lobes: { shape: { kind: 'heart', acrossMm: 8 * IN, measured: 'across' }, depthIn: 3 },
  heart_height_point_to_lobe_top: { shape: { kind: 'heart', acrossMm: 8 * IN, measured: 'point' }, depthIn: 3 },
  petal_8: { shape: { kind: 'petal', petals: 8, acrossMm: 9 * IN }, depthIn: 3 },
  tapered_round_frustum: {
    shape: { kind: 'round', acrossMm: 8 * IN, baseAcrossMm: 7.5 * IN },
    depthIn: 3,
    areaAt: (z) => circle(3.75 + (0.25 * z) / 3),
  },
  hemisphere: {
    shape: { kind: 'dome', acrossMm: 6 * IN },
    depthIn: 3,
    areaAt: (z) => Math.PI * (9 - (3 - z) ** 2),
  },
  spherical_cap: {
    shape: { kind: 'dome', acrossMm: 8 * IN },
    depthIn: 2,
    areaAt: (z) => Math.PI * (25 - (5 - z) ** 2),
  },
  ring_tin_straight: { shape: { kind: 'ring', acrossMm: 10 * IN, tubeMm: 3 * IN }, depthIn: 3 },
  ring_tin_tapered: {
    shape: { kind: 'ring', acrossMm: 10 * IN, tubeMm: 2 * IN, baseAcrossMm: 9 * IN, baseTubeMm: 2.5 * IN },
    depthIn: 3.5,
    areaAt: (z) => circle(4.5 + z / 7) - circle(1.25 - z / 14),
  },
};

const near = (value: number, wanted: number, relative: number) =>
  expect(Math.abs(value / wanted - 1), `${value} against ${wanted}`).toBeLessThan(relative);

describe(`tins against: ${source.title}, ${source.issuer}, ${source.year}`, () => {
  it('names a case for every row, and no row is left over', () => {
    expect(rows.map((row) => row.shape).sort()).toEqual(Object.keys(CASES).sort());
  });

  it.each(rows)('$shape ($dims_in) has the area, perimeter and volume of the closed formula', (row) => {
    const { shape, depthIn } = CASES[row.shape ?? ''] as Case;
    const form = { shape, depthMm: depthIn * IN };
    near((planAreaMm2(form) ?? 0) / IN ** 2, Number(row.top_area_in2), source.tolerance);
    near((volumeMl(form) * 1000) / IN ** 3, Number(row.volume_in3), source.tolerance);
    if (row.perimeter_in !== '') near((perimeterMm(form) ?? 0) / IN, Number(row.perimeter_in), source.tolerance);
  });

  it.each(rows)('$shape: its drawn outline has the same area and walls as its formula', (row) => {
    const { shape, depthIn } = CASES[row.shape ?? ''] as Case;
    const form = { shape, depthMm: depthIn * IN };
    const outline = tinOutline(form);
    expect(outline).not.toBeNull();
    if (outline === null) return;
    near(outlineAreaMm2(outline), planAreaMm2(form) ?? 0, 1e-6);
    near(outlinePerimeterMm(outline), perimeterMm(form) ?? 0, 1e-6);
  });

  it.each(rows)('$shape: slicing the definition gives the same area and volume', (row) => {
    const name = row.shape ?? '';
    const { shape, depthIn, areaAt } = CASES[name] as Case;
    const inside = INSIDE[name];
    expect(inside).toBeDefined();
    if (inside === undefined) return;
    const area = slicedArea(inside);
    const form = { shape, depthMm: depthIn * IN };
    // Rows 1/150 in apart: the midpoint rule is good to about 1e-4 where a corner falls between two rows.
    near((planAreaMm2(form) ?? 0) / IN ** 2, area, 5e-4);
    near((volumeMl(form) * 1000) / IN ** 3, areaAt ? stackedVolume(areaAt, depthIn) : area * depthIn, 5e-4);
    if (areaAt) near((volumeMl(form) * 1000) / IN ** 3, stackedVolume(areaAt, depthIn), source.tolerance);
  });
});
