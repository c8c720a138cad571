/** A cake from above with the knife's lines: edge 0.75 pt, cuts 0.5 pt; rings as circles and spokes. */
import { outlineBounds, outlinePath } from '../../compute/outline/index.ts';
import type { KnifeLine } from '../../compute/portions/knife-lines.ts';
import type { Outline } from '../../domain/outline.ts';
import type { RingsGuide, RowsGuide } from '../../views/portions.types.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep } from '../sheet/surface.ts';
import type { Drawing } from '../sheet/table/types.ts';

/** Handles of a quarter circle as a cubic: 4 (√2 − 1) ÷ 3 of the radius. */
const QUARTER = 0.5522847498;

interface Place {
  x(mm: number): number;
  y(mm: number): number;
  scale: number;
}

function outlineSteps(outline: Outline, { x, y }: Place): PathStep[] {
  // The path has y down already; the place turns y up into y down, so that it is turned back here.
  return outlinePath(outline).map((step): PathStep => {
    if (step.op === 'close') return step;
    if (step.op !== 'cubic') return { op: step.op, x: x(step.x), y: y(-step.y) };
    const handles = { x1: x(step.x1), y1: y(-step.y1), x2: x(step.x2), y2: y(-step.y2) };
    return { op: 'cubic', ...handles, x: x(step.x), y: y(-step.y) };
  });
}

const lineSteps = (lines: readonly KnifeLine[], { x, y }: Place): PathStep[] =>
  lines.flatMap(({ from, to }): PathStep[] => [
    { op: 'move', x: x(from.x), y: y(from.y) },
    { op: 'line', x: x(to.x), y: y(to.y) },
  ]);

function circleSteps(radiusMm: number, { x, y }: Place): PathStep[] {
  const [r, k] = [radiusMm, radiusMm * QUARTER];
  const quarter = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number): PathStep => ({
    op: 'cubic',
    x1: x(x1),
    y1: y(y1),
    x2: x(x2),
    y2: y(y2),
    x: x(toX),
    y: y(toY),
  });
  return [
    { op: 'move', x: x(r), y: y(0) },
    quarter(r, k, k, r, 0, r),
    quarter(-k, r, -r, k, -r, 0),
    quarter(-r, -k, -k, -r, 0, -r),
    quarter(k, -r, r, -k, r, 0),
    { op: 'close' },
  ];
}

/** The cake of an outline cut as a guide says, at 1 : scale. */
export function cutDrawing(
  outline: Outline,
  guide: RowsGuide | RingsGuide,
  scale: number,
  { inks }: SheetContext,
): Drawing {
  const bounds = outlineBounds(outline);
  const widthMm = (bounds.maxX - bounds.minX) / scale;
  const heightMm = (bounds.maxY - bounds.minY) / scale;
  return {
    widthMm,
    heightMm,
    alt: guide.alt,
    draw(surface, xMm, yMm) {
      const place: Place = {
        x: (mm) => xMm + (mm - bounds.minX) / scale,
        y: (mm) => yMm + (bounds.maxY - mm) / scale,
        scale,
      };
      const stroke = inks.ink;
      const edge = outlineSteps(outline, place);
      surface.path(edge, { fill: inks.paper, stroke, lineWidthPt: lineWeightPt.cut, evenOdd: true });
      const cuts =
        'lines' in guide
          ? lineSteps(guide.lines, place)
          : [
              ...guide.circlesMm.flatMap((radius) => circleSteps(radius, place)),
              ...lineSteps(guide.spokes, place),
            ];
      if (cuts.length > 0) surface.path(cuts, { stroke, lineWidthPt: lineWeightPt.outline });
    },
  };
}
