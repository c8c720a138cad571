/**
 * Where may the middle of a tin not lie? Around a tin that stands already: within the summed half widths, grown by
 * the summed radii and the air between two tins. The edge of that region is where the two just have their air:
 * four straight lines and four quarter circles. Good places for the next tin lie where two such edges, or an edge
 * and a wall, meet.
 */
import type { Point } from '../../domain/outline.ts';
import type { Footprint } from './footprint.ts';

/** A rounded rectangle about a point, mm. */
export interface KeepOut {
  at: Point;
  halfX: number;
  halfY: number;
  round: number;
}

/** Slack for sums of decimals, far below a hair's breadth. */
const SLACK_MM = 1e-6;

export const keepOut = (at: Point, standing: Footprint, coming: Footprint, airMm: number): KeepOut => ({
  at,
  halfX: standing.halfXMm + coming.halfXMm,
  halfY: standing.halfYMm + coming.halfYMm,
  round: standing.roundMm + coming.roundMm + airMm,
});

/** Whether a point lies truly inside, nearer than the air allows. */
export function isKeptOut({ at, halfX, halfY, round }: KeepOut, { x, y }: Point): boolean {
  const beyondX = Math.max(0, Math.abs(x - at.x) - halfX);
  const beyondY = Math.max(0, Math.abs(y - at.y) - halfY);
  return Math.hypot(beyondX, beyondY) < round - SLACK_MM;
}

/** Heights at which the edge passes a given x, or widths at a given y with the axes swapped. */
function crossingsAt(across: number, half: number, otherHalf: number, round: number): number[] {
  const beyond = Math.max(0, Math.abs(across) - half);
  if (beyond > round) return [];
  const reach = otherHalf + Math.sqrt(round * round - beyond * beyond);
  return [reach, -reach];
}

/** Where the edge meets the upright line at x. */
export const onUpright = (zone: KeepOut, x: number): Point[] =>
  crossingsAt(x - zone.at.x, zone.halfX, zone.halfY, zone.round).map((y) => ({ x, y: zone.at.y + y }));

/** Where the edge meets the level line at y. */
export const onLevel = (zone: KeepOut, y: number): Point[] =>
  crossingsAt(y - zone.at.y, zone.halfY, zone.halfX, zone.round).map((x) => ({ x: zone.at.x + x, y }));

const SIGNS = [-1, 1] as const;

const corners = ({ at, halfX, halfY }: KeepOut): Point[] =>
  SIGNS.flatMap((x) => SIGNS.map((y) => ({ x: at.x + x * halfX, y: at.y + y * halfY })));

function circlesMeet(a: Point, aRound: number, b: Point, bRound: number): Point[] {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const apart = Math.hypot(dx, dy);
  if (apart < SLACK_MM || apart > aRound + bRound || apart < Math.abs(aRound - bRound)) return [];
  const along = (apart * apart + aRound * aRound - bRound * bRound) / (2 * apart);
  const aside = Math.sqrt(Math.max(0, aRound * aRound - along * along));
  const foot = { x: a.x + (dx * along) / apart, y: a.y + (dy * along) / apart };
  return SIGNS.map((side) => ({
    x: foot.x - (side * dy * aside) / apart,
    y: foot.y + (side * dx * aside) / apart,
  }));
}

/** Where two edges meet: straight sides of each on the other, and corner on corner. */
export function edgesMeet(a: KeepOut, b: KeepOut): Point[] {
  const sides = [
    [a, b],
    [b, a],
  ] as const;
  const straight = sides.flatMap(([one, other]) =>
    SIGNS.flatMap((sign) => [
      ...onUpright(other, one.at.x + sign * (one.halfX + one.round)),
      ...onLevel(other, one.at.y + sign * (one.halfY + one.round)),
    ]),
  );
  const round = corners(a).flatMap((from) =>
    corners(b).flatMap((to) => circlesMeet(from, a.round, to, b.round)),
  );
  return [...straight, ...round];
}
