/**
 * The stack's drawing as strokes and words in mm of the paper: parts to scale, names at the left, heights on
 * dimension lines at the right and widths below. Print and page draw the very same; y down from the top left.
 */
import type { OutlineStep } from '../compute/outline/index.ts';
import { quantiseMm } from '../domain/quantise.ts';
import { inchesText } from '../wording/us-units.ts';
import { heightFigure } from './figures.ts';
import type { StackPart, StackPartKind, StackTierView, StackView } from './stack-sheet.types.ts';

export interface ElevationLook {
  /** 1 : scale. */
  scale: number;
  /** Em of the words. */
  textMm: number;
  /** Room for the widest name. */
  nameMm: number;
}

export interface ElevationStroke {
  kind: StackPartKind | 'ground' | 'measure';
  steps: OutlineStep[];
}

export interface ElevationWord {
  text: string;
  xMm: number;
  /** Of the baseline. */
  yMm: number;
  anchor: 'start' | 'middle' | 'end';
  strong: boolean;
}

export interface Elevation {
  widthMm: number;
  heightMm: number;
  strokes: ElevationStroke[];
  words: ElevationWord[];
}

const GAP_MM = 4;
/** Half a tick across a dimension line. */
const TICK_MM = 1;
/** Room for '1,234' right of a dimension line, in ems. */
const FIGURE_EM = 2.9;
const ROW_EM = 1.45;
/** From a baseline up to the middle of figures, in ems. */
const HALF_CAP_EM = 0.34;
const QUARTER = 0.5522847498;

interface Place {
  x(mm: number): number;
  y(mm: number): number;
  /** Widest part's right edge. */
  rightMm: number;
  look: ElevationLook;
}

const line = (x1: number, y1: number, x2: number, y2: number): OutlineStep[] => [
  { op: 'move', x: quantiseMm(x1), y: quantiseMm(y1) },
  { op: 'line', x: quantiseMm(x2), y: quantiseMm(y2) },
];

function boxSteps({ atMm, footMm, widthMm, heightMm }: StackPart, { x, y }: Place): OutlineStep[] {
  const [left, right] = [atMm - widthMm / 2, atMm + widthMm / 2];
  const [low, high] = [y(footMm), y(footMm + heightMm)];
  return [...line(x(left), low, x(left), high), ...line(x(right), high, x(right), low).map(asLine), closed];
}

const closed: OutlineStep = { op: 'close' };
const asLine = (step: OutlineStep): OutlineStep => (step.op === 'move' ? { ...step, op: 'line' } : step);

/** Half an ellipse on its foot. */
function domeSteps({ atMm, footMm, widthMm, heightMm }: StackPart, { x, y }: Place): OutlineStep[] {
  const [half, k] = [widthMm / 2, QUARTER];
  const curve = (x1: number, y1: number, x2: number, y2: number, toX: number, toY: number): OutlineStep => ({
    op: 'cubic',
    ...{ x1: quantiseMm(x(atMm + x1 * half)), y1: quantiseMm(y(footMm + y1 * heightMm)) },
    ...{ x2: quantiseMm(x(atMm + x2 * half)), y2: quantiseMm(y(footMm + y2 * heightMm)) },
    ...{ x: quantiseMm(x(atMm + toX * half)), y: quantiseMm(y(footMm + toY * heightMm)) },
  });
  const foot: OutlineStep = { op: 'move', x: quantiseMm(x(atMm - half)), y: quantiseMm(y(footMm)) };
  return [foot, curve(-1, k, -k, 1, 0, 1), curve(k, 1, 1, k, 1, 0), closed];
}

/** An upright dimension line with its figure to the right. */
function upright(at: number, high: number, low: number, text: string, look: ElevationLook): Drawn {
  const steps = [
    ...line(at, high, at, low),
    ...line(at - TICK_MM, high, at + TICK_MM, high),
    ...line(at - TICK_MM, low, at + TICK_MM, low),
  ];
  const yMm = quantiseMm((high + low) / 2 + HALF_CAP_EM * look.textMm);
  const word = { text, xMm: quantiseMm(at + TICK_MM + 0.6), yMm, anchor: 'start' as const, strong: false };
  return { strokes: [{ kind: 'measure', steps }], words: [word] };
}

