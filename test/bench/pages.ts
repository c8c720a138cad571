/**
 * Pages made by Eleventy: `ours` with the site's own templates, each address a function and each body a layout; `bare`
 * as its guide shows, the same markup as the body of a template that runs over the data, its address written in it.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { Eleventy, type EleventyConfig } from '@11ty/eleventy';
import type { Locale } from '../../src/domain/kitchen.ts';
import { siteWordsFor } from '../../src/wording/site/index.ts';

const [kind, dataFile = '', output = ''] = process.argv.slice(2);
const data = JSON.parse(readFileSync(dataFile, 'utf8')) as {
  repeated: { page: { head: object }; count: number };
  locale: Locale;
};
// No file could hold ten thousand pages in one text.
const { page, count } = data.repeated;
const chartPages = Array.from({ length: count }, (_, index) => ({
  ...page,
  head: { ...page.head, path: `charts/${index}.html` },
}));
// A file holds no functions, and many of the words are some.
const site = { ...data, chartPages, words: siteWordsFor(data.locale) };
const TEMPLATES = 'templates';

function bareInput(): string {
  const folder = join(dirname(dataFile), 'bare-pages');
  mkdirSync(folder, { recursive: true });
  const body = readFileSync(join(TEMPLATES, 'layouts/chart.njk'), 'utf8');
  const head =
    '---\npagination:\n  data: site.chartPages\n  size: 1\n  alias: view\npermalink: "{{ view.head.path }}"\n---\n';
  writeFileSync(join(folder, 'chart.njk'), head + body);
  return folder;
}

const input = kind === 'bare' ? bareInput() : join(TEMPLATES, 'pages');
const from = (name: string): string => relative(input, join(TEMPLATES, name));
const before = performance.now();
const eleventy = new Eleventy(relative('.', input) || '.', output, {
  configPath: false,
  quietMode: true,
  config: (config: EleventyConfig) => {
    config.setIncludesDirectory(from('parts'));
    config.setLayoutsDirectory(from('layouts'));
    config.setDataDirectory(from('data'));
    config.setTemplateFormats(['njk']);
    config.setUseGitIgnore(false);
    config.ignores.delete('**/node_modules/**');
    config.addGlobalData('site', site);
  },
});
eleventy.disableLogger();
await eleventy.write();
const ms = performance.now() - before;
const made = readdirSync(join(output, 'charts')).length;
if (made !== site.chartPages.length) throw new Error(`${made} pages instead of ${site.chartPages.length}`);
console.log(`took ${Math.round(ms)}`);
