/**
 * What the bake log does to a whole build: ten more rows narrow the windows on the chart's page, its data, its print,
 * the card and the bake page; without the log they are wider than ever and say so.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { ask } from '../commands/support/command-line.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { spokenText } from '../reading-back/structure.ts';
import { plainText } from './support/chart-page-rows.ts';
import { demoOutput } from './support/demo-output.ts';

const RECIPE = 'vanilla-equal-weights';
const TIN = 'square-8';
const NAME = 'Eight-inch square';

/** Ten bakes of one autumn, a minute or two either side of one another. */
const MORE = [52, 54, 55, 53, 56, 54, 52, 55, 53, 54]
  .map(
    (minutes, at) =>
      `2026-10-${String(at + 1).padStart(2, '0')},${RECIPE},,round-8,1,898 g,140C fan,${minutes} min,skewer,none,no,65 mm,803 g,\n`,
  )
  .join('');

/** The demo's log as far as it is about the recipe; the one flavoured bake counts as plain here. */
const LOG = readFileSync('content/bake-log.csv', 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('date,') || line.includes(`,${RECIPE},`))
  .map((line) => `${line.replace(',poppy-seed,', ',,')}\n`)
  .join('');

interface Built {
  folder: string;
  chart: {
    basis: string;
    bake_basis: string;
    tins: { id: string; bake: Record<string, unknown> & { shown: Record<string, string> } }[];
  };
}

const readBuilt = (folder: string): Built => ({
  folder,
  chart: JSON.parse(readFileSync(join(folder, `data/tin-charts/${RECIPE}.json`), 'utf8')),
});

const KEPT = ['name', 'place', 'edition', 'locale', 'eggs', 'scale', 'mixer', 'oven', 'tins'];

/** The demo's kitchen as far as time depends on it, printing what speaks of time. */
function kitchenText(): string {
  const kitchen: Record<string, unknown> = parse(readFileSync('content/kitchen.yaml', 'utf8'));
  const kept = Object.fromEntries(KEPT.map((key) => [key, kitchen[key]]));
  const printables = [
    { print: 'tin-chart' },
    { print: 'bake-guide' },
    { print: 'recipe-card', sizes: ['A5'] },
  ];
  return stringify({ ...kept, paper: ['A4'], printables });
}

/** The demo kitchen with one recipe and the prints that speak of time, under a log. */
async function built(folder: string, log: string | null): Promise<Built> {
  const content = join(folder, 'content');
  const output = join(folder, 'output');
  for (const kept of ['assets', 'outlines', 'house-style.yaml', 'ingredients.yaml', `recipes/${RECIPE}.md`])
    cpSync(join('content', kept), join(content, kept), { recursive: true });
  writeFileSync(join(content, 'kitchen.yaml'), kitchenText());
  if (log !== null) writeFileSync(join(content, 'bake-log.csv'), log);
  const answer = await ask('build', '--content', content, '--output', output, '--quiet');
  if (answer.code !== 0) throw new Error(answer.stderr);
  return readBuilt(output);
}

const said = async (path: string): Promise<string> => {
  const pdf = await readPdf(new Uint8Array(readFileSync(path)));
  const pages = pdf.pages.map((page) => (page.tree === null ? '' : spokenText(page.tree, page)));
  return pages.join(' ').replace(/\s+/g, ' ');
};

/** Minutes of '1 h 40 min' or '45 min'. */
function inMinutes(text: string): number {
  const [, hours = '0', minutes = '0'] = /^(?:(\d+)\sh\s?)?(?:(\d+)\smin)?$/.exec(text) ?? [];
  return Number(hours) * 60 + Number(minutes);
}

/** First look and done by of one tin, as each place shows them. */
interface Shown {
  page: [string, string];
  data: [string, string];
  print: [string, string];
  card: [string, string];
}

/** The row of a tin in the oven's table on the page. */
function onPage(html: string, tinId: string): [string, string] {
  const row =
    new RegExp(`<tr><th scope="row"><a href="[^"]*${tinId}\\.html">[\\s\\S]*?</tr>`).exec(html)?.[0] ?? '';
  const [first = '', second = ''] = [...row.matchAll(/<td class="minutes"[^>]*><b>([^<]*)<\/b>/g)].map(
    ([, time = '']) => time,
  );
  return [plainText(first), plainText(second)];
}

