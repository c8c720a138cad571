/**
 * Type sizes of the wall, by distance: key figures are read from 2 m, words from 1.2 m, and notes, where a sheet is
 * too full for more, from 0.9 m. Capitals are at least 1/215 of that distance (ISO 9241-303, from memory): 9.3 mm,
 * 5.6 mm and 4.2 mm, about 40 pt, 24 pt and 18 pt in most text faces, measured in the very font. Where a sheet has
 * room, everything grows together.
 */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

/** Capitals are at least this part of the distance. */
const CAPITAL_SHARE = 215;
const KEY_DISTANCE_M = 2;
const WORD_DISTANCE_M = 1.2;
const NOTE_DISTANCE_M = 0.9;
const LEAST_PT = { key: 40, word: 24, note: 18 };

export interface WallType {
  title: TypeStyle;
  lead: TypeStyle;
  head: TypeStyle;
  unit: TypeStyle;
  key: TypeStyle;
  word: TypeStyle;
  strong: TypeStyle;
  unknown: TypeStyle;
  quiet: TypeStyle;
  note: TypeStyle;
}

/** How large, and how close: one step of what a layout may try. */
export interface WallSizing {
  /** 1 and more. */
  growth: number;
  /** Notes as large as words, or as small as 0.9 m allows. */
  notes: 'as words' | 'close up';
}

/** Figures have no descenders, so their rows can stand closer than words. */
const FIGURE_LEADING = 0.86;
const WORD_LEADING = 1.16;

const toHalf = (pt: number): number => Math.ceil(pt * 2 - 1e-6) / 2;

/** The sizes at a growth of 1 and more. */
export function wallType({ growth, notes }: WallSizing, { metrics }: SheetContext): WallType {
  const sized = (distanceM: number, leastPt: number, font: 'text' | 'textBold') => {
    const capitalMm = (distanceM * 1000) / CAPITAL_SHARE;
    return toHalf(growth * Math.max(leastPt, capitalMm / metrics.capHeightMm(font, 1)));
  };
  const keyPt = sized(KEY_DISTANCE_M, LEAST_PT.key, 'textBold');
  const wordPt = sized(WORD_DISTANCE_M, LEAST_PT.word, 'text');
  const strongPt = sized(WORD_DISTANCE_M, LEAST_PT.word, 'textBold');
  const notePt = notes === 'as words' ? wordPt : sized(NOTE_DISTANCE_M, LEAST_PT.note, 'text');
  const titlePt = toHalf(wordPt * 1.6);
  const word: TypeStyle = { font: 'text', sizePt: wordPt, leadingPt: wordPt * WORD_LEADING, colour: 'ink' };
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
    quiet: { ...word, colour: 'quietInk' },
    note: { ...word, sizePt: notePt, leadingPt: notePt * WORD_LEADING },
  };
}
