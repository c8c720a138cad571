/** The demo kitchen as the tests ask for it, read and worked out once a worker. Nobody changes what they are given. */

import type { Content } from '../../src/domain/content.ts';
import { readContent } from '../../src/read/content.ts';
import { type ChartViews, chartViews } from '../../src/views/chart-views.ts';

let reading: ReturnType<typeof readContent> | null = null;

/** What `readContent('content')` says. */
export function readDemo(): ReturnType<typeof readContent> {
  reading ??= readContent('content');
  return reading;
}

/** The demo's content. Throws where it cannot be read, which the tests of reading tell more of. */
export async function demoContent(): Promise<Content> {
  const { content } = await readDemo();
  if (content === null) throw new Error('the demo cannot be read');
  return content;
}

const worked = new WeakMap<Content, ChartViews[]>();

/** The charts of a content that several test files ask for. */
export function chartsOf(content: Content): ChartViews[] {
  const known = worked.get(content);
  if (known !== undefined) return known;
  const charts = chartViews(content);
  worked.set(content, charts);
  return charts;
}
