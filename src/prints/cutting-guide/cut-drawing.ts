/** A cake from above with the knife's lines: edge 0.75 pt, cuts 0.5 pt; rings as circles and spokes. */
import { outlineBounds, outlinePath } from '../../compute/outline/index.ts';
import { circleRing } from '../../compute/outline/rings.ts';
import type { KnifeLine } from '../../compute/portions/knife-lines.ts';
import type { Outline } from '../../domain/outline.ts';
import type { RingsGuide, RowsGuide } from '../../views/portions.types.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep } from '../sheet/surface.ts';
import type { Drawing } from '../sheet/table/types.ts';
import { placed } from '../sheet/tin-drawing.ts';

interface Place {
  x(mm: number): number;
  y(mm: number): number;
}

const lineSteps = (lines: readonly KnifeLine[], { x, y }: Place): PathStep[] =>
  lines.flatMap(({ from, to }): PathStep[] => [
    { op: 'move', x: x(from.x), y: y(from.y) },
    { op: 'line', x: x(to.x), y: y(to.y) },
  ]);

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
      };
      const drawn = (shape: Outline): PathStep[] => placed(outlinePath(shape), scale, place.x(0), place.y(0));
      const stroke = inks.ink;
      const edge = drawn(outline);
      surface.path(edge, { fill: inks.paper, stroke, lineWidthPt: lineWeightPt.cut, evenOdd: true });
      const cuts =
        'lines' in guide
          ? lineSteps(guide.lines, place)
          : [
              ...guide.circlesMm.flatMap((radius) => drawn({ rings: [circleRing(radius)] })),
              ...lineSteps(guide.spokes, place),
            ];
      if (cuts.length > 0) surface.path(cuts, { stroke, lineWidthPt: lineWeightPt.outline });
    },
  };
}
