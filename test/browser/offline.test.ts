/** A published site below a sub-path, visited once; then the network is gone. Finding, from disk and without it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { launchBrowser } from './browser.ts';
import { type SiteServer, serveSite } from './site-server.ts';

/** Opened while there was a signal. */
const OPENED = 'files/print/bake-guides/vanilla-equal-weights-a4.pdf';
/** On the kitchen's own paper: kept by itself. */
const OWN = 'files/print/tin-charts/harvest-fruit-a4.pdf';
/** Of a group that was asked for. */
const ASKED = 'files/print/templates/round-6-a4.pdf';
const NEVER = 'files/print/tin-charts/harvest-fruit-letter.pdf';

let site = '';
let browser: Browser;
let server: SiteServer;

/** The policy that every page states, as a host would send it. */
const policy = (): string =>
  /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(
    readFileSync(join(site, 'index.html'), 'utf8'),
  )?.[1] ?? '';

const HEADERS = { 'cache-control': 'no-store' };

beforeAll(async () => {
  site = join(demoOutput(), 'site');
  browser = await launchBrowser();
  server = await serveSite(site, { headers: { ...HEADERS, 'content-security-policy': policy() } });
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
});

/** Until the worker has kept the site and answers for the page. */
const kept = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, { timeout: 60_000 });

const statusOf = (page: Page, path: string): Promise<number> =>
  page.evaluate((address) => fetch(address).then(({ status }) => status), `${server.address}${path}`);

const textOf = (page: Page, path: string): Promise<string> =>
  page.evaluate((address) => fetch(address).then((one) => one.text()), `${server.address}${path}`);

/** Until a print lies on the device. */
const printKept = (page: Page, path: string): Promise<unknown> =>
  page.waitForFunction(
    async (address) =>
      (await (await caches.open('tinwright-prints')).match(address, { ignoreSearch: true })) !== undefined,
    `${server.address}${path}`,
    { timeout: 60_000 },
  );

/** The site's next edition: one page and one print have changed, and with them the worker's list. */
function nextEdition(): Map<string, string> {
  const worker = readFileSync(join(site, 'offline-worker.js'), 'utf8')
    .replace(/tinwrightEdition="\w+"/, 'tinwrightEdition="new"')
    .replace(/("glossary\.html":)"\w+"/, '$1"new"')
    .replace(new RegExp(`("${OWN}":)"\\w+"`), '$1"new"');
  return new Map([
    ['offline-worker.js', worker],
    ['glossary.html', `${readFileSync(join(site, 'glossary.html'), 'utf8')}<!-- printed again -->`],
    [OWN, '%PDF-1.7 drawn again'],
    [OPENED, '%PDF-1.7 drawn again'],
  ]);
}

describe('a site visited once', () => {
  it('is there without the network, with its tin charts and the prints one asked for; a new edition waits', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const said: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') said.push(message.text());
    });
    await page.goto(`${server.address}index.html`);
    await kept(page);
    expect(await statusOf(page, OPENED)).toBe(200);
    await page.goto(`${server.address}downloads.html`);
    const group = page.locator('main > div', { has: page.locator(`a[href="${ASKED}"]`) });
    const offer = group.locator('.keep button');
    await offer.click();
    await group.getByText('Kept on this device').waitFor({ timeout: 60_000 });
    await printKept(page, OWN);
    expect(said).toEqual([]);
    // The server itself goes: no request can be answered by chance.
    const port = Number(new URL(server.address).port);
    await server.close();
    await context.setOffline(true);
    for (const [path, sign] of [
      ['', 'h1'],
      ['charts/harvest-fruit.html', 'table'],
      ['working/vanilla-oil-no-egg.html', '.step'],
      ['glossary.html', '.glossary dt'],
      ['orders.html', 'h1'],
      ['planner.html#tins=2+x+round-4%2C+2+x+round-6', '.headline'],
      ['find.html#octagon', '#found a'],
    ]) {
      await page.goto(`${server.address}${path}`);
      await page.waitForSelector(sign ?? '');
    }
    for (const path of [OPENED, OWN, ASKED]) expect(await statusOf(page, path), path).toBe(200);
    expect(await statusOf(page, NEVER)).toBe(503);
    await page.goto(`${server.address}${NEVER}`);
    expect(await page.locator('h1').textContent()).toBe('Not on this device');
    await page.goto(`${server.address}downloads.html`);
    await group.getByRole('button', { name: 'Let them go' }).click();
    await group.getByRole('button', { name: 'Keep these prints' }).waitFor();
    expect(await statusOf(page, ASKED)).toBe(503);
    await context.setOffline(false);
    server = await serveSite(site, { headers: HEADERS, port, changed: nextEdition() });
    await page.goto(`${server.address}index.html`);
    await page.waitForSelector('.fresh button', { timeout: 60_000 });
    expect(await textOf(page, 'glossary.html')).not.toContain('printed again');
    const reloaded = page.waitForEvent('load');
    await page.locator('.fresh button').click();
    await reloaded;
    expect(await textOf(page, 'glossary.html')).toContain('printed again');
    // No old figure is left on the device: both prints are there anew before the signal goes again.
    for (const path of [OWN, OPENED])
      await page.waitForFunction(
        async (address) => {
          const prints = await caches.open('tinwright-prints');
          const there = await prints.matchAll(address, { ignoreSearch: true });
          const texts = await Promise.all(there.map((one) => one.text()));
          return texts.length > 0 && texts.every((text) => text.includes('drawn again'));
        },
        `${server.address}${path}`,
        { timeout: 60_000 },
      );
    await context.close();
  });
});

describe('finding, from disk', () => {
  it('takes the beginning of a word and a slip of the pen, says so when there is nothing, and lists all', async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(site, 'find.html')).href);
    const found = page.locator('#found a');
    await page.locator('#asked').fill('octag');
    expect((await found.allTextContents()).join()).toContain('Octagon');
    await page.locator('#asked').fill('vanila');
    expect((await found.allTextContents()).join().toLowerCase()).toContain('vanilla');
    await page.locator('#asked').fill('zeppelin<b>');
    expect(await found.count()).toBe(0);
    expect(await page.locator('#found-count').textContent()).toContain('zeppelin<b>');
    expect(await page.locator('.everything a').count()).toBeGreaterThan(50);
    await page.locator('#asked').fill('octagon');
    await found.first().click();
    expect(page.url()).toMatch(/octagon/);
    await page.close();
  });
});
