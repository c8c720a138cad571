/** Lines and boxes. Line weights: 0.25 pt hidden and thin, 0.5 pt outlines and rules, 0.75 pt what is cut. */
import type { SheetContext } from './sheet-context.ts';
import type { PathStep, Surface } from './surface.ts';

export const lineWeightPt = { thin: 0.25, outline: 0.5, cut: 0.75 } as const;

export const rectangle = (xMm: number, yMm: number, widthMm: number, heightMm: number): PathStep[] => [
  { op: 'move', x: xMm, y: yMm },
  { op: 'line', x: xMm + widthMm, y: yMm },
  { op: 'line', x: xMm + widthMm, y: yMm + heightMm },
  { op: 'line', x: xMm, y: yMm + heightMm },
  { op: 'close' },
];

/** A level rule in the house's rule colour. */
export function hairline(
  surface: Surface,
  context: SheetContext,
  xMm: number,
  yMm: number,
  widthMm: number,
): void {
  surface.path(
    [
      { op: 'move', x: xMm, y: yMm },
      { op: 'line', x: xMm + widthMm, y: yMm },
    ],
    { stroke: context.inks.rule, lineWidthPt: lineWeightPt.outline },
  );
}
