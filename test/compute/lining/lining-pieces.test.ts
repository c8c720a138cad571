/** Papers that fit: worked examples and, over random tins, clearance to every wall and lengths along every edge. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LiningPiece, liningPieces } from '../../../src/compute/lining/index.ts';
import { flattenOutline, outlineAreaMm2, outlineBounds } from '../../../src/compute/outline/index.ts';
import { perimeterMm, tinBaseOutline, tinOutline } from '../../../src/compute/shapes/index.ts';
import type { Outline, Point } from '../../../src/domain/outline.ts';
import { SHAPE_KINDS } from '../../../src/domain/shape.ts';
import { SHAPE_OF_KIND } from '../../samples/shapes.ts';
import { TIN_OF_KIND } from '../../samples/tins.ts';

const SETTINGS = { clearanceMm: 2, overlapMm: 30, collarMm: 20 };

type Kind = LiningPiece['kind'];
function pieces<K extends Kind>(list: readonly LiningPiece[], kind: K) {
  return list.filter((piece): piece is Extract<LiningPiece, { kind: K }> => piece.kind === kind);
}

function distanceToEdge(p: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.sqrt((p.x - a.x - t * dx) ** 2 + (p.y - a.y - t * dy) ** 2);
}

function wallsOf(outline: Outline): [Point, Point][] {
  return flattenOutline(outline, 0.02).flatMap((ring) =>
    ring.map((a, k): [Point, Point] => [a, ring[(k + 1) % ring.length] ?? a]),
  );
}

describe('worked examples', () => {
  it('an 8 in round, 3 in deep: a disc of 199.2 mm and a strip of 668.4 × 96.2 mm', () => {
    const list = liningPieces(TIN_OF_KIND.round, SETTINGS);
    const [base] = pieces(list, 'base');
    expect(base).toMatchObject({ count: 1, method: 'exact', clearanceMm: 2 });
    expect(base === undefined ? 0 : outlineBounds(base.outline).maxX).toBeCloseTo(99.6, 6);
    expect(pieces(list, 'strip')).toEqual([
      { kind: 'strip', wall: 'side', count: 1, lengthMm: 668.372, heightMm: 96.2 },
    ]);
  });

  it('a ring: an annulus, a strip for the side and one for the tube', () => {
    const list = liningPieces(TIN_OF_KIND.ring, SETTINGS);
    const [base] = pieces(list, 'base');
    // π/4·(250² − 80.2²)
    expect(base === undefined ? 0 : outlineAreaMm2(base.outline)).toBeCloseTo(44035.67, 1);
    expect(pieces(list, 'strip').map(({ wall, lengthMm }) => [wall, lengthMm])).toEqual([
      ['side', 827.965],
      ['tube', 269.389],
    ]);
  });

  it('a long octagon, 12 × 9 in and 3 in on the slant: 4 mm less each way, 1.657 mm less on every wall', () => {
    const list = liningPieces(TIN_OF_KIND['long-octagon'], SETTINGS);
    const [base] = pieces(list, 'base');
    expect(base).toMatchObject({ count: 1, method: 'exact' });
    const bounds = base === undefined ? null : outlineBounds(base.outline);
    expect([bounds?.maxX, bounds?.maxY]).toEqual([150.4, 112.3]);
    // 300.8 × 224.6 − (76.2 − 4·tan 22½°)²
    expect(base === undefined ? 0 : outlineAreaMm2(base.outline)).toBeCloseTo(62003.0, 1);
    // 2 × (304.8 + 228.6) − 4 × (√2 − 1) × 76.2, and the overlap
    expect(pieces(list, 'strip').map(({ wall, lengthMm }) => [wall, lengthMm])).toEqual([['side', 970.548]]);
  });

  it('a loaf: a base and two pairs of trapezia that meet the base and lean to the rim', () => {
    const panels = pieces(liningPieces(TIN_OF_KIND.loaf, { ...SETTINGS, collarMm: 0 }), 'panel');
    expect(panels.map(({ count, footMm, headMm }) => [count, footMm, headMm])).toEqual([
      [2, 203.2, 228.6],
      [2, 101.6, 127],
    ]);
    // √(69.85² + 12.7²)
    for (const { heightMm } of panels) expect(heightMm).toBeCloseTo(70.995, 3);
  });

  it('a drawn tin with a hole: a strip for its wall and one for the hole', () => {
    const list = liningPieces(TIN_OF_KIND.outline, SETTINGS);
    expect(pieces(list, 'strip').map(({ wall, lengthMm }) => [wall, lengthMm])).toEqual([
      ['side', 510],
      ['tube', 270],
    ]);
    const [base] = pieces(list, 'base');
    // Round the hole's corners the paper keeps its distance: a square of 60, a band of 2 and four quarter discs.
    const hole = 60 ** 2 + 4 * 60 * 2 + Math.PI * 2 ** 2;
    const area = base === undefined ? 0 : outlineAreaMm2(base.outline);
    expect(Math.abs(area - (116 ** 2 - hole))).toBeLessThan(0.3);
  });

  it('a dome and a tin measured by water are greased and floured', () => {
    expect(liningPieces(TIN_OF_KIND.dome, SETTINGS)).toEqual([
      { kind: 'grease-and-flour', reason: 'curved-wall' },
    ]);
    expect(liningPieces(TIN_OF_KIND.measured, SETTINGS)).toEqual([
      { kind: 'grease-and-flour', reason: 'unknown-shape' },
    ]);
  });

  it('a base too small for the clearance is traced, and a negative clearance is refused', () => {
    expect(liningPieces(TIN_OF_KIND.square, { ...SETTINGS, clearanceMm: 150 })[0]).toEqual({
      kind: 'trace-the-base',
    });
    expect(liningPieces(TIN_OF_KIND.heart, { ...SETTINGS, clearanceMm: 150 })[0]).toEqual({
      kind: 'trace-the-base',
    });
    // A clearance of 30 mm takes 24.9 mm off every wall.
    const slim = { kind: 'long-octagon' as const, lengthMm: 300, widthMm: 200, slantMm: 20 };
    expect(liningPieces({ shape: slim, depthMm: 76 }, { ...SETTINGS, clearanceMm: 30 })[0]).toEqual({
      kind: 'trace-the-base',
    });
    expect(() => liningPieces(TIN_OF_KIND.round, { ...SETTINGS, clearanceMm: -1 })).toThrow(RangeError);
  });
});

describe('over random tins', () => {
  const depth = fc.double({ min: 20, max: 120, noNaN: true });
  const exact = ['round', 'square', 'rectangle', 'loaf', 'hexagon', 'octagon', 'long-octagon', 'ring'];

  it.each(SHAPE_KINDS.filter((kind) => kind !== 'dome' && kind !== 'measured'))(
    'the base paper of a %s tin keeps its clearance from every wall, and not much more',
    (kind) => {
      fc.assert(
        fc.property(SHAPE_OF_KIND[kind], depth, (shape, depthMm) => {
          const form = { shape, depthMm };
          const outline = tinBaseOutline(form) ?? tinOutline(form);
          const [base] = pieces(liningPieces(form, SETTINGS), 'base');
          if (outline === null || base === undefined) throw new Error('no base paper');
          expect(base.method).toBe(exact.includes(kind) ? 'exact' : 'followed');
          const walls = wallsOf(outline);
          const looks = wallsOf(base.outline).flatMap(([a, b]) =>
            [0, 0.25, 0.5, 0.75].map((t) => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t })),
          );
          const gaps = looks.map((p) => Math.min(...walls.map(([a, b]) => distanceToEdge(p, a, b))));
          expect(Math.min(...gaps)).toBeGreaterThan(2 - 0.07);
          expect(Math.min(...gaps)).toBeLessThan(2 + 0.05);
          const walk = wallsOf(outline).reduce((sum, [a, b]) => sum + distanceToEdge(a, b, b), 0);
          const lost = outlineAreaMm2(outline) - outlineAreaMm2(base.outline);
          // Twice the clearance along every wall would be too much; sharp corners cost a little more.
          expect(lost).toBeGreaterThan(1.7 * walk);
          expect(lost).toBeLessThan(2.6 * walk);
        }),
        { numRuns: 100, seed: 20261101 },
      );
    },
  );

  it('an unrolled sloping wall has the rim and the base along its two arcs, and the slant between', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 80, max: 400, noNaN: true }),
        fc.double({ min: 0.5, max: 0.99, noNaN: true }),
        depth,
        (acrossMm, share, depthMm) => {
          const shape = { kind: 'round' as const, acrossMm, baseAcrossMm: acrossMm * share };
          const none = { clearanceMm: 0, overlapMm: 0, collarMm: 0 };
          const [sector] = pieces(liningPieces({ shape, depthMm }, none), 'sector');
          if (sector === undefined) throw new Error('no sector');
          const { innerRadiusMm, outerRadiusMm, angleRad } = sector;
          const slant = Math.sqrt(depthMm ** 2 + (acrossMm * (1 - share)) ** 2 / 4);
          expect(Math.abs(outerRadiusMm - innerRadiusMm - slant)).toBeLessThan(0.002);
          // The angle is kept to a millionth of a radian, which a long radius turns into hundredths of a mm.
          const allowed = 1e-6 * outerRadiusMm + 0.01;
          expect(Math.abs(outerRadiusMm * angleRad - Math.PI * acrossMm)).toBeLessThan(allowed);
          expect(Math.abs(innerRadiusMm * angleRad - Math.PI * acrossMm * share)).toBeLessThan(allowed);
        },
      ),
      { numRuns: 1000, seed: 20261101 },
    );
  });

  it('strips of upright tins are as long as the walls and the overlaps together', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHAPE_KINDS).chain((kind) => SHAPE_OF_KIND[kind]),
        depth,
        (shape, depthMm) => {
          const strips = pieces(liningPieces({ shape, depthMm }, { ...SETTINGS, clearanceMm: 0 }), 'strip');
          const upright = shape.kind !== 'ring' || strips.length === 2;
          if (strips.length === 0 || !upright) return;
          const length = strips.reduce((sum, { lengthMm }) => sum + lengthMm - SETTINGS.overlapMm, 0);
          expect(Math.abs(length - (perimeterMm({ shape, depthMm }) ?? 0))).toBeLessThan(0.005);
          for (const { heightMm } of strips) expect(Math.abs(heightMm - depthMm - 20)).toBeLessThan(0.001);
        },
      ),
      { numRuns: 1000, seed: 20261101 },
    );
  });
});
