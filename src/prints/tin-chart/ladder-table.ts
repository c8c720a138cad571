/** The egg ladder: from a number of eggs to everything else and the tins it fills. */
import type { EggLadder } from '../../views/tin-chart.types.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Column, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';
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

/** For many ingredients: one row each, a column per number of eggs. */
export function turnedLadderTable(ladder: EggLadder, context: ChartContext): TableSpec {
  const { labels } = context;
  const figures = ladder.rungs.map(
    (rung): Column => ({
      heading: [paragraph(rung.eggs.text, { ...typeScale.key, sizePt: 14 })],
      align: 'right',
    }),
  );
  return {
    key: 'ladder',
    zebra: true,
    paddingMm: 1.2,
    columns: [
      { heading: [paragraph(labels.eggs, typeScale.columnHead)], align: 'left', widestMm: 46 },
      ...figures,
    ],
    rows: [
      {
        cells: [
          { heading: true, paragraphs: [paragraph(`${labels.batter}, ${labels.grams}`, typeScale.rowName)] },
          ...ladder.rungs.map((rung) => ({ number: { text: rung.batter.text, type: typeScale.figure } })),
        ],
      },
      ...ladder.columns.map((column, index) => ({
        cells: [
          {
            heading: true,
            paragraphs: [paragraph(`${column.name}, ${labels.grams}`, { ...typeScale.rowNote, sizePt: 10 })],
          },
          ...ladder.rungs.map((rung) => {
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
