/**
 * Step two: columns as wide as their content asks. Figures get exactly what they need, words share what is left
 * between their longest word and their unbroken width, and spare room goes between the columns.
 */

import { narrowestMm, type Paragraph, unbrokenMm } from '../lines.ts';
import { remembered } from '../remembered.ts';
import type { SheetContext } from '../sheet-context.ts';
import type { Metrics } from '../surface.ts';
import { alignedParts } from './normalise.ts';
import type { Cell, Column, Row, SizedColumn } from './types.ts';

export const DRAWING_GAP_MM = 3;
const LEAST_GAP_MM = 3.5;
const GOOD_GAP_MM = 5.5;
const WIDEST_GAP_MM = 9;

interface Wish {
  least: number;
  most: number;
  tailMm: number;
}

interface NumberParts {
  headMm: number;
  tailMm: number;
}

const partsOf = remembered((text, font, { sizePt }, metrics): NumberParts => {
  const [head, tail] = alignedParts(text);
  const width = (part: string) => metrics.widthMm(part, font, sizePt, true);
  return { headMm: width(head), tailMm: width(tail) };
});

/** The widest of each part among all numbers. */
function numberParts(cells: readonly Cell[], metrics: Metrics): NumberParts {
  let [headMm, tailMm] = [0, 0];
  for (const { number } of cells) {
    if (!number) continue;
    const parts = partsOf(number.text, number.type.font, number.type, metrics);
    headMm = Math.max(headMm, parts.headMm);
    tailMm = Math.max(tailMm, parts.tailMm);
  }
  return { headMm, tailMm };
}

/** What a column takes at the least, mm. */
interface Least {
  leastMm: number;
  tailMm: number;
}

const drawingRoomMm = ({ drawingMm }: Column): number =>
  drawingMm === undefined ? 0 : drawingMm + DRAWING_GAP_MM;

type MeasureText = (text: Paragraph, metrics: Metrics) => number;

function widestMm(measure: MeasureText, texts: readonly Paragraph[], metrics: Metrics): number {
  let widest = 0;
  for (const text of texts) widest = Math.max(widest, measure(text, metrics));
  return widest;
}

function widestInCells(measure: MeasureText, cells: readonly Cell[], metrics: Metrics): number {
  let widest = 0;
  for (const { paragraphs } of cells)
    if (paragraphs !== undefined) widest = Math.max(widest, widestMm(measure, paragraphs, metrics));
  return widest;
}

function leastOf(column: Column, cells: readonly Cell[], metrics: Metrics): Least {
  const head: Cell = column.headingNumber ? { number: column.headingNumber } : {};
  const { headMm, tailMm } = numberParts([head, ...cells], metrics);
  const leastMm = Math.max(
    headMm + tailMm,
    drawingRoomMm(column) + widestInCells(narrowestMm, cells, metrics),
    widestMm(narrowestMm, column.heading, metrics),
    column.narrowestMm ?? 0,
  );
  return { leastMm, tailMm };
}

function wishOf(
  column: Column,
  cells: readonly Cell[],
  { leastMm: least, tailMm }: Least,
  metrics: Metrics,
): Wish {
  const unbroken = drawingRoomMm(column) + widestInCells(unbrokenMm, cells, metrics);
  const wanted = Math.max(unbroken, column.narrowestMm ?? 0);
  return { least, most: Math.max(least, Math.min(wanted, column.widestMm ?? wanted)), tailMm };
}

const cellsOf = (rows: readonly Row[], index: number): Cell[] => rows.map(({ cells }) => cells[index] ?? {});

const totalMm = (leastMm: readonly number[]): number =>
  leastMm.reduce((sum, mm) => sum + mm, 0) + Math.max(0, leastMm.length - 1) * LEAST_GAP_MM;

/** The least that each column takes, mm. */
export const leastWidthsMm = (columns: Column[], rows: Row[], { metrics }: SheetContext): number[] =>
  columns.map((column, index) => leastOf(column, cellsOf(rows, index), metrics).leastMm);

/** Whether columns of at least these widths stand side by side in this width. */
export const standBeside = (leastMm: readonly number[], widthMm: number): boolean =>
  totalMm(leastMm) <= widthMm;

/** Null when even the narrowest columns do not fit the width. */
export function sizedColumns(
  columns: Column[],
  rows: Row[],
  widthMm: number,
  { metrics }: SheetContext,
): SizedColumn[] | null {
  const cells = columns.map((_, index) => cellsOf(rows, index));
  const narrow = columns.map((column, index) => leastOf(column, cells[index] ?? [], metrics));
  const least = totalMm(narrow.map(({ leastMm }) => leastMm));
  if (least > widthMm) return null;
  const wishes = columns.map((column, index) =>
    wishOf(column, cells[index] ?? [], narrow[index] ?? { leastMm: 0, tailMm: 0 }, metrics),
  );
  const gaps = Math.max(0, columns.length - 1);
  // Gaps and words grow together, so that wordy columns do not press the figures against each other.
  const gapGrowth = gaps * (GOOD_GAP_MM - LEAST_GAP_MM);
  const growth = gapGrowth + wishes.reduce((sum, wish) => sum + wish.most - wish.least, 0);
  const share = growth === 0 ? 0 : Math.min(1, (widthMm - least) / growth);
  const spare = widthMm - least - growth * share;
  const gapMm = gaps === 0 ? 0 : Math.min(WIDEST_GAP_MM, LEAST_GAP_MM + (gapGrowth * share + spare) / gaps);
  let x = 0;
  return columns.map((column, index) => {
    const wish = wishes[index] ?? { least: 0, most: 0, tailMm: 0 };
    const width = wish.least + (wish.most - wish.least) * share;
    const sized = { ...column, xMm: x, widthMm: width, tailMm: wish.tailMm };
    x += width + gapMm;
    return sized;
  });
}
