/**
 * The same bake times on the page, on paper and in the data files, for every demo chart: dial, first look, done by,
 * core and band, the bakes behind them and the weight when baked. Each check starts from the JSON.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { spokenText } from '../reading-back/structure.ts';
import { plainText } from './support/chart-page-rows.ts';
import { demoOutput } from './support/demo-output.ts';
import { readBuiltPdf } from './support/read-built-pdf.ts';

const bakeSchema = z.object({
  dial_c: z.number(),
  dial: z.string(),
  dial_elsewhere: z.string(),
  first_look_min: z.number(),
  likely_min: z.number(),
  done_by_min: z.number(),
  core: z.boolean(),
  band: z.boolean(),
  advice: z.string(),
  logged_bakes: z.number(),
  shown: z.object({
    first_look: z.string(),
    likely: z.string(),
    done_by: z.string(),
    logged_bakes: z.string(),
  }),
});
const tinSchema = z.object({
  tin: z.string(),
  name: z.string(),
  size: z.string(),
  baked_g_each: z.number(),
  bake: bakeSchema,
  shown: z.object({ baked_g_each: z.string() }),
});
const chartSchema = z.object({
  id: z.string(),
  recipe: z.object({ id: z.string() }),
  bake_basis: z.string(),
  baked_basis: z.string(),
  tins: z.array(tinSchema).min(1),
});
type Chart = z.infer<typeof chartSchema>;
type Tin = z.infer<typeof tinSchema>;

let output = '';
let charts: Chart[] = [];

beforeAll(() => {
  output = demoOutput();
  const folder = join(output, 'data/tin-charts');
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'));
  charts = files.map((name) => chartSchema.parse(JSON.parse(readFileSync(join(folder, name), 'utf8'))));
});

/** Tins of a kind stand once. */
const eachTin = ({ tins }: Chart): Tin[] =>
  tins.filter((row, at) => tins.findIndex(({ tin }) => tin === row.tin) === at);

/** Spaces that hold a number to its unit read as any other. */
const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** What a row must say, in its order. */
const told = ({ name, size, shown, bake }: Tin): string[] =>
  [
    name,
    size,
    `about ${shown.baked_g_each} g when baked`,
    bake.dial,
    bake.dial_elsewhere,
    bake.shown.first_look,
    bake.shown.done_by,
    `most likely ${bake.shown.likely}`,
    bake.advice,
    bake.shown.logged_bakes,
  ].map(plain);

/** Rows of the oven's table on a page, cells and their small print apart. */
function pageRows(html: string): string[][] {
  const table = /<table class="ruled oven blocked">([\s\S]*?)<\/table>/.exec(html)?.[1] ?? '';
  const rows = [...table.matchAll(/<tr><th scope="row">[\s\S]*?<\/tr>/g)];
  return rows.map(([row]) =>
    row
      .split(/<\/t[hd]>|(?=<small>)/)
      .map(plainText)
      .filter((text) => text !== ''),
  );
}

it('page and JSON agree in every cell of the oven’s table', () => {
  let count = 0;
  for (const chart of charts) {
    const html = readFileSync(join(output, `site/charts/${chart.id}.html`), 'utf8');
    const wanted = eachTin(chart).map(told);
    expect(pageRows(html), chart.id).toEqual(wanted);
    const text = plainText(html);
    expect(text).toContain(chart.bake_basis);
    expect(text).toContain(chart.baked_basis);
    count += wanted.flat().length + 2;
  }
  console.log(`oven on pages: ${count} leaves of JSON found`);
});

/** The texts that do not follow one another in what a print says. */
function missingInOrder(texts: readonly string[], said: string): string[] {
  let rest = said;
  return texts.filter((text) => {
    const at = rest.indexOf(text);
    if (at >= 0) rest = rest.slice(at + text.length);
    return at < 0;
  });
}

/** Sheets of the flavours' charts, which bake as the plain ones do, are read in the long run. */
const READS_ALL = process.env.TINWRIGHT_LONG !== undefined;

it.each(['a4', 'letter'])('the %s print and JSON agree in every row of the oven’s table', async (paper) => {
  let count = 0;
  for (const chart of charts.filter(({ id, recipe }) => id === recipe.id || READS_ALL)) {
    const path = join(output, `print/tin-charts/${chart.id}-${paper}.pdf`);
    const pdf = await readBuiltPdf(path);
    const text = pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' ');
    const oven = text.slice(text.indexOf(chart.bake_basis));
    expect(oven.startsWith(`${chart.bake_basis} ${chart.baked_basis}`), chart.id).toBe(true);
    const wanted = eachTin(chart).flatMap(told);
    expect(missingInOrder(wanted, oven), chart.id).toEqual([]);
    count += wanted.length + 2;
  }
  console.log(`oven on ${paper}: ${count} leaves of JSON found`);
});

it('shown times are the values to the nearest five minutes, and a core is in where the advice says so', () => {
  const inMinutes = (text: string): number => {
    const [, hours = '0', minutes = '0'] = /^(?:(\d+)\sh\s?)?(?:(\d+)\smin)?$/.exec(text) ?? [];
    return Number(hours) * 60 + Number(minutes);
  };
  for (const chart of charts)
    for (const { bake, baked_g_each: baked, shown } of chart.tins) {
      const pairs: [number, string][] = [
        [bake.first_look_min, bake.shown.first_look],
        [bake.likely_min, bake.shown.likely],
        [bake.done_by_min, bake.shown.done_by],
      ];
      for (const [value, text] of pairs) expect(Math.abs(inMinutes(text) - value)).toBeLessThanOrEqual(2.5);
      expect(bake.first_look_min).toBeLessThan(bake.likely_min);
      expect(bake.likely_min).toBeLessThan(bake.done_by_min);
      expect(bake.core).toBe(bake.advice.startsWith('Heating core in.'));
      expect(bake.band).toBe(bake.advice.includes('Band round the tin.'));
      expect(Math.abs(Number(shown.baked_g_each.replace(',', '')) - baked)).toBeLessThanOrEqual(5);
    }
});

it('the bake page and its print rest on the same bakes as the chart, and say so in the same words', async () => {
  for (const chart of charts.filter(({ id, recipe }) => id === recipe.id)) {
    const html = plainText(readFileSync(join(output, `site/bakes/${chart.id}.html`), 'utf8'));
    expect(html).toContain(chart.bake_basis);
    const pdf = await readBuiltPdf(join(output, `print/bake-guides/${chart.id}-a4.pdf`));
    const text = pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page))).join(' ');
    expect(text).toContain(chart.bake_basis);
  }
});
