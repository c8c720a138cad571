/** Curves, bands and marks of a plot as strokes in mm; the shapes are the d3-shape library's. */
import { area, curveMonotoneX, line, symbol, symbolDiamond2, symbolTriangle2 } from 'd3-shape';
import { quantiseMm } from '../../domain/quantise.ts';
import type { PlotStep } from './plot.types.ts';

export interface Spot {
  x: number;
  y: number;
}

/** Takes down what the library would draw on a canvas. */
function recorder() {
  const steps: PlotStep[] = [];
  const at = quantiseMm;
  return {
    steps,
    moveTo: (x: number, y: number) => void steps.push({ op: 'move', x: at(x), y: at(y) }),
    lineTo: (x: number, y: number) => void steps.push({ op: 'line', x: at(x), y: at(y) }),
    bezierCurveTo: (x1: number, y1: number, x2: number, y2: number, x: number, y: number) =>
      void steps.push({ op: 'cubic', x1: at(x1), y1: at(y1), x2: at(x2), y2: at(y2), x: at(x), y: at(y) }),
    closePath: () => void steps.push({ op: 'close' }),
  };
}

/** A smooth curve through spots that run from left to right; it never overshoots them. */
export function curveSteps(spots: readonly Spot[]): PlotStep[] {
  const context = recorder();
  const draw = line<Spot>(
    ({ x }) => x,
    ({ y }) => y,
  ).curve(curveMonotoneX);
  draw.context(context as never)([...spots]);
  return context.steps;
}

/** The room between two curves over the same places. */
export function bandSteps(spots: readonly (Spot & { y2: number })[]): PlotStep[] {
  const context = recorder();
  const draw = area<Spot & { y2: number }>()
    .x(({ x }) => x)
    .y0(({ y }) => y)
    .y1(({ y2 }) => y2)
    .curve(curveMonotoneX);
  draw.context(context as never)([...spots]);
  return context.steps;
}

const MARK_MM2 = { diamond: 5, triangle: 5 };

/** A small mark about a spot. */
export function markSteps({ x, y }: Spot, shape: 'diamond' | 'triangle'): PlotStep[] {
  const context = recorder();
  symbol(shape === 'diamond' ? symbolDiamond2 : symbolTriangle2, MARK_MM2[shape]).context(context as never)();
  return context.steps.map((step) =>
    step.op === 'close' || step.op === 'cubic'
      ? step
      : { ...step, x: quantiseMm(step.x + x), y: quantiseMm(step.y + y) },
  );
}

/** A straight stroke. */
export const strokeSteps = (from: Spot, to: Spot): PlotStep[] => [
  { op: 'move', ...from },
  { op: 'line', ...to },
];

/** A small box. */
export const boxSteps = ({ x, y }: Spot, widthMm: number, heightMm: number): PlotStep[] => [
  { op: 'move', x, y },
  { op: 'line', x: x + widthMm, y },
  { op: 'line', x: x + widthMm, y: y + heightMm },
  { op: 'line', x, y: y + heightMm },
  { op: 'close' },
];
