/** A small plan of a piece in its parts: where this part belongs, and which sheets lie beside it. Not to scale. */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { curvesOf, type Spot, stepsOfCurves, type Window } from './curves.ts';
import type { LaidPiece, Part } from './cut-into-parts.ts';
import { straightLine } from './marks.ts';
import { templateLines, templateType } from './template-type.ts';

export interface AssemblyMap {
  widthMm: number;
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

const LEAST_MM = 6;
/** Names need this much of a part. */
const LEAST_CELL_MM = 5.6;
/** A map may grow this far beyond its field for the sake of names; then it goes without. */
const MOST_GROWTH = 2;

type Place = (spot: Spot) => Spot;

const mapped = (steps: PathStep[], place: Place): PathStep[] =>
  steps.map((step): PathStep => {
    if (step.op === 'close') return step;
    const { x, y } = place(step);
    if (step.op !== 'cubic') return { op: step.op, x, y };
    const c1 = place({ x: step.x1, y: step.y1 });
    const c2 = place({ x: step.x2, y: step.y2 });
    return { op: 'cubic', x1: c1.x, y1: c1.y, x2: c2.x, y2: c2.y, x, y };
  });

const middle = ({ minX, maxX, minY, maxY }: Window): Spot => ({ x: (minX + maxX) / 2, y: (minY + maxY) / 2 });

/** A map within the field; strips lie on their long side however they lie on the sheets. */
export function assemblyMap(
  laid: LaidPiece,
  here: Part | null,
  field: { widthMm: number; heightMm: number },
  context: SheetContext,
): AssemblyMap {
  const { piece, columns, rows } = laid;
  const lies = laid.turned && columns === 1;
  const natural: Place = ({ x, y }) => (lies ? { x: y, y: -x } : { x, y });
  const [acrossMm, downMm] = lies ? [piece.heightMm, piece.widthMm] : [piece.widthMm, piece.heightMm];
  const [cellsAcross, cellsDown] = lies ? [rows, columns] : [columns, rows];
  const scale = Math.min(field.widthMm / acrossMm, field.heightMm / downMm);
  const named =
    columns * rows > 1 &&
    cellsAcross * LEAST_CELL_MM <= field.widthMm * MOST_GROWTH &&
    cellsDown * LEAST_MM <= field.heightMm * MOST_GROWTH;
  const widthMm = Math.max(acrossMm * scale, named ? cellsAcross * LEAST_CELL_MM : LEAST_MM);
  const heightMm = Math.max(downMm * scale, named ? cellsDown * LEAST_MM : LEAST_MM / 2);
  const place: Place = (spot) => {
    const { x, y } = natural(spot);
    return { x: (x / acrossMm + 0.5) * widthMm, y: (y / downMm + 0.5) * heightMm };
  };
  const outline = mapped(stepsOfCurves(curvesOf(piece.cut), 0, 0), place);
  const joints = new Set(laid.parts.flatMap((part) => part.joints));
  const lines = [...joints].flatMap(({ a, b }) => straightLine(place(a), place(b)));
  return {
    widthMm,
    heightMm,
    draw(surface, xMm, yMm) {
      const at = (steps: PathStep[]) => mapped(steps, ({ x, y }) => ({ x: x + xMm, y: y + yMm }));
      const stroke = context.inks.ink;
      surface.path(at(outline), { stroke, ...templateLines.mapHere });
      if (lines.length > 0) surface.path(at(lines), { stroke, ...templateLines.map });
      for (const part of named ? laid.parts : []) {
        const spot = place(middle(part.window));
        const { font, sizePt } = part === here ? templateType.mapHere : templateType.map;
        const width = context.metrics.widthMm(part.name, font, sizePt);
        const cap = context.metrics.capHeightMm(font, sizePt);
        const text = { text: part.name, xMm: xMm + spot.x - width / 2, yMm: yMm + spot.y + cap / 2 };
        if (part === here) drawRing(surface, xMm + spot.x, yMm + spot.y, width, cap, stroke);
        surface.text({ ...text, font, sizePt, colour: stroke });
      }
    },
  };
}

/** A frame round the name of this part: shape beside weight. */
function drawRing(surface: Surface, x: number, y: number, width: number, cap: number, stroke: string): void {
  const [dx, dy] = [width / 2 + 0.9, cap / 2 + 0.9];
  const steps: PathStep[] = [
    { op: 'move', x: x - dx, y: y - dy },
    { op: 'line', x: x + dx, y: y - dy },
    { op: 'line', x: x + dx, y: y + dy },
    { op: 'line', x: x - dx, y: y + dy },
    { op: 'close' },
  ];
  surface.path(steps, { stroke, ...templateLines.mapHere });
}
