/** The planner in a real browser: its prints byte for byte, its other questions, and nothing against it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContextOptions } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { axeFaults, thinned } from './axe-faults.ts';
import { launchBrowser } from './browser.ts';
import { openedPlanner } from './planner-page.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;

let output = '';
let browser: Browser;

/** Pixels; a window as tall as the longest page (57,000) is more than the browser can paint, and it falls over. */
const TALLEST = 8000;

beforeAll(async () => {
  output = demoOutput();
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

const opened = (hash = '', options?: BrowserContextOptions) => openedPlanner(browser, hash, options);

describe('the planner', () => {
  it('prints a chart and a template with the very bytes of the build, without a signal', async () => {
    const { page, faults } = await opened('#recipe=vanilla-equal-weights&tins=2+x+round-6');
    for (const [button, path] of [
      ['Tin chart', 'tin-charts/vanilla-equal-weights-a4.pdf'],
      ['Lining templates', 'templates/round-6-a4.pdf'],
    ] as const) {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.locator('.print-here button', { hasText: button }).click(),
      ]);
      const made = readFileSync(await file.path());
      expect(made.equals(readFileSync(join(output, 'print', path))), path).toBe(true);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('turns eggs and guests into plans with a tap', async () => {
    for (const hash of ['#ask=7+eggs', '#ask=60+portions']) {
      const { page } = await opened(hash);
      await page.locator('.found button').first().click();
      await page.waitForSelector('.answer .headline');
      await expect.poll(() => page.url()).toContain('tins=');
      await page.context().close();
    }
  });

  it('takes a tin that nobody owns, and says what is wrong with one that cannot be', async () => {
    const { page } = await opened();
    await page.locator('.other-tin summary').click();
    await page.locator('.other-tin input').nth(0).fill('7');
    await page.locator('.other-tin input').nth(1).fill('nothing');
    await page.locator('.other-tin button').click();
    expect(await page.locator('.other-tin .wrong').count()).toBeGreaterThan(0);
    await page.locator('.other-tin input').nth(1).fill('3');
    await page.locator('.other-tin button').click();
    expect(await page.locator('.headline .batter').count()).toBe(1);
    await page.context().close();
  });

  it('keeps my tins and settings on the device', async () => {
    const { page } = await opened('#tins=1+x+round-6');
    await page.locator('.own summary').click();
    await page.locator('.own input').first().fill('US large');
    await page.reload();
    await page.waitForSelector('.own');
    expect(await page.locator('.answer').textContent()).toContain('US large');
    await page.context().close();
  });

  it('has nothing against it, on a phone and a desk, in light and dark', async () => {
    const { page } = await opened('#tins=2+x+round-12,1+x+beehive&finishes=vanilla-buttercream--filling');
    for (const details of await page.locator('summary').all()) await details.click();
    // Comes when it is asked for, and makes the page five times as long.
    await page.locator('.working .step').first().waitFor();
    const wholePage = async (width: number) => {
      await page.setViewportSize({ width, height: 900 });
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      await page.setViewportSize({ width, height: Math.min(height + 200, TALLEST) });
    };
    // The bar at a screen's foot lies over nothing where it takes its own place in the page.
    await page.evaluate(() => {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync('.in-sight { position: static !important; }');
      document.adoptedStyleSheets = [sheet];
    });
    const widths = [320, 1280];
    for (const width of widths) {
      await wholePage(width);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
    }
    if (!isLong) await thinned(page);
    for (const width of widths) {
      await wholePage(width);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        // The dark has the light's elements in other colours: the quick run asks of it only what colours decide.
        expect(await axeFaults(page, isLong || colorScheme === 'light' ? 'all' : 'colours')).toEqual([]);
      }
    }
    await page.context().close();
  });
});
