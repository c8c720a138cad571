/**
 * A recipe's weights for every tin, small: a row for each tin while the ingredients fit across the page; else a
 * column for each tin, as many as fit at a time, or the ingredients in turn, whichever takes less paper.
 */
import type { BookletRecipe, BookletRow } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { table, tableFits } from '../sheet/table/table.ts';
import type { Cell, Column, Row, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import { anchored, heightOfBlocks, noShortEnds, setOnce } from './block-wraps.ts';
import { bookletType } from './booklet-type.ts';
import { headingOf, ROW_PADDING_MM } from './small-table.ts';
import { type Told, toldInGroups, toldOfTins } from './told-of-tins.ts';

export interface WeightsParts {
  recipe: BookletRecipe;
  words: BookletWords;
  mass: 'g' | 'oz';
}

/** Room that a page gives the tables, mm. */
export interface WeightsRoom {
  widthMm: number;
  heightMm: number;
}

/** No figure column is narrower, with the gap before it: where to begin trying. */
const LEAST_FIGURE_MM = 7;
const LEAST_GAP_MM = 3.5;
const TIN_MM = 27;

/** 'Tray a b': the letters lead to the remarks below. */
function nameOf({ name, remarks }: BookletRow, type: TypeStyle): Paragraph {
  if (remarks.length === 0) return paragraph(name, type);
  const letters = `\u00a0${remarks.join('\u00a0')}`;
  return { spans: [{ text: name }, { text: letters, font: 'textItalic', colour: 'accent' }], type };
}

function byRows({ recipe, words }: WeightsParts, told: readonly Told[], part: number): TableSpec {
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
        { heading: true, paragraphs: [nameOf(row, bookletType.rowName)] },
        ...told.map(({ cell }) => cell(row)),
      ],
    })),
  };
}

/** Baseline to baseline where a table of every ingredient is to share a page with another. */
const CLOSE_PT = 10.4;

const closeSet = (cell: Cell): Cell => ({
  ...cell,
  ...(cell.number ? { number: { ...cell.number, type: { ...cell.number.type, leadingPt: CLOSE_PT } } } : {}),
  paragraphs: (cell.paragraphs ?? []).map((text) => ({
    ...text,
    type: { ...text.type, leadingPt: CLOSE_PT },
  })),
});

const NAMES_MM = 22;
const LEAST_TIN_MM = 13.5;

function byColumns(parts: WeightsParts, rows: readonly BookletRow[], part: number): TableSpec {
  const { columnHead, rowWord, rowName, quiet } = bookletType;
  // Spoons that none of these tins needs are left out.
  const isSaid = ({ weight, cell }: Told): boolean =>
    weight !== 'quiet' || rows.some((row) => Object.keys(cell(row)).length > 0);
  const close = (type: TypeStyle): TypeStyle => ({ ...type, leadingPt: CLOSE_PT });
  const labels = { strong: close(rowName), plain: close(rowWord), quiet: close(quiet) };
  return {
    key: `weights ${part}`,
    zebra: true,
    paddingMm: 0.02,
    whole: true,
    columns: [
      {
        heading: headingOf(parts.words.recipe.weightsIn(parts.mass), ''),
        align: 'left',
        narrowestMm: NAMES_MM,
        widestMm: 38,
      },
      ...rows.map(
        (row): Column => ({
          heading: [nameOf(row, columnHead)],
          align: 'right',
          narrowestMm: LEAST_TIN_MM,
          widestMm: 20,
        }),
      ),
    ],
    rows: toldOfTins(parts, 2)
      .filter(isSaid)
      .map(({ name, unit, weight, cell }): Row => {
        const label = unit === '' || unit === parts.mass ? name : `${name}, ${unit}`;
        return {
          cells: [
            { heading: true, paragraphs: [paragraph(label, labels[weight])] },
            ...rows.map((row) => closeSet(cell(row))),
          ],
        };
      }),
  };
}

/** Parts of equal size, or one less. */
function inParts<T>(all: readonly T[], each: number): T[][] {
  const count = Math.ceil(all.length / each);
  const even = Math.ceil(all.length / count);
  return Array.from({ length: count }, (_, index) => all.slice(index * even, (index + 1) * even));
}

