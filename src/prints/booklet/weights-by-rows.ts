/** Weights with a row for each tin: all ingredients across, or some at a time. */

import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { columnsFit, leastColumnsMm, table } from '../sheet/table/table.ts';
import type { Column, TableSpec } from '../sheet/table/types.ts';
import { noShortEnds } from './block-wraps.ts';
import { bookletType } from './booklet-type.ts';
import { headingOf, ROW_PADDING_MM } from './small-table.ts';
import { type TinsTold, type Told, tinHeading, toldInGroups } from './told-of-tins.ts';

const TIN_MM = 27;

function byRows({ recipe, words }: TinsTold, told: readonly Told[], part: number): TableSpec {
  return {
    key: `weights ${part}`,
    zebra: true,
    paddingMm: ROW_PADDING_MM,
    columns: [
      { heading: headingOf(words.recipe.tin, ''), align: 'left', narrowestMm: TIN_MM, widestMm: 42 },
      ...told.map(({ name, unit }): Column => ({ heading: headingOf(name, unit), align: 'right' })),
    ],
    rows: recipe.rows.map((row) => ({
      ...(part === 0 ? { anchor: row.anchor } : {}),
      cells: [
        { heading: true, paragraphs: [tinHeading(row, bookletType.rowName)] },
        ...told.map(({ cell }) => cell(row)),
      ],
    })),
  };
}

/** What is told of the tins, with the least widths it takes. */
export interface RowPlan {
  parts: TinsTold;
  groups: readonly Told[][];
  tinMm: number;
  /** By what is told. */
  leastMm: ReadonlyMap<Told, number>;
}

/** Measures every column once. */
export function rowPlan(parts: TinsTold, context: SheetContext): RowPlan {
  const groups = toldInGroups(parts);
  const told = groups.flat();
  const [tinMm = 0, ...leastMm] = leastColumnsMm(byRows(parts, told, 0), context);
  return { parts, groups, tinMm, leastMm: new Map(told.map((one, index) => [one, leastMm[index] ?? 0])) };
}

const fits = ({ tinMm, leastMm }: RowPlan, told: readonly Told[], widthMm: number): boolean =>
  columnsFit([tinMm, ...told.map((one) => leastMm.get(one) ?? 0)], widthMm);

const blockOf = (plan: RowPlan, told: readonly Told[], part: number): Block =>
  noShortEnds(table(byRows(plan.parts, told, part)));

/** All in one table, without surplus or fill where they have no room; null when it does not fit. */
export function wholeTable(plan: RowPlan, widthMm: number): Block | null {
  const told = plan.groups.flat();
  const shown = [0, 1, 2]
    .map((fewer) => told.slice(0, told.length - fewer))
    .find((some) => fits(plan, some, widthMm));
  return shown ? blockOf(plan, shown, 0) : null;
}

/** As many groups at a time as fit; null when not even one does. */
function filled(plan: RowPlan, groups: readonly Told[][], widthMm: number): Told[][] | null {
  const tables: Told[][] = [];
  for (const group of groups) {
    const last = tables.at(-1);
    if (last && fits(plan, [...last, ...group], widthMm)) last.push(...group);
    else if (fits(plan, group, widthMm)) tables.push([...group]);
    else return null;
  }
  return tables;
}

/** Evenly, where that takes no more tables. */
function evened(plan: RowPlan, groups: readonly Told[][], tables: Told[][], widthMm: number): Told[][] {
  const each = Math.ceil(groups.length / tables.length);
  const even = tables.map((_, index) => groups.slice(index * each, (index + 1) * each).flat());
  return even.every((told) => told.length > 0 && fits(plan, told, widthMm)) ? even : tables;
}

export interface PartTables {
  blocks: Block[];
  /** About how high they stand together. */
  heightMm: number;
}

const EXTRAS = 2;
const HEAD_MM = 16;
const ROW_MM = 4.3;

/** Some ingredients at a time, an amount and its spoons together; null when not even one fits. */
export function partTables(plan: RowPlan, widthMm: number): PartTables | null {
  const all = filled(plan, plan.groups, widthMm);
  if (all === null) return null;
  const fewer = plan.groups.slice(0, -EXTRAS);
  // Fill and surplus are not worth a table of their own.
  const bare = (all.at(-1)?.length ?? 0) > EXTRAS ? all : (filled(plan, fewer, widthMm) ?? all);
  const isBare = bare.length < all.length;
  const tables = evened(plan, isBare ? fewer : plan.groups, isBare ? bare : all, widthMm);
  return {
    blocks: tables.map((told, index) => blockOf(plan, told, index)),
    heightMm: tables.length * (HEAD_MM + plan.parts.recipe.rows.length * ROW_MM),
  };
}
