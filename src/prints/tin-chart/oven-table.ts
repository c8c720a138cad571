/** The oven's part of a tin chart: dial, first look, done by, core and band; tins of a kind stand once. */
import type { Locale } from '../../domain/kitchen.ts';
import type { BakeFigures } from '../../views/bake-figures.types.ts';
import type { TinChartRow, TinChartView } from '../../views/tin-chart.types.ts';
import { type BakeWords, bakeWordsFor } from '../../wording/bake/index.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { table } from '../sheet/table/table.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';

const strong = { ...typeScale.rowName, tabular: true };

const column = (text: string, narrowestMm: number, widestMm: number): Column => ({
  heading: [paragraph(text, typeScale.columnHead)],
  align: 'left',
  narrowestMm,
  widestMm,
});

const cell = (main: string, below = ''): Cell => ({
  paragraphs: [paragraph(main, strong), ...(below === '' ? [] : [paragraph(below, typeScale.rowDetail)])],
});

/** The tin's name, its size and what its cake weighs when baked. */
function tinCell({ tinName, sizeText, baked }: TinChartRow, words: BakeWords): Cell {
  const weight = baked ? [paragraph(words.baked(baked.text), typeScale.rowDetail)] : [];
  return {
    heading: true,
    paragraphs: [paragraph(tinName, strong), paragraph(sizeText, typeScale.rowDetail), ...weight],
  };
}

function cells(row: TinChartRow, bake: BakeFigures, words: BakeWords): Cell[] {
  return [
    tinCell(row, words),
    cell(bake.dial.text, bake.dialOthers),
    cell(bake.firstLook.text),
    cell(bake.expectedBy.text, words.likely(bake.likely.text)),
    {
      paragraphs: [
        paragraph(bake.advice, typeScale.rowNote),
        paragraph(words.restsOn(bake.bakes.text), typeScale.rowDetail),
      ],
    },
  ];
}

function ovenTable(view: TinChartView, words: BakeWords): TableSpec {
  const { tin, dial, firstLook, expectedBy, advice } = words.columns;
  const each = view.rows.filter((row, at) => view.rows.findIndex(({ tinId }) => tinId === row.tinId) === at);
  return {
    key: 'oven',
    zebra: true,
    paddingMm: 1.1,
    columns: [
      column(tin, 34, 52),
      column(dial, 28, 46),
      column(firstLook, 17, 24),
      column(expectedBy, 31, 36),
      column(advice, 36, 90),
    ],
    rows: each.flatMap((row) => (row.bake ? [{ cells: cells(row, row.bake, words) }] : [])),
  };
}

/** The section, or none for a chart without bake times. */
export function ovenSection(view: TinChartView, lang: Locale): Section[] {
  if (!view.bake) return [];
  const words = bakeWordsFor(lang);
  return [
    {
      key: 'oven',
      startsPage: true,
      blocks: [
        heading(words.section, {
          level: 2,
          type: typeScale.section,
          bookmark: words.section,
          anchor: 'oven',
        }),
        textParagraph('oven-lead', paragraph(`${words.lead} ${words.doneTests}`, typeScale.body), 1),
        textParagraph(
          'oven-basis',
          paragraph(`${view.bake.basisText} ${view.bake.waterText}`, typeScale.body),
          1,
        ),
        table(ovenTable(view, words)),
      ],
    },
  ];
}
