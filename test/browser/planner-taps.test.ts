/** The planner as a person with a phone meets it: every step is a tap on what the page shows, none an address typed. */
import { readFileSync } from 'node:fs';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerMix } from '../../src/commands/mix-command.ts';
import type { Content } from '../../src/domain/content.ts';
import { parseKitchenYaml } from '../../src/parse/kitchen.ts';
import type { MixJson } from '../../src/views/mix-json.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { demoContent } from '../samples/demo.ts';
import { launchBrowser } from './browser.ts';
import { fileAddress, openedPage, openedPlanner } from './planner-page.ts';

let browser: Browser;
let demo: Content;

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

/** What the command answers to the same question. */
function commanded(recipe: string, tins: string): MixJson {
  const said: string[] = [];
  const terminal = { say: (text: string) => void said.push(text), tell: () => undefined, watched: false };
  answerMix({ content: '', output: '', recipe, tins, json: true }, demo, terminal);
  return JSON.parse(said.join('\n')) as MixJson;
}

const tin = (page: Page, name: string): Locator => page.getByRole('button', { name: new RegExp(`^${name}`) });

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** The whole answer as it is seen; what is only said aloud comes a moment later. */
const answerOn = async (page: Page): Promise<string> =>
  (await page.locator('.answer > :not(.unseen)').allTextContents()).join('\n');

async function textOfPdf(path: string): Promise<string> {
  const { pages } = await readPdf(new Uint8Array(readFileSync(path)));
  return plain(pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' '));
}

/** In sight whole, without another touch: above the fold, below the top. */
const comesIntoSight = (page: Page, selector: string): Promise<unknown> =>
  page.waitForFunction((wanted) => {
    const box = document.querySelector(wanted)?.getBoundingClientRect();
    return box !== undefined && box.top >= 0 && box.bottom <= innerHeight;
  }, selector);

