/** The way from the home page to a printed plan without a mouse, on a phone's width, and what a listener hears. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { axeFaults } from './axe-faults.ts';
import { launchBrowser } from './browser.ts';
import { goneInForcedColours, pageWidth, withText } from './in-the-page.ts';
import { watched } from './page-visit.ts';

const PHONE = { width: 320, height: 640 };
// Less motion: where the keyboard is, is asked when the page has come to rest.
const MOST_TABS = 150;

let browser: Browser;
let site = '';

beforeAll(async () => {
  site = join(demoOutput(), 'site');
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

const address = (path: string): string => pathToFileURL(join(site, path)).href.replace('%23', '#');

interface Focused {
  name: string;
  /** Whether nothing lies over the whole of it, and an outline shows. */
  isSeen: boolean;
  html: string;
}

/** What has the keyboard now; its corners and middle are asked what lies on top there (WCAG 2.4.11). */
const focused = (page: Page): Promise<Focused> =>
  page.evaluate(() => {
    const element = document.activeElement ?? document.body;
    const { left, top, width, height } = element.getBoundingClientRect();
    const points = [0.05, 0.5, 0.95].flatMap((x) =>
      [0.1, 0.5, 0.9].map((y): [number, number] => [left + x * width, top + y * height]),
    );
    const isOnTop = points.some(([x, y]) => {
      const there = document.elementFromPoint(x, y);
      const box = element.closest('label') ?? element;
      return there !== null && (box.contains(there) || there.contains(element)) && there !== document.body;
    });
    const { outlineStyle } = getComputedStyle(element);
    const name =
      element.getAttribute('aria-label') ?? element.closest('label')?.textContent ?? element.textContent;
    return {
      name: (name ?? '').replace(/\s+/g, ' ').trim(),
      isSeen: isOnTop && outlineStyle !== 'none',
      html: element.outerHTML.slice(0, 160),
    };
  });

/** Tabs until something with this name has the keyboard; everything on the way must be seen. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < MOST_TABS; presses += 1) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    if (now.html.startsWith('<body')) break;
    passed.push(now.name.slice(0, 30));
    expect(now, now.html).toMatchObject({ isSeen: true });
    if (name.test(now.name)) return;
  }
  throw new Error(`the keyboard never came to ${name}, but to: ${passed.join(' | ')}`);
}

/** Keeps every text that a live region takes on, from now on. */
const listen = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const heard: string[] = [];
    Object.assign(window, { heard });
    const live = '[role="status"], [role="alert"], [aria-live="polite"], output:not([aria-live="off"])';
    new MutationObserver((changes) => {
      const regions = changes.flatMap(({ target }) => {
        const element = target instanceof Element ? target : target.parentElement;
        return element?.closest(live) ?? [];
      });
      // An empty region says nothing.
      for (const region of new Set(regions))
        if (region.textContent?.trim()) heard.push(region.textContent.trim());
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
  });

const heard = (page: Page): Promise<string[]> =>
  page.evaluate(() => (window as unknown as { heard: string[] }).heard.splice(0));

const PAUSE_MS = 900;

