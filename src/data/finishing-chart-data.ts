/**
 * The finishing chart as data: a record for each tin and each finish in each use, with what belongs to the tin
 * repeated, so that a spreadsheet can filter it. JSON and CSV are both made from these records.
 */
import type { Figure } from '../views/figure.ts';
import type {
  FinishingCell,
  FinishingChartView,
  FinishingColumn,
  FinishingRow,
} from '../views/finishing-chart.types.ts';
import type { Json } from './canonical-json.ts';

export interface FinishingRecord {
  row: FinishingRow;
  column: FinishingColumn;
  cell: FinishingCell;
}

/** Every amount of the chart, tin by tin in the order of the columns. */
export function finishingRecords({ rows, columns }: FinishingChartView): FinishingRecord[] {
  return rows.flatMap((row) =>
    columns.flatMap((column, at) => {
      const cell = row.cells[at];
      return cell ? [{ row, column, cell }] : [];
    }),
  );
}

/** Figures that belong to a tin, by the names that data files give them. */
export function tinFigures(row: FinishingRow): Record<string, Figure> {
  return {
    cake_height_mm: row.cakeHeight,
    layers: row.layers,
    coated_across_mm: row.coatedAcross,
    coated_height_mm: row.coatedHeight,
    board_mm: row.board,
    box_side_mm: row.boxSide,
    box_height_mm: row.boxHeight,
    ribbon_mm: row.ribbon,
    ...(row.paperStrip === null
      ? {}
      : { paper_strip_length_mm: row.paperStrip.length, paper_strip_height_mm: row.paperStrip.height }),
  };
}

/** Figures of one amount. */
export function amountFigures({ needed, make, buy, sheet }: FinishingCell): Record<string, Figure> {
  return {
    needed_g: needed,
    make_g: make,
    ...(buy === null ? {} : { buy_g: buy }),
    ...(sheet === null ? {} : { sheet_across_mm: sheet.across, sheet_other_across_mm: sheet.otherAcross }),
  };
}

type Part = (figure: Figure) => number | string;

function picked(figures: Record<string, Figure>, pick: Part): { [key: string]: Json } {
  return Object.fromEntries(Object.entries(figures).map(([key, figure]) => [key, pick(figure)]));
}

function amountData({ column, cell }: FinishingRecord): Json {
  const figures = amountFigures(cell);
  return {
    id: column.id,
    finish: column.finish.id,
    finish_name: column.finish.name,
    kind: column.kind,
    use: column.use,
    use_text: column.useText,
    ...picked(figures, ({ value }) => value),
    sheet: cell.sheet === null ? null : { form: cell.sheet.form, text: cell.sheet.text },
    parts: column.parts.map(({ id, name }, at) => {
      const amount = cell.parts[at];
      if (amount === undefined) throw new Error(`no amount of ${id}`);
      return { id, name, grams: amount.figure.value, shown: amount.figure.text, beside: amount.spoons };
    }),
    shown: picked(figures, ({ text }) => text),
  };
}

function tinData(row: FinishingRow, records: readonly FinishingRecord[]): Json {
  const figures = tinFigures(row);
  return {
    id: row.id,
    name: row.tinName,
    size: row.sizeText,
    other_size: row.otherSizeText,
    owned: row.owned,
    ...picked(figures, ({ value }) => value),
    shown: picked(figures, ({ text }) => text),
    amounts: records.filter((record) => record.row === row).map(amountData),
  };
}

/** A finishing chart without its drawings and methods. */
export function finishingChartData(view: FinishingChartView): Json {
  const records = finishingRecords(view);
  return {
    id: view.id,
    title: view.title,
    kitchen: view.kitchenName,
    edition: view.edition,
    cautions: view.cautions.map(({ code, text }) => ({ code, text })),
    warnings: view.warnings.map(({ code, message }) => ({ code, message })),
    left_out: view.leftOut.map(({ id, text }) => ({ id, text })),
    tins: view.rows.map((row) => tinData(row, records)),
  };
}
