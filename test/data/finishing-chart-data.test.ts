import { beforeAll, describe, expect, it } from 'vitest';
import { finishingChartCsv, finishingChartJson } from '../../src/data/finishing-chart-files.ts';
import { finishingChartView } from '../../src/views/finishing-chart.ts';
import type { FinishingChartView } from '../../src/views/finishing-chart.types.ts';
import { demoContent } from '../samples/demo.ts';
import { type CsvRecord, cellText, csvRecords } from './support/csv-records.ts';
import { leavesOf } from './support/leaves.ts';

let view: FinishingChartView;
beforeAll(async () => {
  const content = await demoContent();
  view = finishingChartView(content);
});

const NAMES: Record<string, string> = {
  name: 'name',
  size: 'size',
  other_size: 'size in other units',
  owned: 'owned',
  id: 'amount',
  finish: 'finish',
  finish_name: 'finish name',
  kind: 'kind',
  use: 'use',
  use_text: 'use in words',
};
const FIGURES: Record<string, string> = {
  cake_height_mm: 'cake height (mm)',
  layers: 'layers (count)',
  coated_across_mm: 'coated across (mm)',
  coated_height_mm: 'coated height (mm)',
  board_mm: 'board (mm)',
  box_side_mm: 'box side (mm)',
  box_height_mm: 'box height (mm)',
  ribbon_mm: 'ribbon (mm)',
  paper_strip_length_mm: 'paper strip length (mm)',
  paper_strip_height_mm: 'paper strip height (mm)',
  needed_g: 'on the cake (g)',
  make_g: 'make (g)',
  buy_g: 'buy (g)',
  sheet_across_mm: 'sheet across (mm)',
  sheet_other_across_mm: 'sheet other way across (mm)',
};
const PART: Record<string, string> = {
  id: '',
  name: ' name',
  grams: ' (g)',
  shown: ' (g) shown',
  beside: ' beside',
};

/** The header that a leaf below a tin or an amount stands under. */
function headerOf(path: (string | number)[]): string {
  const [first, second, third] = path;
  if (first === 'shown') return `${FIGURES[String(second)]} shown`;
  if (first === 'sheet') return second === 'form' ? 'sheet form' : 'sheet';
  if (first === 'parts') return `part ${Number(second) + 1}${PART[String(third)]}`;
  return FIGURES[String(first)] ?? NAMES[String(first)] ?? `unknown ${path.join('.')}`;
}

function recordsOfTin(records: readonly CsvRecord[], tin: unknown): CsvRecord[] {
  return records.filter((record) => record.tin === String(tin));
}

describe('the data files of the finishing chart', () => {
  it('hold every leaf of the JSON in the CSV too', () => {
    const data = JSON.parse(finishingChartJson(view));
    const records = csvRecords(finishingChartCsv(view));
    let count = 0;
    for (const { amounts, id, ...tin } of data.tins) {
      const own = recordsOfTin(records, id);
      expect(own).toHaveLength(amounts.length);
      amounts.forEach((amount: unknown, at: number) => {
        const record = own[at] ?? {};
        for (const { path, value } of [...leavesOf(tin), ...leavesOf(amount)]) {
          expect(cellText(record, headerOf(path))).toBe(value === null ? '' : String(value));
          count += 1;
        }
      });
    }
    expect(count).toBeGreaterThan(10_000);
    console.log(`finishing chart: ${count} leaves of JSON found in CSV`);
  });

  it('say cautions, warnings and what is left out once for each tin', () => {
    const data = JSON.parse(finishingChartJson(view));
    const [first = {}, second = {}] = csvRecords(finishingChartCsv(view));
    for (const { text } of data.cautions) expect(cellText(first, 'cautions')).toContain(text);
    for (const { message } of data.warnings) expect(cellText(first, 'chart warnings')).toContain(message);
    for (const { text } of data.left_out) expect(cellText(first, 'left out')).toContain(text);
    for (const key of ['id', 'title', 'kitchen', 'edition']) {
      expect(cellText(first, key === 'id' ? 'chart' : key)).toBe(data[key]);
    }
    expect(cellText(second, 'cautions')).toBe('');
  });
});