/** With as many tins across as fit; null when not even one does. */
function columnTables(parts: WeightsParts, widthMm: number, context: SheetContext): Block[] | null {
  const { rows } = parts.recipe;
  const room = Math.floor((widthMm - NAMES_MM) / (LEAST_TIN_MM + LEAST_GAP_MM));
  for (let most = Math.max(1, Math.min(room, rows.length)); most >= 1; most -= 1) {
    const groups = inParts(rows, most).map((group, index) => ({
      group,
      spec: byColumns(parts, group, index),
    }));
    const specs = groups.map(({ spec }) => spec);
    if (fitsAll(specs, widthMm, context))
      return groups.map(({ group, spec }) =>
        setOnce(
          anchored(
            table(spec),
            group.map(({ anchor }) => anchor),
          ),
        ),
      );
  }
  return null;
}

const fitsAll = (specs: readonly TableSpec[], widthMm: number, context: SheetContext): boolean =>
  specs.every((spec) => tableFits(spec, widthMm, context));

/** As many groups at a time as fit; null when not even one does. */
function filledTables(
  parts: WeightsParts,
  groups: readonly Told[][],
  widthMm: number,
  context: SheetContext,
): Told[][] | null {
  const filled: Told[][] = [];
  for (const group of groups) {
    const last = filled.at(-1);
    if (last && tableFits(byRows(parts, [...last, ...group], 0), widthMm, context)) last.push(...group);
    else if (tableFits(byRows(parts, group, 0), widthMm, context)) filled.push([...group]);
    else return null;
  }
  return filled;
}

/** With as many ingredients across as fit, evenly where that fits too; an amount and its spoons stay together. */
function turnedTables(parts: WeightsParts, widthMm: number, context: SheetContext): Block[] | null {
  // Fill and surplus are not worth a table of their own.
  const full = filledTables(parts, toldInGroups(parts, 2), widthMm, context);
  const bare =
    (full?.at(-1)?.length ?? 0) > 2 ? null : filledTables(parts, toldInGroups(parts, 0), widthMm, context);
  const isShorter = bare !== null && full !== null && bare.length < full.length;
  const filled = isShorter ? bare : full;
  if (filled === null) return null;
  const groups = toldInGroups(parts, isShorter ? 0 : 2);
  const even = inParts(groups, Math.ceil(groups.length / filled.length)).map((some, index) =>
    byRows(parts, some.flat(), index),
  );
  const specs = fitsAll(even, widthMm, context)
    ? even
    : filled.map((told, index) => byRows(parts, told, index));
  return specs.map((spec) => setOnce(noShortEnds(table(spec))));
}

const TABLE_SPACE_MM = 4;

/** Pages that tables take which are each kept whole. */
function pagesOf(
  blocks: readonly Block[],
  { widthMm, heightMm }: WeightsRoom,
  context: SheetContext,
): number {
  let pages = 0;
  let usedMm = heightMm;
  for (const block of blocks) {
    const tallMm = heightOfBlocks([block], widthMm, context);
    if (usedMm + tallMm > heightMm) {
      pages += 1;
      // The first on a page has no space above it.
      usedMm = -TABLE_SPACE_MM;
    }
    usedMm += tallMm;
  }
  return pages - 1 + usedMm / heightMm;
}

/** So much more paper is well spent on having all of a tin's weights in one place. */
const WORTH_PAGES = 0.6;

/** The tables of a recipe's weights. Throws when they do not fit the page's width in any form. */
export function weightsTables(parts: WeightsParts, room: WeightsRoom, context: SheetContext): Block[] {
  if (parts.recipe.rows.length === 0) return [];
  const { widthMm, heightMm } = room;
  const fewest = toldOfTins(parts, 0).length;
  const isHopeless = TIN_MM + fewest * (LEAST_FIGURE_MM + LEAST_GAP_MM) > widthMm;
  const wide = (isHopeless ? [] : [2, 1, 0])
    .map((extras) => byRows(parts, toldOfTins(parts, extras), 0))
    .find((spec) => tableFits(spec, widthMm, context));
  if (wide) return [noShortEnds(table(wide))];
  const columns = columnTables(parts, widthMm, context);
  const turned = turnedTables(parts, widthMm, context);
  if (columns === null && turned === null)
    throw new Error(`the weights of '${parts.recipe.id}' do not fit the booklet`);
  if (columns === null || turned === null) return columns ?? turned ?? [];
  const across = pagesOf(columns, room, context);
  const inTurn = heightOfBlocks(turned, widthMm, context) / heightMm;
  return across <= inTurn + WORTH_PAGES ? columns : turned;
}
