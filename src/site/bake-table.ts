/** The oven's part of a chart page: one row per tin, whatever the number of tins of that kind in the mix. */
import type { Locale } from '../domain/kitchen.ts';
import { tinPath, workingPath } from '../views/nav.ts';
import type { TinChartRow, TinChartView } from '../views/tin-chart.types.ts';
import { type BakeWords, bakeWordsFor } from '../wording/bake/index.ts';

interface BakeRow {
  tinPath: string;
  tinName: string;
  sizeText: string;
  bakedText: string;
  dialText: string;
  othersText: string;
  firstLookText: string;
  expectedByText: string;
  likelyText: string;
  advice: string;
  behindText: string;
  /** Where the row's times are worked out, from the site's root. */
  workingPath: string;
}

export interface BakeTable {
  words: Pick<BakeWords, 'section' | 'lead' | 'doneTests' | 'columns' | 'whence'>;
  basisText: string;
  waterText: string;
  path: string;
  rows: BakeRow[];
}

function bakeRow(
  { id, tinId, tinName, sizeText, bake, baked }: TinChartRow,
  chartId: string,
  words: BakeWords,
): BakeRow[] {
  if (!bake) return [];
  return [
    {
      tinPath: tinPath(tinId),
      tinName,
      sizeText,
      bakedText: baked ? words.baked(baked.text) : '',
      dialText: bake.dial.text,
      othersText: bake.dialOthers,
      firstLookText: bake.firstLook.text,
      expectedByText: bake.expectedBy.text,
      likelyText: words.likely(bake.likely.text),
      advice: bake.advice,
      behindText: bake.bakes.text,
      workingPath: `${workingPath(chartId)}#${id}`,
    },
  ];
}

/** The rows that bake alike stand once; null for a chart without bake times. */
export function bakeTable({ id, bake, rows }: TinChartView, locale: Locale): BakeTable | null {
  if (!bake) return null;
  const words = bakeWordsFor(locale);
  const { section, lead, doneTests, columns, whence } = words;
  const each = rows.filter((row, at) => rows.findIndex(({ tinId }) => tinId === row.tinId) === at);
  return {
    words: { section, lead, doneTests, columns, whence },
    ...bake,
    rows: each.flatMap((row) => bakeRow(row, id, words)),
  };
}
