/** Whether rings make a tin: finite, of a sensible size, with floor inside, walls that do not cross. */
import { evenOddAreaMm2, outlineCrossesItself } from '../compute/outline/crossing.ts';
import {
  centreOutline,
  flattenOutline,
  outlineBounds,
  settleOutline,
  transformOutline,
} from '../compute/outline/index.ts';
import type { Outline, Ring } from '../domain/outline.ts';
import type { Place } from '../domain/problem.ts';
import type { Result } from '../domain/result.ts';
import { fail, succeed } from '../domain/result.ts';
import { errorAt } from './outline-place.ts';

const SMALLEST_MM = 10;
const LARGEST_MM = 1500;
const MOST_LINES = 2000;
/** A drawing without a size of its own is kept at this size until a tin gives one. */
const UNSIZED_MM = 200;

function largerSideMm(outline: Outline): number {
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  return Math.max(maxX - minX, maxY - minY);
}

/** A stray line or dot has no floor and is no wall. */
function hasFloor(ring: Ring): boolean {
  return evenOddAreaMm2(flattenOutline({ rings: [ring] }, 0.1)) > 0.01;
}

const EMPTY = 'The drawing has no shape with any area';
const EMPTY_HINT = 'Draw at least one closed shape; a line alone holds no batter.';

/** The rings as a centred outline, or why they cannot be a tin. */
export function checkedOutline(rings: Ring[], place: Place, sized: boolean): Result<Outline> {
  const side = largerSideMm({ rings });
  if (rings.length === 0 || side === 0) return fail(errorAt(place, 'outline-empty', EMPTY, EMPTY_HINT));
  if (!Number.isFinite(side) || (sized && !(side >= SMALLEST_MM && side <= LARGEST_MM))) {
    const message = `The outline is ${Number.isFinite(side) ? `${Math.round(side)} mm` : 'endlessly'} long`;
    const hint = `Between ${SMALLEST_MM} and ${LARGEST_MM} mm is expected: check width, height and viewBox.`;
    return fail(errorAt(place, 'outline-size-out-of-range', message, hint));
  }
  const outline = sized ? { rings } : transformOutline({ rings }, { scale: UNSIZED_MM / side });
  const lines = flattenOutline(outline, 0.1).reduce((sum, polygon) => sum + polygon.length, 0);
  if (lines > MOST_LINES) {
    const message = `The outline needs ${lines} short lines; at most ${MOST_LINES} are taken`;
    return fail(errorAt(place, 'outline-too-detailed', message, 'Simplify the path in a drawing program.'));
  }
  const kept = centreOutline({ rings: outline.rings.filter(hasFloor) });
  if (kept.rings.length === 0) return fail(errorAt(place, 'outline-empty', EMPTY, EMPTY_HINT));
  if (outlineCrossesItself(kept)) {
    const message = 'Lines of the outline cross, so inside and outside cannot be told apart';
    return fail(
      errorAt(place, 'outline-crosses-itself', message, 'Unite the overlapping shapes into one path.'),
    );
  }
  return succeed(settleOutline(kept));
}
