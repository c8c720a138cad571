import { describe, expect, it } from 'vitest';
import { cakePlan } from '../../../src/compute/finishes/cake-plan.ts';
import { coatMl } from '../../../src/compute/finishes/coat.ts';
import { offsetAreaMm2 } from '../../../src/compute/finishes/offset-area.ts';
import type { CakePlan } from '../../../src/compute/finishes/plan.ts';
import type { TinForm } from '../../../src/domain/tin.ts';

const tin = (shape: TinForm['shape']): TinForm => ({ shape, depthMm: 75 });
const plan = (shape: TinForm['shape']): CakePlan => {
  const found = cakePlan(tin(shape));
  if (found === null) throw new Error('no plan');
  return found;
};

/** Area within t of the shape, by counting the cells of a grid: nothing shared with the code under test. */
function countedArea(cake: CakePlan, tMm: number, cellMm: number): number {
  const edges = cake.rings.flatMap((ring) =>
    ring.map((a, i) => [a, ring[(i + 1) % ring.length] ?? a] as const),
  );
  const half = Math.max(cake.widthMm, cake.heightMm) / 2 + tMm + cellMm;
  let cells = 0;
  for (let x = -half; x < half; x += cellMm) {
    for (let y = -half; y < half; y += cellMm) {
      let inside = false;
      let near = Number.POSITIVE_INFINITY;
      for (const [a, b] of edges) {
        if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
        const lx = b.x - a.x;
        const ly = b.y - a.y;
        const along = Math.min(1, Math.max(0, ((x - a.x) * lx + (y - a.y) * ly) / (lx * lx + ly * ly)));
        near = Math.min(near, (a.x + along * lx - x) ** 2 + (a.y + along * ly - y) ** 2);
      }
      if (inside || near <= tMm * tMm) cells += 1;
    }
  }
  return cells * cellMm * cellMm;
}

describe('cakePlan(tin)', () => {
  it('knows which plans are convex, and their corners', () => {
    expect(plan({ kind: 'round', acrossMm: 200 })).toMatchObject({ convex: true, corners: [] });
    expect(plan({ kind: 'square', sideMm: 200 }).corners).toHaveLength(4);
    expect(plan({ kind: 'hexagon', acrossMm: 200, measured: 'flats' }).corners).toHaveLength(6);
    expect(plan({ kind: 'oval', lengthMm: 250, widthMm: 180 })).toMatchObject({ convex: true, corners: [] });
    expect(plan({ kind: 'heart', acrossMm: 200, measured: 'across' }).convex).toBe(false);
    expect(plan({ kind: 'petal', petals: 6, acrossMm: 200 }).convex).toBe(false);
    expect(plan({ kind: 'ring', acrossMm: 250, tubeMm: 70 }).convex).toBe(false);
    expect(cakePlan(tin({ kind: 'measured', volumeMl: 1800 }))).toBeNull();
  });

  it.each([
    ['heart', plan({ kind: 'heart', acrossMm: 200, measured: 'across' })],
    ['petal', plan({ kind: 'petal', petals: 6, acrossMm: 200 })],
    ['ring', plan({ kind: 'ring', acrossMm: 220, tubeMm: 60 })],
    ['oval', plan({ kind: 'oval', lengthMm: 220, widthMm: 160 })],
  ])(
    'grows a %s as counted on a grid',
    (_, cake) => {
      expect(Math.abs(offsetAreaMm2(cake, 8) / countedArea(cake, 8, 0.9) - 1)).toBeLessThan(0.003);
    },
    120_000,
  );

  it('coats a ring inside and out: formula for two concentric walls', () => {
    const cake = plan({ kind: 'ring', acrossMm: 250, tubeMm: 70 });
    const grown = Math.PI * (133 ** 2 - 27 ** 2);
    const expected = (grown * 108 - cake.areaMm2 * 100) / 1000;
    expect(Math.abs(coatMl(cake, 100, 8) / expected - 1)).toBeLessThan(1e-3);
  });
});
