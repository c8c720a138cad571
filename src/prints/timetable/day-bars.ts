/** A day's bars on paper: hands solid, oven hatched by outline and tint, waiting as a thin line. */
import type { Bar, DayBars } from '../../views/timetable/timetable.types.ts';
import { lineWeightPt, rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { typeScale } from '../sheet/type-scale.ts';

const LANE_MM = 4.6;
const BAR_MM = 2.8;
const HEAD_MM = 5;
const GAP_MM = 3;

interface Pen {
  surface: Surface;
  context: SheetContext;
  /** Left edge and width of the bars. */
  xMm: number;
  widthMm: number;
}

function drawBar({ surface, context, xMm, widthMm }: Pen, bar: Bar, yMm: number): void {
  const { ink, tint } = context.inks;
  const left = xMm + bar.from * widthMm;
  const wide = (bar.to - bar.from) * widthMm;
  if (bar.tone === 'waiting') {
    const line = rectangle(left, yMm + LANE_MM / 2 - 0.2, wide, 0.4);
    surface.path(line, { fill: ink });
    return;
  }
  const box = rectangle(left, yMm + (LANE_MM - BAR_MM) / 2, wide, BAR_MM);
  if (bar.tone === 'hands') surface.path(box, { fill: ink });
  else surface.path(box, { fill: tint, stroke: ink, lineWidthPt: lineWeightPt.outline });
}

function drawTicks({ surface, context, xMm, widthMm }: Pen, { ticks, lanes }: DayBars, yMm: number): void {
  const { font, sizePt } = typeScale.furniture;
  for (const { at, text } of ticks) {
    const x = xMm + at * widthMm;
    const half = context.metrics.widthMm(text, font, sizePt, true) / 2;
    const from = Math.min(xMm + widthMm - 2 * half, x - half);
    surface.text({
      text,
      xMm: from,
      yMm: yMm + 3,
      font,
      sizePt,
      colour: context.inks.quietInk,
      tabular: true,
    });
    surface.path(
      [
        { op: 'move', x, y: yMm + HEAD_MM - 1 },
        { op: 'line', x, y: yMm + HEAD_MM + lanes.length * LANE_MM },
      ],
      { stroke: context.inks.rule, lineWidthPt: lineWeightPt.thin },
    );
  }
}

/** All lanes of a day as one figure. */
export const dayBarsBlock =
  (bars: DayBars): Block =>
  (widthMm, context) => {
    const { font, sizePt } = typeScale.furniture;
    const names = bars.lanes.map(({ name }) => context.metrics.widthMm(name, font, sizePt));
    const labelMm = Math.max(0, ...names) + GAP_MM;
    const heightMm = HEAD_MM + bars.lanes.length * LANE_MM;
    return [
      {
        heightMm,
        spaceMm: 2,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          const pen = { surface, context, xMm: xMm + labelMm, widthMm: widthMm - labelMm };
          surface.within('Figure', { alt: bars.alt, box: { xMm, yMm, widthMm, heightMm } }, () => {
            drawTicks(pen, bars, yMm);
            bars.lanes.forEach((lane, at) => {
              const top = yMm + HEAD_MM + at * LANE_MM;
              surface.text({ text: lane.name, xMm, yMm: top + 3.2, font, sizePt, colour: context.inks.ink });
              for (const bar of lane.bars) drawBar(pen, bar, top);
            });
          });
        },
      },
    ];
  };
