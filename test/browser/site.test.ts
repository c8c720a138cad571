/** The site as a person meets it: from disk and from a server, by keyboard, on a phone, in light and dark. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { onePageOfEachKind, somePages } from '../site/site-files.ts';
import { launchBrowser } from './browser.ts';
import { type Visit, visits, watched } from './page-visit.ts';
import { serveSite } from './site-server.ts';

const CHART = 'charts/vanilla-equal-weights.html';
/** Beside one of each kind: a chart in blocks with notes, and the working of a recipe without eggs. */
const ALSO = [CHART, 'charts/harvest-fruit.html', 'working/vanilla-oil-no-egg.html'];
const isLong = process.env.TINWRIGHT_LONG !== undefined;

let demo: { site: string };
let browser: Browser;
let kinds: string[] = [];
let seen: Visit[] = [];

beforeAll(async () => {
  demo = { site: join(demoOutput(), 'site') };
  browser = await launchBrowser();
  kinds = [...new Set([...onePageOfEachKind(demo.site), ...ALSO])];
  const paths = [...new Set([...somePages(demo.site), ...kinds])];
  const closely = new Set(isLong ? paths : kinds);
  seen = await visits(browser, paths, { addressOf: fromDisk, closely, isLong });
  // Every page whole in four ways takes an hour where the quick run takes half a minute.
}, 7_200_000);

afterAll(async () => {
  await browser?.close();
});

const fromDisk = (path: string): string => pathToFileURL(join(demo.site, path)).href;

/** What visits found, with the page it was found on. */
const faultsOf = (told: (visit: Visit) => readonly string[]): string[] =>
  seen.flatMap((visit) => told(visit).map((fault) => `${visit.path}: ${fault}`));

const tinsIn = (page: Page): Promise<string[]> =>
  page.locator('table[data-sort-table] > tbody > tr').evaluateAll((rows) => rows.map((row) => row.id));

const valuesIn = (page: Page, label: string): Promise<number[]> =>
  page
    .locator(`table[data-sort-table] td[data-label="${label}"]`)
    .evaluateAll((cells) => cells.map((cell) => Number(cell.getAttribute('data-value'))));

const inOrder = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

