/** Weights with a column for each tin: everything that goes into it in one place. */
import type { BookletRow } from '../../views/booklet/booklet.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { columnsFit, leastColumnsMm, table } from '../sheet/table/table.ts';
import type { Cell, Column, Row, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import { anchored, setOnce } from './block-wraps.ts';
import { bookletType } from './booklet-type.ts';
import { headingOf } from './small-table.ts';
import { type TinsTold, type Told, tinHeading, toldInGroups } from './told-of-tins.ts';

/** Baseline to baseline: a table of every ingredient is to share a page with another. */
const CLOSE_PT = 10.4;
const NAMES_MM = 22;
const LEAST_TIN_MM = 13.5;

const closer = new Map<TypeStyle, TypeStyle>();

/** One style for each, so that what is measured in it is remembered. */
function close(type: TypeStyle): TypeStyle {
  const known = closer.get(type) ?? { ...type, leadingPt: CLOSE_PT };
  closer.set(type, known);
  return known;
}

const closeSet = (cell: Cell): Cell => ({
  ...cell,
  ...(cell.number ? { number: { ...cell.number, type: close(cell.number.type) } } : {}),
  paragraphs: (cell.paragraphs ?? []).map((text) => ({ ...text, type: close(text.type) })),
});

const labels: Record<Told['weight'], TypeStyle> = {
  strong: close(bookletType.rowName),
  plain: close(bookletType.rowWord),
  quiet: close(bookletType.quiet),
};

function rowOf({ name, unit, weight, cell }: Told, rows: readonly BookletRow[], mass: string): Row {
  const label = unit === '' || unit === mass ? name : `${name}, ${unit}`;
  return {
    cells: [
      { heading: true, paragraphs: [paragraph(label, labels[weight])] },
      ...rows.map((row) => closeSet(cell(row))),
    ],
  };
}

/** Spoons that none of these tins needs are left out. */
const isSaid = ({ weight, cell }: Told, rows: readonly BookletRow[]): boolean =>
  weight !== 'quiet' || rows.some((row) => Object.keys(cell(row)).length > 0);

function byColumns(
  { words, mass }: TinsTold,
  told: readonly Told[],
  rows: readonly BookletRow[],
  part: number,
): TableSpec {
  const tinColumn = (row: BookletRow): Column => ({
    heading: [tinHeading(row, bookletType.columnHead)],
    align: 'right',
    narrowestMm: LEAST_TIN_MM,
    widestMm: 20,
  });
  return {
    key: `weights ${part}`,
    zebra: true,
    paddingMm: 0.02,
    whole: true,
    columns: [
      {
        heading: headingOf(words.recipe.weightsIn(mass), ''),
        align: 'left',
        narrowestMm: NAMES_MM,
        widestMm: 38,
      },
      ...rows.map(tinColumn),
    ],
    rows: told.filter((one) => isSaid(one, rows)).map((one) => rowOf(one, rows, mass)),
  };
}

/** Parts of equal size, or one less. */
function inParts<T>(all: readonly T[], most: number): T[][] {
  const count = Math.ceil(all.length / most);
  const each = Math.ceil(all.length / count);
  return Array.from({ length: count }, (_, index) => all.slice(index * each, (index + 1) * each));
}

/** The most tins that stand side by side wherever the row of tins is cut; 0 when not even one does. */
function mostAcross(namesMm: number, tinsMm: readonly number[], widthMm: number): number {
  for (let most = tinsMm.length; most >= 1; most -= 1)
    if (inParts(tinsMm, most).every((some) => columnsFit([namesMm, ...some], widthMm))) return most;
  return 0;
}

/** With as many tins across as fit; null when not even one does. */
export function columnTables(parts: TinsTold, widthMm: number, context: SheetContext): Block[] | null {
  const { rows } = parts.recipe;
  const told = toldInGroups(parts).flat();
  const [namesMm = 0, ...tinsMm] = leastColumnsMm(byColumns(parts, told, rows, 0), context);
  const most = mostAcross(namesMm, tinsMm, widthMm);
  if (most === 0) return null;
  return inParts(rows, most).map((group, index) => {
    const names = group.map(({ anchor }) => anchor);
    return setOnce(anchored(table(byColumns(parts, told, group, index)), names));
  });
}
