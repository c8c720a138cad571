/** The planner of an American kitchen: pans, cups, °F, ounces and Letter, in the page that the demo's build made. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readContent } from '../../src/read/content.ts';
import { embeddableFonts, readHouseFonts } from '../../src/site/house-fonts.ts';
import { plannerAssets } from '../../src/site/planner-assets.ts';
import { BRITISH_TERMS, METRIC_FIRST, termsIn } from '../american/british-terms.ts';
import { demoOutput } from '../build/support/demo-output.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { launchBrowser } from './browser.ts';

const KITCHEN = 'test/kitchens/good/us-bakery';

let folder = '';
let browser: Browser;
let page: Page;
const faults: string[] = [];

/** Scripts of the American kitchen beside the page and styles that every kitchen's planner has. */
async function americanPlanner(): Promise<string> {
  const site = mkdtempSync(join(tmpdir(), 'tinwright-american-'));
  const demo = join(demoOutput(), 'site');
  cpSync(join(demo, 'style'), join(site, 'style'), { recursive: true });
  cpSync(join(demo, 'planner.html'), join(site, 'planner.html'));
  cpSync(join(demo, 'script'), join(site, 'script'), { recursive: true });
  const { content } = await readContent(KITCHEN);
  if (content === null) throw new Error('the American kitchen cannot be read');
  const { houseStyle: style } = content;
  const fonts = await embeddableFonts(await readHouseFonts(style, KITCHEN), style);
  const text = readFileSync(join(KITCHEN, 'kitchen.yaml'), 'utf8');
  for (const { path, bytes } of await plannerAssets(content, { style, fonts, producer: 'Tinwright' }, text)) {
    mkdirSync(join(site, path, '..'), { recursive: true });
    writeFileSync(join(site, path), typeof bytes === 'function' ? bytes() : bytes);
  }
  return site;
}

beforeAll(async () => {
  const [site, started] = await Promise.all([americanPlanner(), launchBrowser()]);
  folder = site;
  browser = started;
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  page = await context.newPage();
  page.on('pageerror', (error) => faults.push(error.message));
  await page.goto(`${pathToFileURL(join(folder, 'planner.html')).href}#tins=1+x+round-8`);
  await page.waitForSelector('.headline');
});

afterAll(async () => {
  await browser?.close();
  if (folder !== '') rmSync(folder, { recursive: true, force: true });
});

const textOf = async (selector: string): Promise<string> =>
  (await page.locator(selector).allInnerTexts()).join('\n').replaceAll('\u00a0', ' ');

describe('an American kitchen’s planner', () => {
  it('answers in ounces, inches and °F, and follows a change of pans', async () => {
    const before = await textOf('.answer');
    expect(before).toMatch(/\d ?oz/);
    expect(before).toMatch(/\d °F/);
    await page.getByRole('button', { name: 'One more Eight-inch round' }).tap();
    await expect.poll(() => textOf('.headline')).not.toBe(before.split('\n')[0]);
    expect(await textOf('.answer')).not.toBe(before);
    expect(termsIn(await textOf('.answering'), METRIC_FIRST)).toEqual([]);
    await page.getByRole('button', { name: /^Fluted mold/ }).tap();
    await expect.poll(() => textOf('.answer')).toContain('Fluted mold');
    expect(await textOf('.tin-shelf')).toMatch(/10 cups/);
  });

  it('speaks of pans, and says nothing British, whatever is opened', async () => {
    for (const details of await page.locator('.planner summary').all()) await details.tap();
    await page.locator('.working .step').first().waitFor();
    expect(await textOf('.planner')).toMatch(/\bpans?\b/);
    expect(termsIn(await textOf('.planner'), BRITISH_TERMS)).toEqual([]);
  });

  it('offers Letter first, and prints on it', async () => {
    expect(await page.getByLabel('Paper').inputValue()).toBe('Letter');
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'This plan, with boxes to tick' }).tap(),
    ]);
    const { pages } = await readPdf(new Uint8Array(readFileSync(await file.path())));
    expect(file.suggestedFilename()).toMatch(/letter\.pdf$/);
    expect(pages[0]?.widthMm).toBeCloseTo(215.9, 2);
    const printed = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
    expect(printed).toMatch(/\d oz/);
    expect(termsIn(printed, BRITISH_TERMS)).toEqual([]);
    expect(faults).toEqual([]);
  });
});