/** A level dimension line with its figure beyond its right end. */
function level(y: number, left: number, right: number, text: string, look: ElevationLook): Drawn {
  const steps = [
    ...line(left, y, right, y),
    ...line(left, y - TICK_MM, left, y + TICK_MM),
    ...line(right, y - TICK_MM, right, y + TICK_MM),
  ];
  const yMm = quantiseMm(y + HALF_CAP_EM * look.textMm);
  const word = { text, xMm: quantiseMm(right + 1.6), yMm, anchor: 'start' as const, strong: false };
  return { strokes: [{ kind: 'measure', steps }], words: [word] };
}

type Drawn = Pick<Elevation, 'strokes' | 'words'>;

/** From its foot to its top, the card inside a tall tier counted. */
const stoodText = ({ foot, top }: StackTierView, units: StackView['units']): string =>
  heightText(quantiseMm(top.value - foot.value), units);

/** A bare height as the sheet's other heights are shown. */
const heightText = (mm: number, { height }: StackView['units']): string =>
  height === 'in' ? inchesText(mm) : heightFigure(mm).text;

function heights({ tiers, height, units }: StackView, place: Place): Drawn[] {
  const { x, y, rightMm, look } = place;
  const [own, whole] = [rightMm + GAP_MM, rightMm + 2 * GAP_MM + FIGURE_EM * look.textMm];
  const reach = (fromMm: number, atMm: number): ElevationStroke => ({
    kind: 'measure',
    steps: line(fromMm + 0.8, atMm, own + TICK_MM, atMm),
  });
  return [
    ...tiers.map((tier): Drawn => {
      const [high, low] = [y(tier.top.value), y(tier.foot.value)];
      const edge = x(tier.across.value / 2);
      const drawn = upright(own, high, low, stoodText(tier, units), look);
      return { strokes: [reach(edge, high), reach(edge, low), ...drawn.strokes], words: drawn.words };
    }),
    upright(whole, y(height.value), y(0), height.text, look),
  ];
}

function widths({ tiers, units }: StackView, { x, y, look }: Place): Drawn[] {
  const drum = tiers[0]?.board.across;
  const spans = [...tiers.map(({ across }) => across).reverse(), ...(drum === undefined ? [] : [drum])];
  return spans.map((across, at) => {
    const half = across.value / 2;
    const row = y(0) + GAP_MM + at * ROW_EM * look.textMm;
    return level(row, x(-half), x(half), heightText(across.value, units), look);
  });
}

function names({ tiers, units }: StackView, { x, y, look }: Place): Drawn[] {
  return tiers.map(({ name, weight, across, foot, top }) => {
    const middle = y((foot.value + top.value) / 2);
    const edge = x(-across.value / 2);
    const word = (text: string, down: number, strong: boolean): ElevationWord => {
      const yMm = quantiseMm(middle + (HALF_CAP_EM + down) * look.textMm);
      return { text, xMm: 0, yMm, anchor: 'start', strong };
    };
    return {
      strokes: [{ kind: 'measure', steps: line(look.nameMm + 1, middle, edge - 1, middle) }],
      words: [word(name, -0.62, true), word(`${weight.text}\u00a0${units.mass}`, 0.62, false)],
    };
  });
}

/** The drawing at a scale; its width tells whether it fits. */
export function stackElevation(view: StackView, look: ElevationLook): Elevation {
  const { picture, tiers } = view;
  const left = look.nameMm + GAP_MM;
  const halfMm = picture.widthMm / 2;
  const top = 1;
  const place: Place = {
    x: (mm) => left + (halfMm + mm) / look.scale,
    y: (mm) => top + (picture.heightMm - mm) / look.scale,
    rightMm: left + picture.widthMm / look.scale,
    look,
  };
  const { x, y, rightMm } = place;
  const parts: ElevationStroke[] = picture.parts.map((part) => ({
    kind: part.kind,
    steps: part.kind === 'dome' ? domeSteps(part, place) : boxSteps(part, place),
  }));
  const ground: ElevationStroke = { kind: 'ground', steps: line(x(-halfMm) - 2, y(0), rightMm + 2, y(0)) };
  const measures = [...heights(view, place), ...widths(view, place), ...names(view, place)];
  return {
    widthMm: quantiseMm(rightMm + 2 * GAP_MM + 2 * FIGURE_EM * look.textMm),
    heightMm: quantiseMm(y(0) + GAP_MM + (tiers.length + 0.5) * ROW_EM * look.textMm),
    strokes: [ground, ...parts, ...measures.flatMap(({ strokes }) => strokes)],
    words: measures.flatMap(({ words }) => words),
  };
}
