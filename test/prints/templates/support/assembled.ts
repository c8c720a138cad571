/**
 * A piece put together from its printed parts as a baker does: cut lines as the PDF draws them, one part laid on
 * the next so that their crosses meet. The layout only tells on which sheet to look, and roughly where.
 */
import type { Point } from '../../../../src/domain/outline.ts';
import type { LaidPiece, Part } from '../../../../src/prints/templates/cut-into-parts.ts';
import type { PlacedItem, TemplateLayout } from '../../../../src/prints/templates/lay-out.ts';
import type { ReadStroke } from './path-operators.ts';

const CUT_PT = 0.75;
const CROSS_PT = 0.25;

interface PartOnSheet {
  part: Part;
  at: PlacedItem;
  strokes: ReadStroke[];
}

export interface Assembled {
  /** Cut lines in the frame of the first part. */
  lines: Point[][];
  /** Cut lines of every part, in its own sheet's frame. */
  partLines: Point[][][];
  /** How far, in mm, the second cross of any joint missed its fellow. */
  missMm: number;
}

function inBox({ xMm, yMm, item }: PlacedItem, { x, y }: Point, slackMm: number): boolean {
  const { window } = item.part;
  const right = xMm + window.maxX - window.minX;
  const bottom = yMm + window.maxY - window.minY;
  return x >= xMm - slackMm && x <= right + slackMm && y >= yMm - slackMm && y <= bottom + slackMm;
}

function partsOf(laid: LaidPiece, layout: TemplateLayout, pages: ReadStroke[][]): PartOnSheet[] {
  return layout.sheets.flatMap(({ items }, index) =>
    items
      .filter(({ item }) => item.laid.piece.id === laid.piece.id)
      .map((at) => ({ part: at.item.part, at, strokes: pages[index] ?? [] })),
  );
}

function cutLines({ at, strokes }: PartOnSheet): Point[][] {
  return strokes
    .filter(({ lineWidthPt, dashed }) => lineWidthPt === CUT_PT && !dashed)
    .flatMap(({ subpaths }) => subpaths)
    .filter((path) => path.every((point) => inBox(at, point, 0.2)));
}

/** Middles of all crosses: a level and an upright line of 6 mm that halve each other. */
function crosses({ strokes }: PartOnSheet): Point[] {
  const arms = strokes
    .filter(({ lineWidthPt }) => lineWidthPt === CROSS_PT)
    .flatMap(({ subpaths }) => subpaths)
    .flatMap(([a, b, ...more]) => (a && b && more.length === 0 ? [{ a, b }] : []))
    .filter(({ a, b }) => Math.abs(Math.hypot(b.x - a.x, b.y - a.y) - 6) < 0.01);
  const middle = ({ a, b }: { a: Point; b: Point }) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const level = arms.filter(({ a, b }) => Math.abs(a.y - b.y) < 0.001).map(middle);
  const upright = arms.filter(({ a, b }) => Math.abs(a.x - b.x) < 0.001).map(middle);
  return level.filter((p) => upright.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < 0.01));
}

function crossNear(on: PartOnSheet, wanted: Point): Point {
  const { window } = on.part;
  const x = on.at.xMm + wanted.x - window.minX;
  const y = on.at.yMm + wanted.y - window.minY;
  const found = crosses(on).find((cross) => Math.hypot(cross.x - x, cross.y - y) < 1);
  if (found === undefined) throw new Error(`no cross near ${x}, ${y} on part ${on.part.name}`);
  return found;
}

/** Throws when a part cannot be reached over joints, or lacks a cross. */
export function assembled(laid: LaidPiece, layout: TemplateLayout, pages: ReadStroke[][]): Assembled {
  const parts = partsOf(laid, layout, pages);
  const [first] = parts;
  if (first === undefined) throw new Error(`${laid.piece.name} is on no sheet`);
  const moves = new Map<PartOnSheet, Point>([[first, { x: 0, y: 0 }]]);
  let missMm = 0;
  for (let round = 0; round < parts.length; round += 1) {
    for (const [on, move] of [...moves]) {
      for (const joint of on.part.joints) {
        const other = parts.find((candidate) => candidate !== on && candidate.part.joints.includes(joint));
        if (other === undefined) throw new Error(`joint ${joint.name} has one side only`);
        for (const cross of joint.crosses) {
          const here = crossNear(on, cross);
          const there = crossNear(other, cross);
          const next = { x: here.x + move.x - there.x, y: here.y + move.y - there.y };
          const known = moves.get(other);
          if (known === undefined) moves.set(other, next);
          else missMm = Math.max(missMm, Math.hypot(known.x - next.x, known.y - next.y));
        }
      }
    }
  }
  if (moves.size !== parts.length) throw new Error(`${laid.piece.name}: parts that no joint reaches`);
  const partLines = parts.map(cutLines);
  const lines = parts.flatMap((on, index) => {
    const { x, y } = moves.get(on) ?? { x: Number.NaN, y: Number.NaN };
    return (partLines[index] ?? []).map((path) => path.map((point) => ({ x: point.x + x, y: point.y + y })));
  });
  return { lines, partLines, missMm };
}
