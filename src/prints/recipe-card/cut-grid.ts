/**
 * How many cards a sheet holds: trimmed cards with bleed between them and cutting marks around them, whichever way
 * round the sheet holds more. Lengths mm.
 */
import type { PaperName } from '../../domain/kitchen.ts';
import { landscapeSheet, portraitSheet, type SheetSize } from '../sheet/paper.ts';
import { BLEED_MM } from './card-size.ts';

export const MARK_MM = 3;
const GAP_MM = 2 * BLEED_MM;
/** Home printers leave about this much of the paper's edge bare (common practice, no source). */
const BARE_MM = 3;
const EDGE_MM = BLEED_MM + MARK_MM + BARE_MM;

export interface CutGrid {
  sheet: SheetSize;
  /** Over which edge the sheet turns so that backs come to lie behind fronts. */
  turn: 'long' | 'short';
  columns: number;
  rows: number;
  /** Left edge of each column and top of each row of trimmed cards. */
  xsMm: number[];
  ysMm: number[];
}

interface Card {
  widthMm: number;
  heightMm: number;
}

const howMany = (sheetMm: number, cardMm: number): number =>
  Math.max(0, Math.floor((sheetMm - 2 * EDGE_MM + GAP_MM) / (cardMm + GAP_MM)));

function places(sheetMm: number, cardMm: number, count: number): number[] {
  const first = (sheetMm - count * cardMm - (count - 1) * GAP_MM) / 2;
  return Array.from({ length: count }, (_, index) => first + index * (cardMm + GAP_MM));
}

function gridOn(sheet: SheetSize, turn: CutGrid['turn'], card: Card): CutGrid {
  const columns = howMany(sheet.widthMm, card.widthMm);
  const rows = howMany(sheet.heightMm, card.heightMm);
  const xsMm = places(sheet.widthMm, card.widthMm, columns);
  return { sheet, turn, columns, rows, xsMm, ysMm: places(sheet.heightMm, card.heightMm, rows) };
}

const countOf = ({ columns, rows }: CutGrid): number => columns * rows;

/** The grid for a card on a paper, centred on the sheet; null when not even one fits. */
export function cutGrid(paper: PaperName, card: Card): CutGrid | null {
  const upright = gridOn(portraitSheet(paper), 'long', card);
  const lengthwise = gridOn(landscapeSheet(paper), 'short', card);
  const best = countOf(lengthwise) > countOf(upright) ? lengthwise : upright;
  return countOf(best) === 0 ? null : best;
}
