import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { type WorkingPage, workingPage } from '../../src/site/chart-page.ts';
import { type ChartViews, chartViews } from '../../src/views/chart-views.ts';
import { siteWordsFor } from '../../src/wording/site/index.ts';

const words = siteWordsFor('en-GB');

async function countedCharts(): Promise<{ charts: ChartViews[]; asked: string[] }> {
  const { content } = await readContent('test/kitchens/good/minimal');
  const [first] = content === null ? [] : chartViews(content);
  if (first === undefined) throw new Error('the kitchen has no chart');
  const asked: string[] = [];
  const charts = ['one', 'other'].map((id) => ({
    ...first,
    chart: { ...first.chart, id },
    working: () => {
      asked.push(id);
      return first.working();
    },
  }));
  return { charts, asked };
}

describe('the pages of the working', () => {
  it('work their steps out when they are read, and hold those of one chart at most', async () => {
    const { charts, asked } = await countedCharts();
    const pages = charts.map((views) => workingPage(views, words));
    expect(asked).toEqual([]);
    const text = (page: WorkingPage | undefined): string => JSON.stringify([page, page?.rows]);
    const [one, other] = pages;
    const before = text(one);
    expect(one?.rows.length).toBeGreaterThan(0);
    expect(asked).toEqual(['one']);
    text(other);
    expect(text(one)).toBe(before);
    expect(asked).toEqual(['one', 'other', 'one']);
  });

  it('are the same ones for what is remembered of a chart', async () => {
    const { charts } = await countedCharts();
    const [views] = charts;
    if (views === undefined) throw new Error('no chart');
    expect(workingPage(views, words)).toBe(workingPage(views, words));
  });
});
