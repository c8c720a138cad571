/** A day as lines to tick: time in 14 pt, what is done in bold, what waits below it. */
import type { DayView, TimetableRow } from '../../views/timetable/timetable.types.ts';
import type { TimetableWords } from '../../wording/timetable/index.ts';
import { TICK_COLUMN, tickCell } from '../order-sheet/tick-box.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Cell, Column, Row, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';

/** Read from the worktop. */
const CLOCK = { ...typeScale.key, sizePt: 14, leadingPt: 17 };
/** A look or a switch lies between other work: lighter, so that the eye finds the work. */
const BETWEEN = { ...CLOCK, font: 'text' as const };

const column = (text: string, rest: Partial<Column> = {}): Column => ({
  heading: [paragraph(text, typeScale.columnHead)],
  align: 'left',
  ...rest,
});

function rowCells(
  row: TimetableRow,
  showOrder: boolean,
  words: TimetableWords,
  context: SheetContext,
): Cell[] {
  const { kind, from, what, notes, minutes, forText, handsOn } = row;
  const isWork = handsOn || kind === 'hand-over';
  return [
    tickCell(words.toTick, context),
    { paragraphs: [paragraph(from, isWork ? CLOCK : BETWEEN)] },
    {
      heading: true,
      paragraphs: [
        paragraph(what, isWork ? typeScale.rowName : typeScale.figure),
        ...notes.map((note) => paragraph(note, typeScale.rowNote)),
      ],
    },
    ...(showOrder ? [{ paragraphs: [paragraph(forText, typeScale.rowNote)] }] : []),
    { paragraphs: [paragraph(minutes.value > 0 ? minutes.text : '', typeScale.figure)] },
  ];
}

export interface DayTableLook {
  /** Whose a line is: where there is more than one order. */
  showOrder: boolean;
  words: TimetableWords;
  context: SheetContext;
  widthMm: number;
  /** Above and below each line. */
  paddingMm: number;
}

/** Room for boxes, times, order and minutes; the rest is for words. */
const BESIDE_WORDS_MM = 82;
const LEAST_WORDS_MM = 60;

/** A reference is never broken at its hyphen. */
function referenceMm(rows: readonly TimetableRow[], { metrics }: SheetContext): number {
  const { font, sizePt } = typeScale.rowNote;
  const all = rows.flatMap(({ forText }) => forText.split(' '));
  return Math.max(0, ...all.map((text) => metrics.widthMm(text, font, sizePt)));
}

/** The lines of a day, as wide as the sheet. */
export function dayTable(
  { isoDate, rows }: DayView,
  { showOrder, words, context, widthMm, paddingMm }: DayTableLook,
): TableSpec {
  const { table } = words;
  const clockMm = context.metrics.widthMm('00:00', CLOCK.font, CLOCK.sizePt, true);
  return {
    key: `day-${isoDate}`,
    paddingMm,
    columns: [
      TICK_COLUMN,
      column(table.time, { narrowestMm: clockMm }),
      column(table.what, { narrowestMm: Math.max(LEAST_WORDS_MM, widthMm - BESIDE_WORDS_MM) }),
      ...(showOrder ? [column(table.order, { narrowestMm: referenceMm(rows, context), widestMm: 26 })] : []),
      column(table.lasts, { align: 'right', widestMm: 24 }),
    ],
    rows: rows.map((row): Row => ({ anchor: row.id, cells: rowCells(row, showOrder, words, context) })),
  };
}
