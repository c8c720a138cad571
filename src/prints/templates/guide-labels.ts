/** Names of the guides and edges that a part shows. */
import type { TemplateGuide } from '../../views/lining-template.types.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { type Curve, clippedCurves, curvesOf, type Spot, spotOn, spotsAlong, type Window } from './curves.ts';
import type { FreePlaces } from './free-places.ts';
import { type Label, setLabel } from './set-label.ts';
import { templateType } from './template-type.ts';

/** Less than this of a line is not worth naming. */
const SHORTEST_MM = 10;

const spotsOf = (curves: readonly Curve[]): Spot[] =>
  curves.flatMap((curve) => [curve.from, ...spotsAlong(curve, 2)]);

function lengthMm(curves: readonly Curve[]): number {
  return curves.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
}

/** A mark's name stands beyond its end, other names at the middle of their line. */
function nearFor(kind: TemplateGuide['kind'], curves: readonly Curve[], upright: boolean): Spot {
  const spots = spotsOf(curves);
  const last = curves.at(-1);
  if (kind === 'baked' && last !== undefined) {
    const end = spotOn(last, 1);
    return upright ? { x: end.x, y: end.y + 14 } : { x: end.x + 14, y: end.y };
  }
  return spots[Math.floor(spots.length / 2)] ?? { x: 0, y: 0 };
}

function labelOf(
  { kind, steps, text }: TemplateGuide,
  window: Window,
  places: FreePlaces,
  context: SheetContext,
) {
  const curves = clippedCurves(curvesOf(steps), window);
  if (lengthMm(curves) < SHORTEST_MM) return [];
  const from = curves[0]?.from ?? { x: 0, y: 0 };
  const to = curves.at(-1)?.to ?? from;
  const closed = Math.hypot(to.x - from.x, to.y - from.y) < 1;
  const upright = !closed && Math.abs(to.y - from.y) > Math.abs(to.x - from.x);
  const near = nearFor(kind, curves, upright);
  return setLabel(text, templateType.guide, upright ? 270 : 0, near, 0.5, places, context) ?? [];
}

/** Marks first: their names must stand close. */
export function guideLabels(
  guides: readonly TemplateGuide[],
  window: Window,
  places: FreePlaces,
  context: SheetContext,
): Label[] {
  const marks = guides.filter(({ kind }) => kind === 'baked');
  const others = guides.filter(({ kind }) => kind !== 'baked');
  return [...marks, ...others].flatMap((guide) => labelOf(guide, window, places, context));
}
