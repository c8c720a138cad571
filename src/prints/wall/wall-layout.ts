/**
 * How large can everything be? As few sheets as hold it; upright or lengthwise, whichever lets it grow further; and
 * what room is left goes between the rows. Every sheet carries the notes and the cautions of what stands on it.
 */
import type { WallPlate, WallTable, WallView } from '../../views/wall.types.ts';
import type { WallWords } from '../../wording/wall/index.ts';
import { caution, textParagraph } from '../sheet/blocks.ts';
import { paragraph } from '../sheet/lines.ts';
import type { PageCode } from '../sheet/page-code.ts';
import type { SheetSize } from '../sheet/paper.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { table, tableFits } from '../sheet/table/table.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import { wallFrame } from './wall-frame.ts';
import { wallHead } from './wall-head.ts';
import { itemCount, wallParts } from './wall-parts.ts';
import { plateRows, plateScale, wallPlate } from './wall-plate.ts';
import { wallTableSpec } from './wall-table.ts';
import { type WallSizing, type WallType, wallType } from './wall-type.ts';

/** Beyond the largest a sheet shouts. The last resort before another sheet: notes for reading close up. */
const SIZINGS: readonly WallSizing[] = [
  { growth: 1, notes: 'close up' },
  ...[1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2].map((growth): WallSizing => ({ growth, notes: 'as words' })),
];
const ROW_GAP_MM = { 'as words': 3, 'close up': 1.5 };
const PADDING_MM = { 'as words': 0.8, 'close up': 0.25 };
/** Rows move apart by at most this part of their own height: further, and they no longer belong together. */
const MOST_SPREAD = 0.5;
const SPREAD_OF_SPARE = 0.9;

/** What all sheets of a wall reference are laid out from. */
export interface WallSource {
  view: WallView;
  words: WallWords;
  context: SheetContext;
  link: PageCode | null;
}

export interface WallLayout {
  size: SheetSize;
  type: WallType;
  /** 1 : n of the drawings. */
  scale: number;
  /** Blocks of each sheet. */
  sheets: Block[][];
}

interface Trial {
  source: WallSource;
  size: SheetSize;
  sizing: WallSizing;
  type: WallType;
  bodies: (WallTable | WallPlate)[];
}

/** A full sheet draws smaller, so that fewer names need two lines. */
const DRAWN = { 'as words': 1, 'close up': 0.8 };

/** 1 : n for all tins, however many sheets they take; 1 where there are none to draw. */
const scaleOf = ({ source: { view }, sizing: { growth, notes } }: Trial): number =>
  view.body.form === 'plate' ? plateScale(view.body, growth * DRAWN[notes]) : 1;

const widthOf = ({ size, source }: Trial): number => wallFrame(size, source.context).widthMm;

/** `apartMm` goes between the rows. */
function bodyBlock(trial: Trial, body: WallTable | WallPlate, apartMm: number): Block {
  const { sizing, type } = trial;
  if (body.form === 'plate')
    return wallPlate(body, type, scaleOf(trial), ROW_GAP_MM[sizing.notes] * sizing.growth + apartMm);
  const paddingMm = PADDING_MM[sizing.notes] * sizing.growth + apartMm / 2;
  return (widthMm, context) =>
    table(wallTableSpec(body, type, paddingMm, widthMm, context))(widthMm, context);
}

function titleOf({ source, bodies }: Trial, part: number): string {
  const { view, words } = source;
  return bodies.length === 1 ? view.title : words.titleOf(view.title, part + 1, bodies.length);
}

function blocksOf(trial: Trial, part: number, apartMm: number): Block[] {
  const { source, sizing, type, bodies } = trial;
  const { view, words, link } = source;
  const body = bodies[part] ?? view.body;
  const notes =
    view.notes.length > 0 ? [textParagraph('notes', paragraph(view.notes.join(' '), type.note), 3)] : [];
  return [
    wallHead({ title: titleOf(trial, part), lead: view.lead }, type, sizing.growth, link),
    bodyBlock(trial, body, apartMm),
    ...notes,
    ...view.cautions.map(({ text }) => caution(words.caution, text, type.note)),
  ];
}

function heightMm(trial: Trial, part: number): number {
  const strips = blocksOf(trial, part, 0).flatMap((block) => block(widthOf(trial), trial.source.context));
  return strips.reduce((sum, strip, index) => sum + strip.heightMm + (index > 0 ? strip.spaceMm : 0), 0);
}

/** Room left on the fullest of the sheets, mm; negative where it does not fit. */
function spareMm(trial: Trial): number {
  const { source, size, bodies, type } = trial;
  const { context } = source;
  const { widthMm, heightMm: roomMm } = wallFrame(size, context);
  const fitsAcross = bodies.every(
    (body) =>
      body.form === 'plate' || tableFits(wallTableSpec(body, type, 0, widthMm, context), widthMm, context),
  );
  if (!fitsAcross) return Number.NEGATIVE_INFINITY;
  return roomMm - Math.max(...bodies.map((_, part) => heightMm(trial, part)));
}

interface Fit extends Trial {
  spareMm: number;
  rank: number;
}

function fitAt(source: WallSource, size: SheetSize, bodies: Trial['bodies'], rank: number): Fit | null {
  const sizing = SIZINGS[rank];
  if (sizing === undefined) return null;
  const trial = { source, size, sizing, type: wallType(sizing, source.context), bodies };
  const spare = spareMm(trial);
  return spare < 0 ? null : { ...trial, spareMm: spare, rank };
}

/** The largest sizing above a rank that fits one way round; growing never makes room, so halving finds it. */
function largest(source: WallSource, size: SheetSize, bodies: Trial['bodies'], above: number): Fit | null {
  let best = fitAt(source, size, bodies, above + 1);
  if (best === null) return null;
  let [low, high] = [above + 2, SIZINGS.length - 1];
  while (low <= high) {
    const middle = Math.floor((low + high) / 2);
    const fit = fitAt(source, size, bodies, middle);
    if (fit) {
      best = fit;
      low = middle + 1;
    } else high = middle - 1;
  }
  return best;
}

function rowsOf(trial: Trial): number {
  return Math.max(
    ...trial.bodies.map((body) =>
      body.form === 'table'
        ? body.rows.length
        : plateRows(body, trial.type, scaleOf(trial), widthOf(trial), trial.source.context),
    ),
  );
}

function laidOut(fit: Fit): WallLayout {
  const { size, type, bodies } = fit;
  const mostMm = MOST_SPREAD * type.key.leadingPt * MM_PER_PT;
  const apartMm = Math.min(mostMm, (SPREAD_OF_SPARE * fit.spareMm) / rowsOf(fit));
  return { size, type, scale: scaleOf(fit), sheets: bodies.map((_, part) => blocksOf(fit, part, apartMm)) };
}

/** As many sheets as a kitchen's tins need; throws where one thing alone fits none at the least sizes. */
export function wallLayout(source: WallSource, upright: SheetSize): WallLayout {
  const { view } = source;
  const lengthwise = { widthMm: upright.heightMm, heightMm: upright.widthMm };
  for (let parts = 1; parts <= Math.max(1, itemCount(view.body)); parts += 1) {
    const bodies = wallParts(view.body, parts);
    const up = largest(source, upright, bodies, -1);
    const best = largest(source, lengthwise, bodies, up?.rank ?? -1) ?? up;
    if (best) return laidOut(best);
  }
  throw new Error(`wall reference '${view.id}' is too large for any sheet`);
}
