/**
 * The data of many chart pages, as the site hands it to its templates: one real chart, to be repeated so many times. It
 * has twelve tins, two where there are so many pages that Eleventy could not hold their text.
 */
import { writeFileSync } from 'node:fs';
import { readContent } from '../../src/read/content.ts';
import { siteData } from '../../src/site/site-data.ts';
import { chartViews } from '../../src/views/chart-views.ts';

const [path = '', count = '1000'] = process.argv.slice(2);
const { content } = await readContent('content');
if (content === null) throw new Error('the demo cannot be read');
const few = { ...content, recipes: content.recipes.slice(0, 1), flavours: [], orders: [] };
const data = siteData({ content: few, charts: chartViews(few), files: [], logoSvg: null });
const [page] = data.chartPages;
if (page === undefined) throw new Error('the demo has no chart');
const rows = page.rows.slice(0, Number(count) > 1000 ? 2 : 12);
const lists = Object.entries(data).map(([key, value]) => [
  key,
  // Every other page would be made too.
  Array.isArray(value) && key !== 'nav' && key !== 'footerLinks' ? [] : value,
]);
writeFileSync(
  path,
  JSON.stringify({
    ...Object.fromEntries(lists),
    repeated: { page: { ...page, rows }, count: Number(count) },
    locale: content.kitchen.locale,
  }),
);
console.log('took 0');
