/**
 * Type sizes of the wall, by distance: key figures are read from 2 m, words from 1.2 m, capitals at least 1/215
 * of that (ISO 9241-303, from memory): 9.3 mm and 5.6 mm, about 40 pt and 24 pt in most text faces, measured in
 * the very font. Where a sheet has room, everything grows together.
 */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

export const KEY_CAPITAL_MM = 2000 / 215;
export const WORD_CAPITAL_MM = 1200 / 215;
const LEAST_KEY_PT = 40;
const LEAST_WORD_PT = 24;

export interface WallType {
  title: TypeStyle;
  lead: TypeStyle;
  head: TypeStyle;
  unit: TypeStyle;
  key: TypeStyle;
  word: TypeStyle;
  strong: TypeStyle;
  unknown: TypeStyle;
  note: TypeStyle;
}

/** Figures have no descenders, so their rows can stand closer than words. */
const FIGURE_LEADING = 0.86;

const toHalf = (pt: number): number => Math.ceil(pt * 2 - 1e-6) / 2;

/** The sizes at a growth of 1 and more. */
export function wallType(growth: number, { metrics }: SheetContext): WallType {
  const sized = (capitalMm: number, leastPt: number, font: 'text' | 'textBold') =>
    toHalf(growth * Math.max(leastPt, capitalMm / metrics.capHeightMm(font, 1)));
  const keyPt = sized(KEY_CAPITAL_MM, LEAST_KEY_PT, 'textBold');
  const wordPt = sized(WORD_CAPITAL_MM, LEAST_WORD_PT, 'text');
  const strongPt = sized(WORD_CAPITAL_MM, LEAST_WORD_PT, 'textBold');
  const titlePt = toHalf(wordPt * 1.6);
  const word: TypeStyle = { font: 'text', sizePt: wordPt, leadingPt: wordPt * 1.16, colour: 'ink' };
  const strong: TypeStyle = { ...word, font: 'textBold', sizePt: strongPt };
  return {
    title: { font: 'heading', sizePt: titlePt, leadingPt: titlePt * 1.12, colour: 'accent' },
    lead: word,
    head: { ...strong, colour: 'accent' },
    unit: { ...word, colour: 'quietInk' },
    key: { font: 'textBold', sizePt: keyPt, leadingPt: keyPt * FIGURE_LEADING, colour: 'ink', tabular: true },
    word,
    strong,
    unknown: { ...strong, colour: 'caution' },
    note: word,
  };
}
