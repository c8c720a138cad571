/** A plot on a sheet: the same strokes as on the page, in one ink and a tint, with its words for reading aloud. */
import type { Plot, PlotKey, PlotStep, Stroke } from '../../views/plot/plot.types.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { Paint, PathStep, Surface } from '../sheet/surface.ts';
import { typeScale } from '../sheet/type-scale.ts';

const DASHES_MM: Record<Stroke, number[] | null> = { solid: null, dashed: [3, 1.6], dotted: [0.4, 1.2] };
const LABEL_GAP_MM = 1.8;

/** Draws a plot whose top left corner lies at a place, at a scale. */
interface Pen {
  surface: Surface;
  context: SheetContext;
  scale: number;
  xMm: number;
  yMm: number;
}

function moved({ scale, xMm, yMm }: Pen, steps: readonly PlotStep[]): PathStep[] {
  const [x, y] = [(value: number) => xMm + value * scale, (value: number) => yMm + value * scale];
  return steps.map((step) => {
    if (step.op === 'close') return step;
    const to = { x: x(step.x), y: y(step.y) };
    if (step.op !== 'cubic') return { op: step.op, ...to };
    return { op: 'cubic', x1: x(step.x1), y1: y(step.y1), x2: x(step.x2), y2: y(step.y2), ...to };
  });
}

function stroke(pen: Pen, steps: readonly PlotStep[], paint: Paint): void {
  pen.surface.path(moved(pen, steps), paint);
}

const level = (fromMm: number, toMm: number, yMm: number): PlotStep[] => [
  { op: 'move', x: fromMm, y: yMm },
  { op: 'line', x: toMm, y: yMm },
];

/** Words beside the drawing; `share` of their width lies left of the place. */
function write(pen: Pen, text: string, xMm: number, yMm: number, share = 0): void {
  const { font, sizePt, colour } = { ...typeScale.furniture, colour: 'ink' as const };
  const { metrics, inks } = pen.context;
  const left = pen.xMm + xMm * pen.scale - metrics.widthMm(text, font, sizePt, true) * share;
  pen.surface.text({
    text,
    xMm: left,
    yMm: pen.yMm + yMm * pen.scale,
    font,
    sizePt,
    colour: inks[colour],
    tabular: true,
  });
}

function linePaint({ context }: Pen, kind: Stroke): Paint {
  const dashMm = DASHES_MM[kind];
  return { stroke: context.inks.ink, lineWidthPt: 1.1, ...(dashMm === null ? {} : { dashMm }) };
}

function bandPaint({ context }: Pen, tone: 'first' | 'second'): Paint {
  return tone === 'first'
    ? { fill: context.inks.tint, stroke: context.inks.rule, lineWidthPt: lineWeightPt.outline }
    : { stroke: context.inks.ink, lineWidthPt: lineWeightPt.outline, dashMm: [0.4, 0.9] };
}

const markPaint = ({ context }: Pen, filled: boolean): Paint => ({
  fill: filled ? context.inks.ink : context.inks.paper,
  stroke: filled ? context.inks.paper : context.inks.ink,
  lineWidthPt: 0.7,
});

function drawAxes(pen: Pen, { frame, x, y }: Plot): void {
  const { inks } = pen.context;
  const [left, right, foot] = [frame.xMm, frame.xMm + frame.widthMm, frame.yMm + frame.heightMm];
  const rule = { stroke: inks.rule, lineWidthPt: lineWeightPt.thin };
  for (const tick of y.ticks) stroke(pen, level(left, right, tick.atMm), rule);
  stroke(pen, level(left, right, foot), { stroke: inks.ink, lineWidthPt: lineWeightPt.outline });
  for (const { atMm } of x.ticks) {
    const tick: PlotStep[] = [
      { op: 'move', x: atMm, y: foot },
      { op: 'line', x: atMm, y: foot + 1.2 },
    ];
    stroke(pen, tick, { stroke: inks.ink, lineWidthPt: lineWeightPt.outline });
  }
  for (const tick of x.ticks) write(pen, tick.text, tick.atMm, foot + 4.8, 0.5);
  for (const tick of y.ticks) write(pen, tick.text, left - LABEL_GAP_MM, tick.atMm + 1.1, 1);
  write(pen, x.label, (left + right) / 2, foot + 10, 0.5);
  write(pen, y.label, left - 8, frame.yMm - 4);
}

function drawKey(pen: Pen, key: PlotKey, tone: 'first' | 'second'): void {
  if (key.band) stroke(pen, key.band, bandPaint(pen, tone));
  if (key.line) stroke(pen, key.line.steps, linePaint(pen, key.line.stroke));
  if (key.mark) stroke(pen, key.mark.steps, markPaint(pen, key.mark.filled));
  write(pen, key.text, key.xMm, key.yMm);
}

function drawPlot(pen: Pen, plot: Plot): void {
  const { frame } = plot;
  for (const { steps, tone } of plot.bands) if (tone === 'first') stroke(pen, steps, bandPaint(pen, tone));
  drawAxes(pen, plot);
  for (const { steps, tone } of plot.bands) if (tone === 'second') stroke(pen, steps, bandPaint(pen, tone));
  for (const { yMm, text } of plot.levels) {
    const dashed = { stroke: pen.context.inks.ink, lineWidthPt: lineWeightPt.outline, dashMm: [1.4, 1] };
    stroke(pen, level(frame.xMm, frame.xMm + frame.widthMm, yMm), dashed);
    write(pen, text, frame.xMm + 2, yMm - 1.2);
  }
  for (const line of plot.lines) stroke(pen, line.steps, linePaint(pen, line.stroke));
  for (const { steps, filled } of plot.marks) stroke(pen, steps, markPaint(pen, filled));
  const tones = plot.bands.map(({ tone }) => tone);
  plot.keys.forEach((key, at) => {
    drawKey(pen, key, tones[at] ?? 'first');
  });
}

/** The plot as one figure, as wide as the sheet allows and never larger than it was laid out. */
export const plotBlock =
  (plot: Plot): Block =>
  (widthMm, context) => {
    const scale = Math.min(1, widthMm / plot.widthMm);
    const [wide, high] = [plot.widthMm * scale, plot.heightMm * scale];
    return [
      {
        heightMm: high,
        spaceMm: 2,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          const box = { xMm, yMm, widthMm: wide, heightMm: high };
          const alt = `${plot.title}. ${plot.description}`;
          surface.within('Figure', { alt, box }, () => drawPlot({ surface, context, scale, xMm, yMm }, plot));
        },
      },
    ];
  };
