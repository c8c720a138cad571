import { beforeAll, describe, expect, it } from 'vitest';
import { eggLadderCsv, eggLadderJson } from '../../src/data/egg-ladder-data.ts';
import { tinChartCsv } from '../../src/data/tin-chart-csv.ts';
import { tinChartJson } from '../../src/data/tin-chart-json.ts';
import { chartInput } from '../../src/views/chart-inputs.ts';
import { recipeBakes } from '../../src/views/recipe-bakes.ts';
import { tinChartView } from '../../src/views/tin-chart.ts';
import type { TinChartView } from '../../src/views/tin-chart.types.ts';
import { demoContent } from '../samples/demo.ts';
import { eggLadderCell, tinChartCell } from './support/chart-in-csv.ts';
import { csvRecords } from './support/csv-records.ts';
import { type Leaf, leavesOf } from './support/leaves.ts';

let charts: TinChartView[] = [];

beforeAll(async () => {
  const content = await demoContent();
  charts = content.recipes.map((recipe) =>
    tinChartView(chartInput(content, recipe, [], recipeBakes(recipe, content))),
  );
});

/** Leaves whose cell says something else. */
function differing(leaves: Leaf[], cellOf: (path: Leaf['path']) => string): string[] {
  return leaves
    .filter(({ path, value }) => cellOf(path) !== (value === null ? '' : String(value)))
    .map(({ path, value }) => `${path.join('.')}: ${value} in JSON, ${cellOf(path)} in CSV`);
}

describe('the data files of every demo chart', () => {
  it('hold every leaf of the chart’s JSON in its CSV too', () => {
    let count = 0;
    for (const chart of charts) {
      const leaves = leavesOf(JSON.parse(tinChartJson(chart)));
      const records = csvRecords(tinChartCsv(chart));
      expect(differing(leaves, (path) => tinChartCell(records, path))).toEqual([]);
      count += leaves.length;
    }
    expect(count).toBeGreaterThan(charts.length * 100);
    console.log(`tin charts: ${count} leaves of JSON found in CSV`);
  });

  it('hold every leaf of the ladder’s JSON in its CSV too', () => {
    let count = 0;
    for (const chart of charts) {
      if (chart.ladder === null) continue;
      const leaves = leavesOf(JSON.parse(eggLadderJson(chart, chart.ladder)));
      const records = csvRecords(eggLadderCsv(chart, chart.ladder));
      expect(differing(leaves, (path) => eggLadderCell(records, path))).toEqual([]);
      count += leaves.length;
    }
    expect(count).toBeGreaterThan(charts.length * 20);
    console.log(`egg ladders: ${count} leaves of JSON found in CSV`);
  });

  it('notice a figure that is in one and not in the other', () => {
    const [chart] = charts;
    if (chart === undefined) throw new Error('no chart');
    const leaves = leavesOf(JSON.parse(tinChartJson(chart)));
    const records = csvRecords(tinChartCsv(chart));
    records[0] = { ...records[0], 'batter (g)': '1' };
    expect(differing(leaves, (path) => tinChartCell(records, path))).toHaveLength(1);
    const extra: Leaf = { path: ['tins', 0, 'not_in_csv_mm'], value: 1 };
    expect(() => differing([extra], (path) => tinChartCell(records, path))).toThrow('no column');
  });

  it('give the header its units', () => {
    for (const chart of charts) {
      const [record = {}] = csvRecords(tinChartCsv(chart));
      expect(Object.keys(record)).toEqual(
        expect.arrayContaining(['volume (mL)', 'batter (g)', 'raw fill (mm)', 'surplus (g)']),
      );
    }
  });
});
