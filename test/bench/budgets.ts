/**
 * `npm run budgets [FOLDER]`: what every kind of page costs a reader on a slow phone (a processor four times slower, a
 * slow line, an empty cache), and how long the planner takes for a change of twelve tins on this computer. Over a
 * budget of budgets.json it ends with 1. FOLDER is a built site, `output/site` unless named. Never a test: times
 * belong to the day they were taken; sizes alone are also asked in `npm test`.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import type { Browser } from 'playwright-core';
import { launchBrowser } from '../browser/browser.ts';
import { serveSite } from '../browser/site-server.ts';
import { onePageOfEachKind } from '../site/site-files.ts';
import { type Cost, costOf } from './page-cost.ts';
import { plannerTimes } from './planner-times.ts';

type Limits = Record<keyof Cost, number>;

interface Budgets {
  slow: Parameters<typeof costOf>[2];
  page: Limits;
  kinds: Record<string, Partial<Limits>>;
  planner: { tins: number; changes: number; frameMs: number };
}

const budgets = JSON.parse(readFileSync(join(import.meta.dirname, 'budgets.json'), 'utf8')) as Budgets;

const SHOWN: Record<keyof Cost, (value: number) => string> = {
  transferredBytes: (value) => `${(value / 1000).toFixed(0)} kB`,
  requests: String,
  elements: String,
  firstPaintMs: (value) => `${value.toFixed(0)} ms`,
  largestPaintMs: (value) => `${value.toFixed(0)} ms`,
  layoutShift: (value) => value.toFixed(3),
};
const COLUMNS = Object.keys(SHOWN) as (keyof Cost)[];

const limitsOf = (path: string): Limits => ({
  ...budgets.page,
  ...budgets.kinds[path],
  ...budgets.kinds[posix.dirname(path)],
});

/** Costs of all kinds of pages as a table; returns what is over its budget. */
async function pages(browser: Browser, site: string): Promise<string[]> {
  const server = await serveSite(site, { compressed: true });
  const over: string[] = [];
  console.log(
    `| page | ${['transferred', 'requests', 'elements', 'first paint', 'largest paint', 'shift'].join(' | ')} |`,
  );
  console.log(`| --- |${' ---: |'.repeat(COLUMNS.length)}`);
  for (const path of onePageOfEachKind(site)) {
    const cost = await costOf(browser, `${server.address}${path}`, budgets.slow);
    const limits = limitsOf(path);
    const cells = COLUMNS.map((column) => {
      const text = SHOWN[column](cost[column]);
      if (cost[column] <= limits[column]) return text;
      over.push(`${path}: ${column} ${text}, at most ${SHOWN[column](limits[column])}`);
      return `**${text}**`;
    });
    console.log(`| ${path} | ${cells.join(' | ')} |`);
  }
  await server.close();
  return over;
}

async function planner(browser: Browser, site: string): Promise<string[]> {
  const { tins, changes, frameMs } = budgets.planner;
  const rows = await plannerTimes(browser, site, tins, changes);
  console.log(`\n| a change of ${tins} tins, ${changes} times | median | 99 of 100 |\n| --- | ---: | ---: |`);
  for (const { what, median, of99 } of rows)
    console.log(`| ${what} | ${median.toFixed(1)} ms | ${of99.toFixed(1)} ms |`);
  return rows
    .filter(({ counts, of99 }) => counts && of99 > frameMs)
    .map(({ what, of99 }) => `planner: ${what} ${of99.toFixed(1)} ms, at most ${frameMs} ms`);
}

const site = process.argv[2] ?? 'output/site';
if (!existsSync(join(site, 'planner.html'))) {
  console.error(`There is no built site in '${site}'. Run 'npm run build' first.`);
  process.exit(2);
}
const browser = await launchBrowser();
const over = [...(await pages(browser, site)), ...(await planner(browser, site))];
await browser.close();
for (const fault of over) console.error(`over budget: ${fault}`);
process.exitCode = over.length === 0 ? 0 : 1;
