/** A bar that shows the scale of a sheet's drawings: ticks at its ends and middle, the length in words. */
import { lineWeightPt } from './rules.ts';
import type { SheetContext } from './sheet-context.ts';
import type { PathStep, Surface } from './surface.ts';
import { typeScale } from './type-scale.ts';

export interface ScaleBar {
  /** 1 : scale. */
  scale: number;
  /** True length that the bar stands for. */
  lengthMm: number;
  /** 'Tins drawn 1 : 20; the bar is 20 cm'. */
  text: string;
}

const TICK_MM = 1.4;
const GAP_MM = 2.5;

const tick = (x: number, y: number): PathStep[] => [
  { op: 'move', x, y },
  { op: 'line', x, y: y - TICK_MM },
];

/** Width of bar and text together. */
export function scaleBarWidthMm(bar: ScaleBar, context: SheetContext): number {
  const { font, sizePt } = typeScale.furniture;
  return bar.lengthMm / bar.scale + GAP_MM + context.metrics.widthMm(bar.text, font, sizePt);
}

/** Bar and text on one baseline, starting at x. */
export function drawScaleBar(
  surface: Surface,
  context: SheetContext,
  bar: ScaleBar,
  xMm: number,
  yMm: number,
): void {
  const length = bar.lengthMm / bar.scale;
  const steps: PathStep[] = [
    { op: 'move', x: xMm, y: yMm },
    { op: 'line', x: xMm + length, y: yMm },
    ...tick(xMm, yMm),
    ...tick(xMm + length / 2, yMm),
    ...tick(xMm + length, yMm),
  ];
  surface.path(steps, { stroke: context.inks.ink, lineWidthPt: lineWeightPt.outline });
  const { font, sizePt, colour } = typeScale.furniture;
  surface.text({
    text: bar.text,
    xMm: xMm + length + GAP_MM,
    yMm,
    font,
    sizePt,
    colour: context.inks[colour],
  });
}
