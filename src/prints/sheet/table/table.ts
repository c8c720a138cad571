/** A table as a block of the flow. */
import type { SheetContext } from '../sheet-context.ts';
import { type Block, keptTogether } from '../strip.ts';
import { normalised } from './normalise.ts';
import { renderedStrips } from './render.ts';
import { leastWidthsMm, sizedColumns, standBeside } from './size.ts';
import { styledRow } from './style.ts';
import type { SizedColumn, TableSpec } from './types.ts';

const ROW_PADDING_MM = 1.9;
const SPACE_MM = 4;
/** Text keeps clear of the edge of a shaded row. */
const ZEBRA_INSET_MM = 2;

const insetOf = ({ zebra }: TableSpec): number => (zebra ? ZEBRA_INSET_MM : 0);

function sizedFor(spec: TableSpec, widthMm: number, context: SheetContext): SizedColumn[] | null {
  const inset = insetOf(spec);
  const columns = sizedColumns(spec.columns, normalised(spec), widthMm - 2 * inset, context);
  return columns?.map((column) => ({ ...column, xMm: column.xMm + inset })) ?? null;
}

/** Whether the table can be set in this width without cutting a word or a figure. */
export const tableFits = (table: TableSpec, widthMm: number, context: SheetContext): boolean =>
  standBeside(leastColumnsMm(table, context), widthMm - 2 * insetOf(table));

/** The least width of each of a table's columns, mm: to choose which of them to set together. */
export const leastColumnsMm = (spec: TableSpec, context: SheetContext): number[] =>
  leastWidthsMm(spec.columns, normalised(spec), context);

/** Whether a shaded table of columns of at least these widths fits. */
export const columnsFit = (leastMm: readonly number[], widthMm: number): boolean =>
  standBeside(leastMm, widthMm - 2 * ZEBRA_INSET_MM);

/** Throws when the table does not fit: ask `tableFits` first where the content decides. */
export const table =
  (spec: TableSpec): Block =>
  (widthMm, context) => {
    const rows = normalised(spec);
    const columns = sizedFor(spec, widthMm, context);
    if (!columns) throw new Error(`table '${spec.key}' does not fit ${widthMm} mm`);
    const styled = rows.map((row) => styledRow(row, columns, spec.paddingMm ?? ROW_PADDING_MM, context));
    const look = { key: spec.key, zebra: spec.zebra ?? false, spaceMm: spec.spaceMm ?? SPACE_MM };
    const strips = renderedStrips(look, columns, styled, widthMm, context);
    return spec.whole ? keptTogether(strips) : strips;
  };
