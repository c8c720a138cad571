import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { pageBatches } from '../../src/site/page-batches.ts';
import { PAGE_LISTS, withoutSame } from '../../src/site/page-memory.ts';
import { siteData } from '../../src/site/site-data.ts';
import type { SiteOutput } from '../../src/site/site-output.ts';
import { chartViews } from '../../src/views/chart-views.ts';

const textsIn = (folder: string): { name: string; text: string }[] =>
  readdirSync(join('templates', folder)).map((name) => ({
    name,
    text: readFileSync(join('templates', folder, name), 'utf8'),
  }));

describe('a template', () => {
  it('sees one page’s view, never the list of all: a page that is taken along cannot be out of date', () => {
    const lists = new RegExp(`\\bsite\\.(${PAGE_LISTS.join('|')})\\b`);
    const texts = ['layouts', 'parts'].flatMap(textsIn);
    expect(texts.length).toBeGreaterThan(30);
    expect(texts.filter(({ text }) => lists.test(text)).map(({ name }) => name)).toEqual([]);
  });

  it('makes the pages of one list, and every list has one', () => {
    const made = textsIn('pages').flatMap(({ text }) => /data: site\.(\w+)/.exec(text)?.[1] ?? []);
    expect(made.sort()).toEqual([...PAGE_LISTS].sort());
  });
});

/** Anything that JSON would not tell of; sentences that take words are functions and belong to the locale. */
function unsaidIn(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  const isPlain = Array.isArray(value) || Object.getPrototypeOf(value) === Object.prototype;
  return isPlain
    ? Object.entries(value).flatMap(([key, inner]) => unsaidIn(inner, `${path}.${key}`))
    : [path];
}

describe('pages', () => {
  it('are told whole by their text, rendered once each however many at a time, and taken along while they say the same', async () => {
    const { content } = await readContent('test/kitchens/good/minimal');
    if (content === null) throw new Error('the kitchen cannot be read');
    const dataOf = (of: typeof content) =>
      siteData({ content: of, charts: chartViews(of), files: [], logoSvg: null });
    const data = dataOf(content);
    expect(unsaidIn(data, 'site')).toEqual([]);

    const pathsIn = (site: typeof data): string[] =>
      PAGE_LISTS.flatMap((list) => site[list].map(({ head }) => head.path));
    const runs = [...pageBatches(data, 2, 200_000)];
    expect(runs.length).toBeGreaterThan(5);
    expect(Math.max(...runs.map((run) => pathsIn(run).length))).toBeLessThanOrEqual(4);
    expect(runs.flatMap(pathsIn)).toEqual(pathsIn(data));
    expect([...pageBatches(data, 2)].map(pathsIn)).toEqual([pathsIn(data)]);

    const carried: string[] = [];
    const output: SiteOutput = {
      write() {},
      carry: (path) => carried.push(path) > 0,
      hashOf: () => '',
    };
    const first = withoutSame(data, new Map(), output);
    expect(carried).toEqual([]);
    const { memory } = first.told();
    const count = memory.size;
    withoutSame(dataOf(content), memory, output);
    expect(carried).toHaveLength(count);

    carried.length = 0;
    const [page] = content.pages;
    if (page === undefined) throw new Error('no page');
    const other = { ...content, pages: [{ ...page, markdown: 'Another text.' }] };
    const after = withoutSame(dataOf(other), memory, output);
    expect(after.fresh.freePages).toHaveLength(1);
    expect(after.fresh.tinPages).toEqual([]);
    expect(carried).toHaveLength(count - 1);

    carried.length = 0;
    const elsewhere = { ...content, kitchen: { ...content.kitchen, place: 'Elsewhere' } };
    withoutSame(dataOf(elsewhere), memory, output);
    expect(carried).toEqual([]);
  });
});
