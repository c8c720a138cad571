/** Outlines and rectangles as pen strokes about their own middle, and the guides drawn on them. */
import {
  centreOutline,
  type OutlineStep,
  outlineBounds,
  outlinePath,
  settleOutline,
} from '../compute/outline/index.ts';
import type { Outline } from '../domain/outline.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { TemplateGuide } from './lining-template.types.ts';

export interface PieceShape {
  cut: OutlineStep[];
  widthMm: number;
  heightMm: number;
}

/** An outline as it is cut, about the middle of its box: a paper that shrank unevenly is centred again. */
export function shapeOf(outline: Outline): PieceShape {
  const centred = settleOutline(centreOutline(outline));
  const { minX, minY, maxX, maxY } = outlineBounds(centred);
  return { cut: outlinePath(centred), widthMm: quantiseMm(maxX - minX), heightMm: quantiseMm(maxY - minY) };
}

/** A centred rectangle: a strip with its foot at the bottom, or a square board. */
export function rectangleShape(widthMm: number, heightMm: number): PieceShape {
  const x = quantiseMm(widthMm / 2);
  const y = quantiseMm(heightMm / 2);
  const cut: OutlineStep[] = [
    { op: 'move', x: -x, y: -y },
    { op: 'line', x, y: -y },
    { op: 'line', x, y },
    { op: 'line', x: -x, y },
    { op: 'close' },
  ];
  return { cut, widthMm: quantiseMm(2 * x), heightMm: quantiseMm(2 * y) };
}

/** A straight line as strokes. */
export function lineSteps(x1: number, y1: number, x2: number, y2: number): OutlineStep[] {
  return [
    { op: 'move', x: quantiseMm(x1), y: quantiseMm(y1) },
    { op: 'line', x: quantiseMm(x2), y: quantiseMm(y2) },
  ];
}

/** A level line so far above the foot of a strip, along all of it or from its start only. */
export function levelLine(strip: PieceShape, aboveFootMm: number, lengthMm = strip.widthMm): OutlineStep[] {
  const y = strip.heightMm / 2 - aboveFootMm;
  return lineSteps(-strip.widthMm / 2, y, lengthMm - strip.widthMm / 2, y);
}

/** Where the other end of a strip comes to lie. */
export function lapLine(strip: PieceShape, overlapMm: number): OutlineStep[] {
  const x = strip.widthMm / 2 - overlapMm;
  return lineSteps(x, -strip.heightMm / 2, x, strip.heightMm / 2);
}

export const guide = (
  kind: TemplateGuide['kind'],
  text: string,
  steps: OutlineStep[],
  drawn = true,
): TemplateGuide => ({ kind, steps, drawn, text });
