/**
 * How much floor does a tin have? Green's theorem, A = ½∮(x dy − y dx), exact for lines, elliptical arcs and
 * cubics; holes are taken off by nesting (even-odd), whichever way a ring runs.
 * Valid for rings that do not cross themselves or each other: the SVG reader refuses those that do.
 */
import type { Outline, Ring } from '../../domain/outline.ts';
import { quantiseMm2 } from '../../domain/quantise.ts';
import { ringDepths } from './nesting.ts';
import { type Step, stepsOf } from './walk.ts';

function stepAreaMm2({ from: p, segment }: Step): number {
  const { to: q } = segment;
  if (segment.kind === 'line') return (p.x * q.y - q.x * p.y) / 2;
  if (segment.kind === 'arc') {
    const { rx, ry, sweep, centre } = segment;
    return (rx * ry * sweep + centre.x * (q.y - p.y) - centre.y * (q.x - p.x)) / 2;
  }
  const { c1: a, c2: b } = segment;
  return (
    (p.x * (6 * a.y + 3 * b.y + q.y) +
      3 * (a.x * (b.y + q.y - 2 * p.y) - b.x * (p.y + a.y - 2 * q.y)) -
      q.x * (p.y + 3 * a.y + 6 * b.y)) /
    20
  );
}

/** Area inside one ring, mm², not quantised: positive when it runs counter-clockwise. */
function ringSignedAreaMm2(ring: Ring): number {
  return stepsOf(ring).reduce((sum, step) => sum + stepAreaMm2(step), 0);
}

/** Area of the outline before quantising, for computations that go on with it. */
export function exactOutlineAreaMm2(outline: Outline): number {
  const depths = ringDepths(outline);
  return outline.rings.reduce((sum, ring, index) => {
    const area = Math.abs(ringSignedAreaMm2(ring));
    return sum + ((depths[index] ?? 0) % 2 === 0 ? area : -area);
  }, 0);
}

/** Area by the even-odd rule, mm²; 0 for an outline without rings. A ring of 8 in about a 3 in tube: 27 868.91. */
export function outlineAreaMm2(outline: Outline): number {
  return quantiseMm2(exactOutlineAreaMm2(outline));
}