describe('with a phone in the hand', () => {
  it('the home page is three taps from eggs and grams for two four-inch and two six-inch tins, then they print', async () => {
    const { page, faults } = await openedPage(browser, 'index.html');
    let taps = 0;
    const tap = async (what: Locator): Promise<void> => {
      taps += 1;
      await what.tap();
    };
    const clock = (): Promise<number> => page.evaluate(() => Date.now());
    const from = await clock();
    await tap(page.getByRole('link', { name: 'Plan a bake' }));
    await page.waitForURL(/planner\.html/);
    expect(taps).toBe(1);
    await tap(tin(page, 'Four-inch round'));
    await tap(tin(page, 'Six-inch round'));
    await tap(page.locator('.in-sight'));
    await comesIntoSight(page, '.answer > .headline');
    await comesIntoSight(page, '.answer > .weights');
    const seconds = ((await clock()) - from) / 1000;
    expect(taps - 1).toBeLessThanOrEqual(3);
    expect(seconds).toBeLessThan(30);
    const { mix } = commanded('vanilla-equal-weights', '2 x round-4, 2 x round-6');
    const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
    const eggs = `${words[mix.eggs?.whole ?? 0]} eggs`;
    expect((await page.locator('.headline .eggs').textContent())?.toLowerCase()).toBe(eggs);
    const weights = plain((await page.locator('.answer > .weights').textContent()) ?? '');
    const weighed = mix.ingredients.filter(({ id }) => id !== 'egg');
    expect(weighed.length).toBeGreaterThan(2);
    for (const { id, grams } of weighed) {
      const name = demo.ingredients.find((one) => one.id === id)?.name ?? id;
      expect(weights).toContain(`${name}${grams} g`);
    }
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      tap(page.getByRole('button', { name: 'This plan, with boxes to tick' })),
    ]);
    const printed = await textOfPdf(await file.path());
    expect(printed.toLowerCase()).toContain(eggs);
    for (const { grams } of weighed) expect(printed).toContain(`${grams} `);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('clears the plan and brings the tins back', async () => {
    const { page, faults } = await openedPlanner(browser);
    await tin(page, 'Heart').tap();
    await tin(page, 'Loaf tin').tap();
    const before = await page.locator('.headline').textContent();
    await page.waitForURL(/heart-8.*loaf-9-5/);
    const address = page.url();
    await page.getByRole('button', { name: 'Clear the plan' }).tap();
    expect(await page.locator('.headline').count()).toBe(0);
    await expect.poll(() => page.url()).not.toContain('tins=');
    await page.getByRole('button', { name: 'Bring the tins back' }).tap();
    expect(await page.locator('.headline').textContent()).toBe(before);
    await expect.poll(() => page.url()).toBe(address);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('keeps a change that was made at the very moment of leaving', async () => {
    const { page, faults } = await openedPlanner(browser, '#tins=1+x+heart-8');
    await page.evaluate((elsewhere) => {
      document.querySelector<HTMLButtonElement>('.steps-of button:last-child')?.click();
      location.assign(elsewhere);
    }, fileAddress('tins.html'));
    await page.waitForURL(/tins\.html/);
    await page.goBack();
    await page.waitForSelector('.headline');
    expect(page.url()).toContain('tins=2+x+heart-8');
    expect(await page.locator('.steps-of output').textContent()).toBe('2');
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe('what most visits never ask for', () => {
  it('is fetched when it is asked for: the working, and the method', async () => {
    const { page, faults } = await openedPlanner(browser, '#tins=1+x+round-6');
    const fetched = (): Promise<string[]> =>
      page.evaluate(() => [...document.scripts].map(({ src }) => src.split('/').at(-1) ?? ''));
    const first = await fetched();
    expect(first).toEqual(expect.arrayContaining(['planner.js', 'planner-data.js']));
    await page.getByText('How these figures came about').tap();
    await page.locator('.working .step').first().waitFor();
    expect(await page.locator('.working .step').count()).toBeGreaterThan(20);
    await page.getByRole('button', { name: 'Bake this' }).tap();
    await page.locator('.worktop .method .tick').first().waitFor();
    expect(await page.locator('.worktop .method .tick').count()).toBeGreaterThan(3);
    const later = (await fetched()).filter((name) => !first.includes(name));
    expect(later).toEqual(['working.js', 'methods.js']);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe('sending a plan', () => {
  const sent = (page: Page): Locator => page.getByRole('button', { name: 'Send this plan' });

  it('copies its address, which opens the very plan elsewhere', async () => {
    const { page, faults } = await openedPlanner(browser);
    await page.evaluate(() => Reflect.deleteProperty(Navigator.prototype, 'share'));
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await tin(page, 'Octagon').tap();
    await page.getByRole('button', { name: 'One more Octagon' }).tap();
    await sent(page).tap();
    await page.getByText('Its address is copied').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    const told = await answerOn(page);
    const other = await openedPlanner(browser, new URL(copied).hash);
    expect(copied.startsWith(fileAddress('planner.html'))).toBe(true);
    expect(await answerOn(other.page)).toBe(told);
    expect([...faults, ...other.faults]).toEqual([]);
    await page.context().close();
    await other.page.context().close();
  });

  it('gives it to the device’s own list of ways to share, and says when neither works', async () => {
    const { page } = await openedPlanner(browser, '#tins=1+x+heart-8');
    await page.evaluate(() => {
      const shared: unknown[] = [];
      Object.assign(window, { shared });
      Object.defineProperty(navigator, 'share', {
        configurable: true,
        value: async (what: unknown) => void shared.push(what),
      });
    });
    await sent(page).tap();
    const shared = await page.evaluate(() => (window as unknown as { shared: unknown[] }).shared);
    expect(shared).toEqual([{ title: 'Equal-weights vanilla sponge', url: page.url() }]);
    expect(await page.locator('.send p').textContent()).toBe('');
    for (const [name, says] of [
      ['AbortError', ''],
      ['NotAllowedError', 'the plan is the page’s own address'],
    ] as const) {
      await page.evaluate((error) => {
        const value = () => Promise.reject(new DOMException('no', error));
        Object.defineProperty(navigator, 'share', { configurable: true, value });
      }, name);
      await sent(page).tap();
      if (says !== '') await page.getByText(says).waitFor();
      else expect(await page.locator('.send p').textContent()).toBe('');
    }
    await page.context().close();
  });
});

describe('my own kitchen', () => {
  it('is saved as a kitchen.yaml that the build reads, and opened on another device', async () => {
    const { page, faults } = await openedPlanner(browser, '#tins=1+x+round-6');
    await page.getByText('My tins and settings', { exact: true }).tap();
    await page.getByLabel('My eggs').fill('US large');
    await page.getByLabel('How many of Six-inch round').fill('3');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as kitchen.yaml' }).tap(),
    ]);
    const path = await file.path();
    const text = readFileSync(path, 'utf8');
    const outlines = new Map(demo.outlines.map(({ id, outline }) => [id, { id, outline, sized: true }]));
    const read = parseKitchenYaml(text, 'kitchen.yaml', outlines);
    expect(read.problems).toEqual([]);
    expect(read.kitchen?.egg.size).toEqual({ scheme: 'US', grade: 'large' });
    expect(read.kitchen?.tins.find(({ id }) => id === 'round-6')?.owned).toBe(3);
    for (const kept of ['finishing:', 'label:', 'costs:', '# How cakes are cut'])
      expect(text).toContain(kept);
    const told = await answerOn(page);
    const other = await openedPlanner(browser, '#tins=1+x+round-6');
    expect(await answerOn(other.page)).not.toBe(told);
    await other.page.getByText('My tins and settings', { exact: true }).tap();
    const field = other.page.getByLabel('Open a kitchen.yaml');
    await field.setInputFiles({ name: 'kitchen.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await other.page.locator('.answer', { hasText: 'US large' }).waitFor();
    expect(await answerOn(other.page)).toBe(told);
    expect(await other.page.getByLabel('How many of Six-inch round').inputValue()).toBe('3');
    await field.setInputFiles({
      name: 'kitchen.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(text.replace('depth: 3in', 'depth: three')),
    });
    await other.page.locator('.own .wrong').first().waitFor();
    expect([...faults, ...other.faults]).toEqual([]);
    await page.context().close();
    await other.page.context().close();
  });

  it('has its own prices, typed or out of an ingredients.yaml, kept when the page comes again', async () => {
    const { page, faults } = await openedPlanner(browser, '#tins=1+x+round-6');
    const total = page.locator('.cost b');
    const published = await total.textContent();
    await page.getByText('My prices', { exact: true }).tap();
    await page.getByLabel('Butter', { exact: true }).fill('250 g 9.00');
    const typed = await total.textContent();
    expect(typed).not.toBe(published);
    await page.reload();
    await total.waitFor();
    expect(await total.textContent()).toBe(typed);
    await page.getByText('My prices', { exact: true }).tap();
    await page.getByLabel('Open an ingredients.yaml').setInputFiles({
      name: 'ingredients.yaml',
      mimeType: 'text/yaml',
      buffer: readFileSync('content/ingredients.yaml'),
    });
    await page.locator('.cost b', { hasText: published ?? '?' }).waitFor();
    await page.getByLabel('Butter', { exact: true }).fill('250 g dear');
    await page.locator('.prices .wrong', { hasText: 'Butter' }).waitFor();
    expect(await page.locator('.cost').textContent()).toContain('No price yet for butter');
    await page.getByRole('button', { name: 'Forget my prices' }).tap();
    expect(await total.textContent()).toBe(published);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
