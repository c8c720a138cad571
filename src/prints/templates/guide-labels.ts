/** Names of the guides and edges that a part shows. */
import type { TemplateGuide } from '../../views/lining-template.types.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { type Curve, clippedCurves, curvesOf, type Spot, spotOn, spotsAlong, type Window } from './curves.ts';
import type { FreePlaces } from './free-places.ts';
import { type Label, setLabel } from './set-label.ts';
import { templateType } from './template-type.ts';

/** Less than this of a line is not worth naming. */
const SHORTEST_MM = 10;
/** A name stands this near its line, middle to middle. */
const ASIDE_MM = 6;
/** From a mark's end to its name. */
const MARK_GAP_MM = 1.5;

const spotsOf = (curves: readonly Curve[]): Spot[] =>
  curves.flatMap((curve) => [curve.from, ...spotsAlong(curve, 2)]);

function lengthMm(curves: readonly Curve[]): number {
  return curves.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
}

/** A mark's name stands beyond its end, other names at the middle of their line. */
function nearFor(
  kind: TemplateGuide['kind'],
  curves: readonly Curve[],
  upright: boolean,
  nameMm: number,
): Spot {
  const spots = spotsOf(curves);
  const middle = curves[Math.floor(curves.length / 2)];
  if (kind === 'baked' && middle !== undefined) {
    const end = spotOn(middle, 1);
    const along = MARK_GAP_MM + nameMm / 2;
    return upright ? { x: end.x, y: end.y + along } : { x: end.x + along, y: end.y };
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
  const first = curves[0]?.to ?? to;
  const [across, down] =
    kind === 'baked' ? [first.x - from.x, first.y - from.y] : [to.x - from.x, to.y - from.y];
  const upright = !closed && Math.abs(down) > Math.abs(across);
  const { font, sizePt } = templateType.guide;
  const near = nearFor(kind, curves, upright, context.metrics.widthMm(text, font, sizePt));
  const level = Math.min(Math.abs(across), Math.abs(down)) < 1e-6 && curves.every((curve) => curve.straight);
  const asideMm = level && kind !== 'baked' ? ASIDE_MM : undefined;
  return setLabel(text, templateType.guide, upright ? 270 : 0, near, 0.5, places, context, asideMm) ?? [];
}

type Labelled = (
  guides: readonly TemplateGuide[],
  window: Window,
  places: FreePlaces,
  context: SheetContext,
) => Label[];

/** Names of short marks: they must stand close, so they are set before the part's own words. */
export const markLabels: Labelled = (guides, window, places, context) =>
  guides.filter(({ kind }) => kind === 'baked').flatMap((guide) => labelOf(guide, window, places, context));

/** Names of lines, which have room along them. */
export const lineLabels: Labelled = (guides, window, places, context) =>
  guides.filter(({ kind }) => kind !== 'baked').flatMap((guide) => labelOf(guide, window, places, context));
