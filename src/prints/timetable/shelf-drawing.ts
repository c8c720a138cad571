/** Shelves from above, door in front, all to one scale: the walls, and every tin by its true outline with its number. */
import { outlinePath } from '../../compute/outline/index.ts';
import type { ShelfTin, ShelfView } from '../../views/timetable/timetable.types.ts';
import type { TimetableWords } from '../../wording/timetable/index.ts';
import { lineWeightPt, rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { typeScale } from '../sheet/type-scale.ts';

const GAP_MM = 5;
const NAME_MM = 6;
const DOOR_MM = 6;
const SCALES = [3, 4, 5, 6, 8, 10];
const NUMBER = { ...typeScale.key, sizePt: 16 };

/** The largest scale (1 : n) at which this many shelves stand side by side. */
export function shelfScale(shelves: readonly ShelfView[], most: number, widthMm: number): number {
  const widest = Math.max(1, ...shelves.map((shelf) => shelf.widthMm));
  const room = (widthMm - (most - 1) * GAP_MM) / most;
  return SCALES.find((scale) => widest / scale <= room) ?? Math.ceil(widest / room);
}

interface Pen {
  surface: Surface;
  context: SheetContext;
  scale: number;
  /** Top left corner of the shelf on the sheet. */
  xMm: number;
  yMm: number;
}

/** Steps come with y down already, measured from the front: the back of the shelf is on top. */
function onSheet({ scale, xMm, yMm }: Pen, depthMm: number, steps: readonly PathStep[]): PathStep[] {
  const x = (value: number): number => xMm + value / scale;
  const y = (value: number): number => yMm + (depthMm + value) / scale;
  return steps.map((step) => {
    if (step.op === 'close') return step;
    const to = { x: x(step.x), y: y(step.y) };
    if (step.op !== 'cubic') return { op: step.op, ...to };
    return { op: 'cubic', x1: x(step.x1), y1: y(step.y1), x2: x(step.x2), y2: y(step.y2), ...to };
  });
}

function drawTin(pen: Pen, tin: ShelfTin, { depthMm }: ShelfView): void {
  const { surface, context, scale } = pen;
  const { outline, middle, number } = tin;
  if (outline) {
    const paint = {
      fill: context.inks.tint,
      stroke: context.inks.ink,
      lineWidthPt: lineWeightPt.cut,
      evenOdd: true,
    };
    surface.path(onSheet(pen, depthMm, outlinePath(outline)), paint);
  }
  const text = String(number);
  const { font, sizePt } = NUMBER;
  const half = context.metrics.widthMm(text, font, sizePt, true) / 2;
  const x = pen.xMm + middle.xMm / scale - half;
  const y = pen.yMm + (depthMm - middle.yMm) / scale + context.metrics.capHeightMm(font, sizePt) / 2;
  surface.text({ text, xMm: x, yMm: y, font, sizePt, colour: context.inks.ink, tabular: true });
}

function drawShelf(pen: Pen, shelf: ShelfView, words: TimetableWords): void {
  const { surface, context, scale, xMm, yMm } = pen;
  const [wide, deep] = [shelf.widthMm / scale, shelf.depthMm / scale];
  const { font, sizePt } = typeScale.furniture;
  surface.path(rectangle(xMm, yMm, wide, deep), {
    stroke: context.inks.ink,
    lineWidthPt: lineWeightPt.outline,
  });
  const door = rectangle(xMm, yMm + deep + 0.6, wide, 1.2);
  surface.path(door, { fill: context.inks.ink });
  for (const tin of shelf.tins) drawTin(pen, tin, shelf);
  const half = context.metrics.widthMm(words.door, font, sizePt) / 2;
  const at = { xMm: xMm + wide / 2 - half, yMm: yMm + deep + DOOR_MM - 0.6 };
  surface.text({ text: words.door, ...at, font, sizePt, colour: context.inks.quietInk });
}

/** Two shelves side by side at a scale, the upper one left; each with its name above and the door below. */
export const shelvesBlock =
  (shelves: readonly ShelfView[], scale: number, words: TimetableWords): Block =>
  (_, context) => {
    const deepest = Math.max(...shelves.map(({ depthMm }) => depthMm)) / scale;
    const heightMm = NAME_MM + deepest + DOOR_MM;
    const { font, sizePt } = typeScale.bodyStrong;
    return [
      {
        heightMm,
        spaceMm: 2,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          let left = xMm;
          for (const shelf of shelves) {
            const wide = shelf.widthMm / scale;
            const box = { xMm: left, yMm, widthMm: wide, heightMm };
            const pen = { surface, context, scale, xMm: left, yMm: yMm + NAME_MM };
            surface.within('Figure', { alt: shelf.alt, box }, () => {
              surface.text({
                text: shelf.name,
                xMm: left,
                yMm: yMm + 4,
                font,
                sizePt,
                colour: context.inks.ink,
              });
              drawShelf(pen, shelf, words);
            });
            left += wide + GAP_MM;
          }
        },
      },
    ];
  };
