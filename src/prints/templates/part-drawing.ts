/** One part of a piece at true size: its lines, its marks, and words set where they cross no line. */
import type { TemplateGuide } from '../../views/lining-template.types.ts';
import type { TemplateLabels } from '../../wording/lining-template/sheet-words.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Paint, PathStep, Surface } from '../sheet/surface.ts';
import { type Curve, clippedCurves, curvesOf, type Spot, stepsOfCurves, type Window } from './curves.ts';
import type { LaidPiece, Part } from './cut-into-parts.ts';
import { type FreePlaces, freePlaces } from './free-places.ts';
import { lineLabels, markLabels } from './guide-labels.ts';
import { centreCross, registrationCross, straightLine } from './marks.ts';
import { type Legend, legendChoices } from './part-legend.ts';
import { type Label, setLabel } from './set-label.ts';
import { templateLines, templateType } from './template-type.ts';

export interface PartDrawing {
  widthMm: number;
  heightMm: number;
  alt: string;
  /** Words that found no room on the part and stand below it. */
  beside: Legend | null;
  /** Top left corner of the part's window at (x, y). */
  draw(surface: Surface, xMm: number, yMm: number): void;
}

interface Stroke {
  curves: Curve[];
  paint: Omit<Paint, 'stroke'>;
}

/** Words that found no room on a part stand so far below it. */
export const BESIDE_GAP_MM = 3;
/** Guides that are marks, not edges. */
const SOLID: readonly TemplateGuide['kind'][] = ['baked', 'support', 'hole', 'back'];
const CENTRE: Spot = { x: 0, y: 0 };
const EXTRA_MM = 1;

const grown = ({ minX, minY, maxX, maxY }: Window, mm: number): Window => ({
  minX: minX - mm,
  minY: minY - mm,
  maxX: maxX + mm,
  maxY: maxY + mm,
});

function strokesOf({ piece }: LaidPiece, { window, joints }: Part): Stroke[] {
  const inWindow = (steps: PathStep[]) => clippedCurves(curvesOf(steps), window);
  const whole = (steps: PathStep[]) => clippedCurves(curvesOf(steps), grown(window, EXTRA_MM));
  const guides = piece.guides.filter(({ drawn }) => drawn);
  const strokes: Stroke[] = [
    { curves: inWindow(piece.cut), paint: templateLines.cut },
    ...guides.map(({ kind, steps }) => ({
      curves: inWindow(steps),
      paint: SOLID.includes(kind) ? templateLines.tick : templateLines.guide,
    })),
    ...joints.map(({ a, b }) => ({ curves: inWindow(straightLine(a, b)), paint: templateLines.joint })),
    {
      curves: joints.flatMap(({ crosses }) => crosses.flatMap((at) => inWindow(registrationCross(at)))),
      paint: templateLines.mark,
    },
    { curves: piece.centreText === null ? [] : whole(centreCross(CENTRE)), paint: templateLines.tick },
  ];
  return strokes.filter(({ curves }) => curves.length > 0);
}

const isIn = ({ minX, minY, maxX, maxY }: Window, { x, y }: Spot): boolean =>
  x > minX && x < maxX && y > minY && y < maxY;

function jointLabels({ joints, window }: Part, places: FreePlaces, context: SheetContext): Label[] {
  const middle = { x: (window.minX + window.maxX) / 2, y: (window.minY + window.maxY) / 2 };
  return joints.flatMap(({ name, a, b }) => {
    const upright = a.x === b.x;
    const low = upright ? Math.max(a.y, window.minY) : Math.max(a.x, window.minX);
    const high = upright ? Math.min(b.y, window.maxY) : Math.min(b.x, window.maxX);
    const along = (low + high) / 2;
    const inwards = (at: number, towards: number, mm: number) => at + Math.sign(towards - at) * mm;
    const near = upright
      ? { x: inwards(a.x, middle.x, 9), y: along }
      : { x: along, y: inwards(a.y, middle.y, 4) };
    return setLabel(name, templateType.joint, 0, near, 0.6, places, context) ?? [];
  });
}

function centreLabel(
  { piece }: LaidPiece,
  { window }: Part,
  places: FreePlaces,
  context: SheetContext,
): Label[] {
  if (piece.centreText === null || !isIn(window, CENTRE)) return [];
  const near = { x: 9, y: 4 };
  return [setLabel(piece.centreText, templateType.guide, 0, near, 0.6, places, context) ?? []].flat();
}

/**
 * The middle of the part's window, liked less outside the paper that is cut out. No box where none found room: then
 * the widest that is no wider than the part stands below it, else the narrowest.
 */
function placeLegend(laid: LaidPiece, { window }: Part, places: FreePlaces, choices: Iterable<Legend>) {
  const near = { x: (window.minX + window.maxX) / 2, y: (window.minY + window.maxY) / 2 };
  const dislikeMm = (middle: Spot) => (laid.region.has(middle) ? 0 : 60);
  let below: Legend | null = null;
  let last: Legend | null = null;
  for (const legend of choices) {
    const box = places.take({ ...legend, near, clearMm: 1.5, dislikeMm });
    if (box !== null) return { legend, box };
    if (legend.widthMm <= window.maxX - window.minX) below ??= legend;
    last = legend;
  }
  return { legend: below ?? last, box: null };
}

/** Sets everything on a part; nothing is drawn yet. */
export function partDrawing(
  laid: LaidPiece,
  part: Part,
  tinName: string,
  labels: TemplateLabels,
  context: SheetContext,
): PartDrawing {
  const { window } = part;
  const strokes = strokesOf(laid, part);
  const places = freePlaces(
    strokes.flatMap(({ curves }) => curves),
    window,
  );
  const before = [
    ...jointLabels(part, places, context),
    ...centreLabel(laid, part, places, context),
    ...markLabels(laid.piece.guides, window, places, context),
  ];
  const choices = legendChoices(laid, part, tinName, labels, context);
  const { legend, box } = placeLegend(laid, part, places, choices);
  const words = [...before, ...lineLabels(laid.piece.guides, window, places, context)];
  const beside = box === null ? legend : null;
  const joins = part.joints.map(({ name }) => name);
  return {
    widthMm: window.maxX - window.minX,
    heightMm: window.maxY - window.minY,
    alt: labels.figure(labels.partOf(laid.piece.name, tinName), part.name, joins),
    beside,
    draw(surface, xMm, yMm) {
      const dx = xMm - window.minX;
      const dy = yMm - window.minY;
      for (const { curves, paint } of strokes)
        surface.path(stepsOfCurves(curves, dx, dy), { stroke: context.inks.ink, ...paint });
      for (const word of words) word.draw(surface, dx, dy);
      if (box !== null) legend?.draw(surface, box.xMm + dx, box.yMm + dy);
      else beside?.draw(surface, xMm, yMm + window.maxY - window.minY + BESIDE_GAP_MM);
    },
  };
}
