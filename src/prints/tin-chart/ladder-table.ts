/** The egg ladder: from a number of eggs to everything else and the tins it fills. */
import type { ChartColumn, EggLadder, LadderRung } from '../../views/tin-chart.types.ts';
import { paragraph } from '../sheet/lines.ts';
import { tableFits } from '../sheet/table/table.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import type { ChartContext } from './chart-context.ts';
import { amountCell, figureColumn, ingredientColumn, keyCell } from './figure-cells.ts';
import { fillParagraphs } from './row-words.ts';

const eggColumn = (name: string): Column => ({
  heading: [paragraph(name, typeScale.columnHead)],
  align: 'right',
});

export function ladderTable(ladder: EggLadder, context: ChartContext): TableSpec {
  const { labels } = context;
  return {
    key: 'ladder',
    zebra: true,
    columns: [
      eggColumn(labels.eggs),
      figureColumn(labels.batter, labels.grams),
      ...ladder.columns.map((column) => ingredientColumn(column, labels)),
      {
        heading: [paragraph(labels.fills, typeScale.columnHead)],
        align: 'left',
        narrowestMm: 45,
        widestMm: 95,
      },
    ],
    rows: ladder.rungs.map((rung) => ({
      cells: [
        { ...keyCell(rung.eggs.text), heading: true },
        keyCell(rung.batter.text),
        ...rung.amounts.map(amountCell),
        { paragraphs: fillParagraphs(rung, context) },
      ],
    })),
  };
}

const MOST_RUNGS_ACROSS = 6;

function runged<Item>(items: Item[], across: number): Item[][] {
  const tables = Math.ceil(items.length / across);
  return Array.from({ length: tables }, (_, index) => items.slice(index * across, (index + 1) * across));
}

/** For many ingredients: one row each and a column per number of eggs, a few at a time. */
export function turnedLadderTables(ladder: EggLadder, context: ChartContext, widthMm: number): TableSpec[] {
  for (let across = MOST_RUNGS_ACROSS; ; across -= 1) {
    const tables = runged(ladder.rungs, across).map((rungs, index) =>
      turnedTable(`ladder-${index}`, rungs, ladder.columns, context),
    );
    if (across === 1 || tables.every((spec) => tableFits(spec, widthMm, context.sheet))) return tables;
  }
}

function turnedTable(
  key: string,
  rungs: LadderRung[],
  ingredients: ChartColumn[],
  { labels }: ChartContext,
): TableSpec {
  const named = (text: string, type: TypeStyle): Cell => ({
    heading: true,
    paragraphs: [paragraph(text, type)],
  });
  return {
    key,
    whole: true,
    zebra: true,
    paddingMm: 1.1,
    columns: [
      {
        heading: [paragraph(labels.eggs, typeScale.columnHead)],
        align: 'left',
        narrowestMm: 44,
        widestMm: 60,
      },
      ...rungs.map(
        (rung): Column => ({
          heading: [],
          headingNumber: { text: rung.eggs.text, type: typeScale.key },
          align: 'right',
        }),
      ),
    ],
    rows: [
      {
        cells: [
          named(`${labels.batter}, ${labels.grams}`, typeScale.rowName),
          ...rungs.map((rung) => keyCell(rung.batter.text)),
        ],
      },
      ...ingredients.map((column, index) => ({
        cells: [
          named(`${column.name}, ${labels.grams}`, typeScale.ingredient),
          ...rungs.map((rung) => {
            const amount = rung.amounts[index];
            return amount ? amountCell(amount) : {};
          }),
        ],
      })),
    ],
  };
}

/** The fills alone, beside a turned ladder. */
export function fillsTable(ladder: EggLadder, context: ChartContext): TableSpec {
  return {
    key: 'fills',
    zebra: true,
    columns: [
      { ...eggColumn(context.labels.eggs), narrowestMm: 12 },
      {
        heading: [paragraph(context.labels.fills, typeScale.columnHead)],
        align: 'left',
        narrowestMm: 120,
      },
    ],
    rows: ladder.rungs.map((rung) => ({
      cells: [{ ...keyCell(rung.eggs.text), heading: true }, { paragraphs: fillParagraphs(rung, context) }],
    })),
  };
}
