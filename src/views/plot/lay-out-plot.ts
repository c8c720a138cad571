/** Puts figures on axes: scales and their ticks are the d3-scale library's, the room around them ours. */
import { extent } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { quantiseMm } from '../../domain/quantise.ts';
import { formatNumber } from '../../wording/number.ts';
import type { Plot, PlotAxis, PlotKey, Stroke } from './plot.types.ts';
import { bandSteps, boxSteps, curveSteps, markSteps, type Spot, strokeSteps } from './strokes.ts';

export interface PlotData {
  id: string;
  title: string;
  description: string;
  xLabel: string;
  yLabel: string;
  /** Where the y axis must reach down and up to, whatever the figures. */
  yAtLeast: readonly [number, number];
  bands: {
    text: string;
    tone: 'first' | 'second';
    points: readonly { x: number; low: number; high: number }[];
  }[];
  lines: { text: string; stroke: Stroke; points: readonly Spot[] }[];
  marks: { text: string; shape: 'diamond' | 'triangle'; points: readonly Spot[] }[];
  levels: { y: number; text: string }[];
  table: Plot['table'];
}

const WIDTH_MM = 170;
const FRAME = { xMm: 14, yMm: 9, widthMm: 152, heightMm: 78 };
const X_LABEL_MM = 13;
const KEY_ROW_MM = 6;
const KEYS_ACROSS = 2;
const X_TICKS = 9;
const Y_TICKS = 7;

interface Scales {
  x(value: number): number;
  y(value: number): number;
  xTicks: number[];
  yTicks: number[];
}

function scalesOf(data: PlotData): Scales {
  const { bands, lines, marks, yAtLeast } = data;
  const spots = [...lines.flatMap(({ points }) => points), ...marks.flatMap(({ points }) => points)];
  const edges = bands.flatMap(({ points }) => points);
  const [left = 0, right = 1] = extent([...spots, ...edges], ({ x }) => x);
  const ys = [...spots.map(({ y }) => y), ...edges.flatMap(({ low, high }) => [low, high]), ...yAtLeast];
  const [low = 0, high = 1] = extent(ys);
  const { xMm, yMm, widthMm, heightMm } = FRAME;
  const x = scaleLinear()
    .domain([left, right])
    .range([xMm + 3, xMm + widthMm - 3]);
  const y = scaleLinear()
    .domain([low, high])
    .nice(Y_TICKS)
    .range([yMm + heightMm, yMm]);
  return {
    x: (value) => quantiseMm(x(value)),
    y: (value) => quantiseMm(y(value)),
    xTicks: x.ticks(X_TICKS),
    yTicks: y.ticks(Y_TICKS),
  };
}

const axis = (label: string, ticks: readonly number[], place: (value: number) => number): PlotAxis => ({
  label,
  ticks: ticks.map((value) => ({ atMm: place(value), text: formatNumber(value, 2) })),
});

const SAMPLE_MM = 9;

/** The keys, two to a row beneath the axis. */
function keysOf(data: PlotData): PlotKey[] {
  const samples = [
    ...data.bands.map(({ text }) => ({ text, band: true, stroke: null, shape: null })),
    ...data.lines.map(({ text, stroke }) => ({ text, band: false, stroke, shape: null })),
    ...data.marks.map(({ text, shape }) => ({ text, band: false, stroke: null, shape })),
  ];
  return samples.map(({ text, band, stroke, shape }, at) => {
    const left = FRAME.xMm + (at % KEYS_ACROSS) * (FRAME.widthMm / KEYS_ACROSS);
    const middle = FRAME.yMm + FRAME.heightMm + X_LABEL_MM + 3 + Math.floor(at / KEYS_ACROSS) * KEY_ROW_MM;
    const line = strokeSteps({ x: left, y: middle }, { x: left + SAMPLE_MM, y: middle });
    return {
      text,
      band: band ? boxSteps({ x: left, y: middle - 1.8 }, SAMPLE_MM, 3.6) : null,
      line: stroke === null ? null : { steps: line, stroke },
      mark:
        shape === null
          ? null
          : { steps: markSteps({ x: left + SAMPLE_MM / 2, y: middle }, shape), filled: shape === 'diamond' },
      xMm: left + SAMPLE_MM + 2.5,
      yMm: middle + 1.1,
    };
  });
}

/** The drawing of some figures. */
export function layOutPlot(data: PlotData): Plot {
  const { x, y, xTicks, yTicks } = scalesOf(data);
  const keys = keysOf(data);
  const rows = Math.ceil(keys.length / KEYS_ACROSS);
  const spot = (point: Spot): Spot => ({ x: x(point.x), y: y(point.y) });
  return {
    id: data.id,
    title: data.title,
    description: data.description,
    widthMm: WIDTH_MM,
    heightMm: FRAME.yMm + FRAME.heightMm + X_LABEL_MM + rows * KEY_ROW_MM + 1,
    frame: FRAME,
    x: axis(data.xLabel, xTicks, x),
    y: axis(data.yLabel, yTicks, y),
    bands: data.bands.map(({ tone, points }) => ({
      tone,
      steps: bandSteps(points.map(({ x: at, low, high }) => ({ x: x(at), y: y(low), y2: y(high) }))),
    })),
    lines: data.lines.map(({ stroke, points }) => ({ stroke, steps: curveSteps(points.map(spot)) })),
    marks: data.marks.flatMap(({ shape, points }) =>
      points.map((point) => ({ steps: markSteps(spot(point), shape), filled: shape === 'diamond' })),
    ),
    levels: data.levels.map(({ y: at, text }) => ({ yMm: y(at), text })),
    keys,
    table: data.table,
  };
}
