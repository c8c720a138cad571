/** The site as a person meets it: from disk and from a server, by keyboard, on a phone, in light and dark. */

import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { createRequire } from 'node:module';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { somePages } from '../site/site-files.ts';
import { launchBrowser } from './browser.ts';

const CHART = 'charts/vanilla-equal-weights.html';
const KINDS = [
  'index.html',
  'charts.html',
  CHART,
  'charts/harvest-fruit.html',
  'recipes.html',
  'recipes/golden-carving-cake.html',
  'working/vanilla-oil-no-egg.html',
  'tins.html',
  'tins/loaf-9-5.html',
  'bakes/vanilla-equal-weights.html',
  'orders.html',
  'orders/fair-trays.html',
  'orders/week-2026-w48.html',
  'pages/cautions.html',
  'labels.html',
  'labels/harvest-fruit.html',
  'downloads.html',
  '404.html',
];
const isLong = process.env.TINWRIGHT_LONG !== undefined;
const POLICY =
  "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src data:; base-uri 'none'; form-action 'none'";
const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
};

let demo: { site: string };
let browser: Browser;
let server: Server;
let served = '';

/** Serves the site below a sub-path, under a policy that lets nothing in from elsewhere. */
function serve(site: string): Promise<Server> {
  const serving = createServer(({ url = '' }, response) => {
    const path = new URL(url, 'http://localhost').pathname.replace('/some/where/', '');
    try {
      const type = TYPES[extname(path)] ?? 'application/octet-stream';
      const body = readFileSync(join(site, path));
      response.writeHead(200, { 'content-type': type, 'content-security-policy': POLICY }).end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) => serving.listen(0, '127.0.0.1', () => resolve(serving)));
}

beforeAll(async () => {
  demo = { site: join(demoOutput(), 'site') };
  browser = await launchBrowser();
  server = await serve(demo.site);
  served = `http://127.0.0.1:${(server.address() as AddressInfo).port}/some/where/`;
});

afterAll(async () => {
  await browser?.close();
  server?.close();
});

const fromDisk = (path: string): string => pathToFileURL(join(demo.site, path)).href;

interface Watched {
  page: Page;
  /** Addresses asked for outside the site, and messages of errors. */
  complaints: string[];
}

/** A page that records everything it should not do. */
async function watched(context: BrowserContext, home: string): Promise<Watched> {
  const complaints: string[] = [];
  await context.route('**/*', (route) => {
    const address = route.request().url();
    if (address.startsWith(home) || address.startsWith('data:')) return route.continue();
    complaints.push(`asked for ${address}`);
    return route.abort();
  });
  const page = await context.newPage();
  page.on('pageerror', (error) => complaints.push(`threw ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(`said ${message.text()}`);
  });
  page.on('requestfailed', (request) => {
    // Leaving a page before its icon has come is no fault.
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') complaints.push(`could not get ${request.url()}: ${why}`);
  });
  return { page, complaints };
}

const tinsIn = (page: Page): Promise<string[]> =>
  page.locator('table[data-sort-table] > tbody > tr').evaluateAll((rows) => rows.map((row) => row.id));

const valuesIn = (page: Page, label: string): Promise<number[]> =>
  page
    .locator(`table[data-sort-table] td[data-label="${label}"]`)
    .evaluateAll((cells) => cells.map((cell) => Number(cell.getAttribute('data-value'))));

const inOrder = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

describe('every page', () => {
  it('opens from disk, styled, in the house’s own fonts, asking nobody for anything', async () => {
    const context = await browser.newContext();
    const { page, complaints } = await watched(context, 'file://');
    for (const path of somePages(demo.site)) {
      await page.goto(fromDisk(path));
      const look = await page.evaluate(async () => {
        await document.fonts.ready;
        const { fontFamily, backgroundColor } = getComputedStyle(document.documentElement);
        const loaded = [...document.fonts].filter((face) => face.status === 'loaded').length;
        return { fontFamily, backgroundColor, loaded };
      });
      expect(look.fontFamily, path).toContain('house-text');
      expect(look.backgroundColor, path).not.toBe('rgba(0, 0, 0, 0)');
      expect(look.loaded, path).toBeGreaterThanOrEqual(2);
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('works below a sub-path under a strict content security policy', async () => {
    const context = await browser.newContext();
    const { page, complaints } = await watched(context, served);
    for (const path of KINDS) await page.goto(`${served}${path}`, { waitUntil: 'networkidle' });
    await page.goto(`${served}${CHART}`);
    await page.getByRole('button', { name: 'Batter' }).click();
    expect(await page.locator('th[aria-sort]').count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('fits screens 320 px and 390 px wide, and a desktop at 200 % zoom, without sideways scrolling', async () => {
    for (const width of [320, 390, 640]) {
      const context = await browser.newContext({ viewport: { width, height: 800 } });
      const page = await context.newPage();
      // What fits the narrowest fits the others: those look at one page of each kind.
      for (const path of width === 320 ? somePages(demo.site) : KINDS) {
        await page.goto(fromDisk(path));
        const scrollWidth = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(scrollWidth, `${path} at ${width} px`).toBeLessThanOrEqual(width);
      }
      await context.close();
    }
  });
});

describe('axe', () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

  for (const colorScheme of ['light', 'dark'] as const) {
    for (const [width, device] of [
      [1280, 'desktop'],
      [390, 'phone'],
    ] as const) {
      // The dark has the light's elements in other colours: the quick run asks of it only what colours decide.
      const asked =
        isLong || colorScheme === 'light' ? {} : { runOnly: ['color-contrast', 'link-in-text-block'] };
      it(`finds nothing on any kind of page, ${colorScheme}, ${device}`, async () => {
        const context = await browser.newContext({ colorScheme, viewport: { width, height: 900 } });
        const page = await context.newPage();
        for (const path of KINDS) {
          await page.goto(fromDisk(path));
          await page.evaluate(axe);
          // A working page says the same of every tin, half a megabyte long: two tins tell as much.
          if (!isLong && path.startsWith('working/'))
            await page.evaluate(() => {
              for (const tin of [...document.querySelectorAll('main section[id]')].slice(2)) tin.remove();
            });
          const faults = await page.evaluate(async (options) => {
            const { axe: checker } = window as unknown as {
              axe: {
                run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
              };
            };
            const { violations } = await checker.run(options);
            return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
          }, asked);
          expect(faults, path).toEqual([]);
        }
        await context.close();
      });
    }
  }
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

  it('moves nothing for those who ask for less motion', async () => {
    const page = await browser.newPage({ reducedMotion: 'reduce' });
    await page.goto(fromDisk(CHART));
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).scrollBehavior)).toBe('auto');
    await page.close();
  });
});