describe('without a mouse, 320 px wide', () => {
  it('one gets from home to a plan, its working, its chart on paper and the worktop, and always sees where', async () => {
    const context = await browser.newContext({ viewport: PHONE, reducedMotion: 'reduce' });
    const { page, complaints } = await watched(context, 'file://');
    await page.goto(address('index.html'));
    await tabTo(page, /^Skip to/);
    await tabTo(page, /^Plan a bake/);
    await page.keyboard.press('Enter');
    await page.waitForSelector('.tin-shelf');
    // What the page says of itself as it opens is over before anybody taps.
    await page.waitForTimeout(PAUSE_MS);
    await listen(page);
    await tabTo(page, /^Four-inch round/);
    await page.keyboard.press('Enter');
    await tabTo(page, /^Six-inch round/);
    await page.keyboard.press('Space');
    await page.waitForTimeout(PAUSE_MS);
    const headline = await page.locator('.headline span').allTextContents();
    expect(await heard(page), 'one short sentence for both taps').toEqual([headline.join(', ')]);
    await tabTo(page, /^One fewer Six-inch round/);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    expect((await focused(page)).name, 'the button is gone, its tin is not').toMatch(/^Six-inch round/);
    await page.keyboard.press('Enter');
    await tabTo(page, /^Clear the plan/);
    await page.keyboard.press('Enter');
    expect((await focused(page)).name).toBe('Bring the tins back');
    await page.keyboard.press('Enter');
    expect(await page.locator('.headline span').allTextContents()).toEqual(headline);
    await tabTo(page, /^How|working/);
    await page.keyboard.press('Enter');
    await page.waitForSelector('.working .step');
    await tabTo(page, /^Bake this/);
    await tabTo(page, /^Tin chart/);
    const [file] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Enter')]);
    expect(
      readFileSync(await file.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-');
    expect(complaints).toEqual([]);
    await context.close();
  });

  it('the worktop is ticked off and left by keys; nothing there is too wide, too small or lost in few colours', async () => {
    const context = await browser.newContext({ viewport: PHONE, reducedMotion: 'reduce' });
    const { page, complaints } = await watched(context, 'file://');
    await page.goto(
      address('planner.html#tins=2+x+round-4,2+x+round-6&finishes=vanilla-buttercream--filling'),
    );
    await page.waitForSelector('.headline');
    for (const how of ['spaced', 'as it is'] as const) {
      await withText(page, how);
      expect(await pageWidth(page), `planner, text ${how}`).toBeLessThanOrEqual(PHONE.width);
    }
    await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
    expect(await goneInForcedColours(page)).toEqual([]);
    const marked = await page
      .locator('.tin-shelf > li.on')
      .first()
      .evaluate((tin) => getComputedStyle(tin).outlineStyle);
    expect(marked).toBe('solid');
    await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
    await page.locator('.answer > button.next').focus();
    await page.keyboard.press('Enter');
    expect((await page.locator(':focus').textContent())?.length).toBeGreaterThan(5);
    await tabTo(page, /./);
    await page.keyboard.press('Space');
    expect(await page.locator('.tick.done').count()).toBe(1);
    for (const how of ['spaced', 'twice as large', 'as it is'] as const) {
      await withText(page, how);
      await page.setViewportSize(how === 'twice as large' ? { width: 640, height: 640 } : PHONE);
      const { width } = page.viewportSize() ?? PHONE;
      expect(await pageWidth(page), `worktop, text ${how}`).toBeLessThanOrEqual(width);
    }
    expect(await axeFaults(page)).toEqual([]);
    await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
    expect(await goneInForcedColours(page)).toEqual([]);
    await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light' });
    await page.locator('button.leave').focus();
    await page.keyboard.press('Enter');
    await page.waitForSelector('.headline');
    // Whoever comes back is where they left, not at the top of the page.
    expect((await focused(page)).html).toContain('next');
    expect(complaints).toEqual([]);
    await context.close();
  });
});

describe('headings, landmarks and language', () => {
  it('of the planner run in order, under one main, in the kitchen’s language', async () => {
    const page = await browser.newPage();
    await page.goto(address('planner.html#tins=2+x+round-4,2+x+round-6'));
    await page.waitForSelector('.headline');
    const told = await page.evaluate(() => ({
      levels: [...document.querySelectorAll('h1, h2, h3, h4, h5')].map(({ tagName }) => Number(tagName[1])),
      mains: document.querySelectorAll('main').length,
      lang: document.documentElement.lang,
      headers: [...document.querySelectorAll('table tr')].every(
        (row) => row.querySelector('th[scope]') !== null,
      ),
    }));
    expect(told.levels[0]).toBe(1);
    for (const [at, level] of told.levels.entries())
      expect(level - (told.levels[at - 1] ?? 1), `heading ${at + 1}`).toBeLessThanOrEqual(1);
    expect(told).toMatchObject({ mains: 1, lang: 'en-GB', headers: true });
    await page.close();
  });
});
