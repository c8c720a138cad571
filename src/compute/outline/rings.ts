/** Builders for the rings that most tins are made of. All run counter-clockwise. */
import type { Outline, Point, Ring, Segment } from '../../domain/outline.ts';
import { arcOf, FULL_TURN } from './arc.ts';

/** A closed ring of straight lines through the points; null for fewer than two. */
function polygonRing(points: readonly Point[]): Ring | null {
  const [start, ...rest] = points;
  if (start === undefined || rest.length === 0) return null;
  return { start, segments: [...rest, start].map((to): Segment => ({ kind: 'line', to })) };
}

/** An ellipse about a centre, its axes along x and y. */
export function ellipseRing(rx: number, ry: number, centre: Point = { x: 0, y: 0 }): Ring {
  const arc = arcOf({ centre, rx, ry, rotation: 0, startAngle: 0, sweep: FULL_TURN });
  const start = { x: centre.x + rx, y: centre.y };
  return { start, segments: [{ ...arc, to: start }] };
}

/** A circle on the origin. */
export function circleRing(radiusMm: number): Ring {
  return ellipseRing(radiusMm, radiusMm);
}

/** An outline from polygons; rings with fewer than two points are left out. */
export function polygonOutline(...polygons: readonly (readonly Point[])[]): Outline {
  return { rings: polygons.flatMap((points) => polygonRing(points) ?? []) };
}

/** A rectangle on the origin. */
export function rectangleOutline(lengthMm: number, widthMm: number): Outline {
  const x = lengthMm / 2;
  const y = widthMm / 2;
  return polygonOutline([
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ]);
}

/** Corners of a regular polygon on the origin, a flat side at the bottom. */
export function regularCorners(sides: number, circumradiusMm: number): Point[] {
  const first = -Math.PI / 2 - Math.PI / sides;
  return Array.from({ length: sides }, (_, index) => {
    const angle = first + (FULL_TURN * (index + 1)) / sides;
    return { x: circumradiusMm * Math.cos(angle), y: circumradiusMm * Math.sin(angle) };
  });
}