/** What stands behind the tin's name and dial in the print: two times, one after the other. */
function onPaper(text: string, name: string): [string, string] {
  const oven = text.slice(text.lastIndexOf('In the oven'));
  const time = '(?:\\d+ h ?)?(?:\\d+ min)?';
  const found = new RegExp(`${name} .*?gas \\d+ (${time}) (${time}) most likely`).exec(oven);
  return [found?.[1] ?? '', found?.[2] ?? ''];
}

/** The tin's column on the card. */
function onCard(text: string): [string, string] {
  const heading = /Weights in g (.*?) Eggs /.exec(text)?.[1] ?? '';
  const at = heading.split(' in ').findIndex((column) => column.startsWith(NAME));
  const row = (from: string, to: string): string => {
    const times = new RegExp(`${from} (.*?) ${to}`).exec(text)?.[1] ?? '';
    return [...times.matchAll(/(?:\d+ h )?\d+ min/g)].map(([time]) => time)[at] ?? '';
  };
  return [row('First look', 'Done by'), row('Done by', 'Heating core')];
}

async function shownBy({ folder, chart }: Built): Promise<Shown> {
  const bake = chart.tins.find(({ id }) => id === TIN)?.bake;
  const html = readFileSync(join(folder, `site/charts/${RECIPE}.html`), 'utf8');
  return {
    page: onPage(html, TIN),
    data: [plainText(bake?.shown.first_look ?? ''), plainText(bake?.shown.done_by ?? '')],
    print: onPaper(await said(join(folder, `print/tin-charts/${RECIPE}-a4.pdf`)), NAME),
    card: onCard(await said(join(folder, `print/recipe-cards/${RECIPE}-a5.pdf`))),
  };
}

const width = ([from, to]: [string, string]): number => inMinutes(to) - inMinutes(from);

describe('ten more rows in the log', () => {
  let root = '';
  let none: Built;
  let logged: Built;
  let taught: Built;
  let shown: Shown[] = [];

  beforeAll(async () => {
    root = mkdtempSync(join(tmpdir(), 'log-teaches-'));
    none = await built(join(root, 'none'), null);
    logged = readBuilt(demoOutput());
    taught = await built(join(root, 'taught'), LOG + MORE);
    shown = await Promise.all([none, logged, taught].map(shownBy));
  });
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  it.each(['page', 'data', 'print', 'card'] as const)(
    'narrow the window on the %s, and no log widens it',
    (place) => {
      const [without = 0, before = 0, after = 0] = shown.map((one) => width(one[place]));
      expect(after).toBeGreaterThan(0);
      // Shown to the nearest five minutes, a narrowing must be that much to be seen.
      expect(before - after).toBeGreaterThanOrEqual(5);
      expect(without - before).toBeGreaterThanOrEqual(15);
      expect(shown.map((one) => one[place])).toEqual(shown.map(({ data }) => data));
    },
  );

  it('are counted on the chart, its page and the bake page; without a log the page asks for three bakes', () => {
    const bakePage = ({ folder }: Built): string =>
      plainText(readFileSync(join(folder, `site/bakes/${RECIPE}.html`), 'utf8'));
    expect(logged.chart.bake_basis).toContain('six logged bakes');
    expect(taught.chart.bake_basis).toContain('16 logged bakes');
    expect(none.chart.bake_basis).toContain('Nothing is logged');
    for (const one of [none, logged, taught]) expect(bakePage(one)).toContain(one.chart.bake_basis);
    expect(bakePage(none)).toContain('Three bakes that would teach most');
    expect(bakePage(taught)).not.toContain('Three bakes that would teach most');
  });

  it('give the yield of the chart a say of the log, which it names, in the data, on the page and on paper', async () => {
    expect(none.chart.basis).not.toContain('From your log');
    expect(taught.chart.basis).toMatch(/From your log: 1[23] more bakes have joined in/);
    expect(plainText(readFileSync(join(taught.folder, `site/charts/${RECIPE}.html`), 'utf8'))).toContain(
      taught.chart.basis,
    );
    expect(await said(join(taught.folder, `print/tin-charts/${RECIPE}-a4.pdf`))).toContain(
      taught.chart.basis,
    );
    expect(plainText(readFileSync(join(taught.folder, `site/working/${RECIPE}.html`), 'utf8'))).toContain(
      'Yield density, from your log too',
    );
  });
});
