/**
 * A kitchen whose recipes, tins, flavours, fillings, orders and pages try to be markup and scripts. The browser is
 * told to look past the pages' policy, so that whatever got in would run.
 */
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pagesOf } from '../site/site-files.ts';
import { type BuiltKitchen, ENDING, HOSTILE, smallSite } from '../site/small-kitchen.ts';
import { launchBrowser } from './browser.ts';
import { watched } from './page-visit.ts';

let kitchen: BuiltKitchen;
let browser: Browser;

beforeAll(async () => {
  [kitchen, browser] = await Promise.all([smallSite(), launchBrowser()]);
});

afterAll(async () => {
  await browser?.close();
  kitchen?.remove();
});

const address = (path: string): string => `${pathToFileURL(kitchen.site).href}/${path}`;

/** Elements that no template writes, and what they would have done. */
const gotIn = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const attributes = [...document.querySelectorAll('*')].flatMap((element) =>
      [...element.attributes]
        .filter(({ name, value }) => name.startsWith('on') || /^\s*javascript:/i.test(value))
        .map(({ name, value }) => `${element.tagName} ${name}=${value}`),
    );
    const elements = [
      ...document.querySelectorAll('main img, main script, main em > svg, main i, iframe, object'),
    ];
    return [
      ...attributes,
      ...elements.map(({ outerHTML }) => outerHTML.slice(0, 100)),
      ...('__pwned' in window ? ['a script ran'] : []),
    ];
  });

describe('texts that try to be markup', () => {
  it('stay text on every page and in linked data', async () => {
    const context = await browser.newContext({ bypassCSP: true });
    const { page, complaints } = await watched(context, 'file://');
    for (const path of pagesOf(kitchen.site)) {
      await page.goto(address(path));
      expect(await gotIn(page), path).toEqual([]);
      const data = await page.locator('script[type="application/ld+json"]').allTextContents();
      for (const text of data) expect(JSON.parse(text), path).toMatchObject({ '@type': 'Recipe' });
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('are read as they were written, by the people and the order they are meant for', async () => {
    const page = await browser.newPage();
    for (const [path, text] of [
      ['recipes/plain.html', HOSTILE],
      ['flavours/spice.html', ENDING],
      ['orders/birthday.html', ENDING],
      ['tins/beehive.html', ENDING],
    ] as const) {
      await page.goto(address(path));
      expect(await page.locator('main').textContent(), path).toContain(text);
    }
    await page.close();
  });

  it('stay text in the planner, its worktop, what it is told by an address, and in finding', async () => {
    const context = await browser.newContext({ bypassCSP: true });
    const { page, complaints } = await watched(context, 'file://');
    await page.goto(address('planner.html'));
    await page.locator('.recipe select').selectOption('plain');
    for (const tin of await page.locator('button.tin').all()) await tin.click();
    for (const summary of await page.locator('summary').all()) await summary.click();
    for (const box of await page.locator('.chips input').all()) await box.check();
    await page.waitForSelector('.working .step');
    expect(await gotIn(page)).toEqual([]);
    const answer = await page.locator('.answer').textContent();
    for (const text of [ENDING, 'Plain <em>cake</em>', 'Sugar & <i>spice</i>'])
      expect(answer).toContain(text);
    await page.locator('.answer > button.next').click();
    await page.waitForSelector('.worktop');
    expect(await page.locator('.worktop').textContent()).toContain(ENDING);
    expect(await gotIn(page)).toEqual([]);
    const told = encodeURIComponent(`1 x ${HOSTILE}`);
    await page.goto('about:blank');
    await page.goto(
      address(`planner.html#recipe=${told}&tins=${told}&flavours=${told}&height=${told}&egg=${told}`),
    );
    await page.waitForSelector('.answering');
    expect(await gotIn(page)).toEqual([]);
    await page.goto(address(`find.html#${encodeURIComponent(HOSTILE)}`));
    await page.locator('#asked').fill('spice');
    expect(await page.locator('#found a').count()).toBeGreaterThan(0);
    expect(await gotIn(page)).toEqual([]);
    await page.locator('#asked').fill('$& zeppelin <b>');
    expect(await page.locator('#found-count').textContent()).toContain('$& zeppelin <b>');
    expect(await gotIn(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