describe('every page', () => {
  it('opens from disk, styled, in the house’s own fonts, asking nobody for anything', () => {
    expect(seen.length).toBeGreaterThan(40);
    for (const { path, look } of seen) {
      expect(look.fontFamily, path).toContain('house-text');
      expect(look.backgroundColor, path).not.toBe('rgba(0, 0, 0, 0)');
      expect(look.loaded, path).toBeGreaterThanOrEqual(2);
    }
    expect(faultsOf(({ complaints }) => complaints)).toEqual([]);
  });

  it('fits 320 px and a desk at 200 % zoom, with letters twice as large or spaced: nothing cut off or sideways', () => {
    expect(faultsOf(({ tooWide }) => tooWide)).toEqual([]);
  });

  it('works below a sub-path under the very policy that it states, sent by the server as well', async () => {
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(
      readFileSync(join(demo.site, CHART), 'utf8'),
    )?.[1];
    const server = await serveSite(demo.site, { headers: { 'content-security-policy': policy } });
    // What the worker keeps, and under which policy, is asked where the network is cut.
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const { page, complaints } = await watched(context, server.address);
    for (const path of kinds) await page.goto(`${server.address}${path}`);
    await page.goto(`${server.address}${CHART}`);
    await page.getByRole('button', { name: 'Batter' }).click();
    expect(await page.locator('th[aria-sort]').count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
    await server.close();
  });
});

describe('axe', () => {
  for (const scheme of ['light', 'dark'] as const)
    for (const device of ['phone', 'desk'])
      it(`finds nothing on any kind of page, ${scheme}, ${device}`, () => {
        expect(seen.filter(({ axe }) => axe[scheme][device]).length).toBeGreaterThanOrEqual(kinds.length);
        expect(faultsOf(({ axe }) => axe[scheme][device] ?? [])).toEqual([]);
      });
});

describe('people who set their own ways', () => {
  it('see every drawing, mark and button in the few colours of a high-contrast system', () => {
    expect(faultsOf(({ forced }) => forced)).toEqual([]);
  });

  it('see where the keyboard is, on everything that takes it', () => {
    expect(seen.reduce((sum, { focus }) => sum + focus.count, 0)).toBeGreaterThan(500);
    expect(faultsOf(({ focus }) => focus.faults)).toEqual([]);
  });

  it('meet nothing that moves when they ask for less motion', () => {
    expect(faultsOf(({ motion }) => motion)).toEqual([]);
  });
});

describe('the chart’s table', () => {
  it('sorts by a click, back by another, and says so', async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(fromDisk(CHART));
    const before = await valuesIn(page, 'Butter');
    const heading = page.locator('table[data-sort-table] th', { hasText: 'Butter' });
    await heading.getByRole('button').click();
    expect(await heading.getAttribute('aria-sort')).toBe('ascending');
    expect(await valuesIn(page, 'Butter')).toEqual(inOrder(before));
    await heading.getByRole('button').click();
    expect(await heading.getAttribute('aria-sort')).toBe('descending');
    expect(await valuesIn(page, 'Butter')).toEqual(inOrder(before).reverse());
    expect(await page.locator('p[role="status"]').textContent()).toBe('Sorted by butter, largest first');
    await page.close();
  });

  it('sorts by keyboard alone', async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(fromDisk(CHART));
    const eggs = page.getByRole('button', { name: 'Eggs' }).first();
    for (let presses = 0; presses < 40; presses += 1) {
      await page.keyboard.press('Tab');
      if (await eggs.evaluate((button) => button === document.activeElement)) break;
    }
    expect(await eggs.evaluate((button) => button === document.activeElement)).toBe(true);
    const outline = await eggs.evaluate((button) => getComputedStyle(button).outlineStyle);
    expect(outline).toBe('solid');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Space');
    const values = await valuesIn(page, 'Eggs');
    expect(values).toEqual(inOrder(values).reverse());
    await page.close();
  });

  it('sorts on a phone by the list above it', async () => {
    const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
    await page.goto(fromDisk(CHART));
    await page.getByLabel('Sort by').selectOption({ label: 'Batter, largest first' });
    const values = await valuesIn(page, 'Batter');
    expect(values).toEqual(inOrder(values).reverse());
    await page.close();
  });

  it('reads whole without JavaScript', async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(fromDisk(CHART));
    expect(await page.getByRole('row').count()).toBeGreaterThan(20);
    expect(await page.getByRole('button').count()).toBe(0);
    await context.close();
    const scripted = await browser.newPage();
    await scripted.goto(fromDisk(CHART));
    expect((await tinsIn(scripted))[0]).toBe('round-4');
    await scripted.close();
  });

  it('keeps its header row and drops the furniture on paper', async () => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(fromDisk(CHART));
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const look = await page.evaluate(() => {
      const shown = (selector: string): string => {
        const element = document.querySelector(selector);
        return element ? getComputedStyle(element).display : 'missing';
      };
      return {
        head: shown('table.chart thead'),
        nav: shown('.sections'),
        next: shown('.onward'),
        ink: getComputedStyle(document.documentElement).color,
      };
    });
    expect(look).toMatchObject({ head: 'table-header-group', nav: 'none', next: 'none' });
    expect(look.ink).toMatch(/rgb\((\d|[1-7]\d), /);
    await page.close();
  });

  it('repeats its header on each printed page, and can be sorted again afterwards', async () => {
    const page = await browser.newPage();
    await page.goto(fromDisk(CHART));
    const printed = await readPdf(new Uint8Array(await page.pdf({ format: 'A4' })));
    const pages = printed.pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
    // The second page is within the table of the tins, which the first one starts.
    for (const text of pages.slice(0, 2)) expect(text).toMatch(/Tin\s.*Eggs\s.*Batter\s.*Over or short/s);
    expect(pages[0]).not.toContain('Press a column');
    await page.getByRole('button', { name: 'Batter' }).click();
    expect(await page.locator('th[aria-sort]').count()).toBe(1);
    await page.close();
  });
});
