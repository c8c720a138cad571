/** A published site below a sub-path, visited once; then the network is gone. Finding, from disk and without it. */
import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoOutput } from '../build/support/demo-output.ts';
import { launchBrowser } from './browser.ts';

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css',
  '.js': 'text/javascript',
  '.svg': 'image/svg+xml',
  '.pdf': 'application/pdf',
};
const PDF = 'files/print/tin-charts/vanilla-equal-weights-a4.pdf';
const OTHER_PDF = 'files/print/tin-charts/harvest-fruit-a4.pdf';

let folder = '';
let browser: Browser;
let server: Server;
let root = '';

function serve(site: string): Promise<Server> {
  const serving = createServer(({ url = '' }, response) => {
    const path = new URL(url, 'http://localhost').pathname.replace('/some/where/', '');
    try {
      const body = readFileSync(join(site, path));
      response
        .writeHead(200, {
          'content-type': TYPES[extname(path)] ?? 'application/octet-stream',
          'cache-control': 'no-store',
        })
        .end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  return new Promise((resolve) => serving.listen(0, '127.0.0.1', () => resolve(serving)));
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tinwright-offline-'));
  cpSync(join(demoOutput(), 'site'), folder, { recursive: true });
  browser = await launchBrowser();
  server = await serve(folder);
  root = `http://127.0.0.1:${(server.address() as AddressInfo).port}/some/where/`;
});

afterAll(async () => {
  await browser?.close();
  server?.closeAllConnections();
  server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Until the worker has kept the site and answers for the page. */
const kept = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => navigator.serviceWorker.controller !== null, undefined, { timeout: 60_000 });

const statusOf = (page: Page, path: string): Promise<number> =>
  page.evaluate((address) => fetch(address).then(({ status }) => status), `${root}${path}`);

describe('a site visited once', () => {
  it('is there without the network, all but prints never opened; a new edition waits to be asked', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.goto(`${root}index.html`);
    await kept(page);
    expect(await statusOf(page, PDF)).toBe(200);
    // The server itself goes: no request can be answered by chance.
    server.closeAllConnections();
    const { port } = server.address() as AddressInfo;
    await new Promise((resolve) => server.close(resolve));
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
      await page.goto(`${root}${path}`);
      await page.waitForSelector(sign ?? '');
    }
    expect(await statusOf(page, PDF)).toBe(200);
    expect(await statusOf(page, OTHER_PDF)).toBe(503);
    await page.goto(`${root}${OTHER_PDF}`);
    expect(await page.locator('h1').textContent()).toBe('Not on this device');
    // A new edition: one page has changed, and with it the worker's list.
    appendFileSync(join(folder, 'glossary.html'), '<!-- printed again -->');
    const worker = readFileSync(join(folder, 'offline-worker.js'), 'utf8');
    const changed = worker
      .replace(/tinwrightEdition="\w+"/, 'tinwrightEdition="new"')
      .replace(/("glossary\.html":)"\w+"/, '$1"new"');
    writeFileSync(join(folder, 'offline-worker.js'), changed);
    await context.setOffline(false);
    server = createServer().on('request', (request, response) => {
      const path = new URL(request.url ?? '', root).pathname.replace('/some/where/', '');
      try {
        const type = TYPES[extname(path)] ?? 'application/octet-stream';
        response.writeHead(200, { 'content-type': type }).end(readFileSync(join(folder, path)));
      } catch {
        response.writeHead(404).end();
      }
    });
    await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
    await page.goto(`${root}index.html`);
    await page.waitForSelector('.fresh button', { timeout: 60_000 });
    const oldGlossary = await page.evaluate(
      (at) => fetch(at).then((one) => one.text()),
      `${root}glossary.html`,
    );
    expect(oldGlossary).not.toContain('printed again');
    const reloaded = page.waitForEvent('load');
    await page.locator('.fresh button').click();
    await reloaded;
    const newGlossary = await page.evaluate(
      (at) => fetch(at).then((one) => one.text()),
      `${root}glossary.html`,
    );
    expect(newGlossary).toContain('printed again');
    await context.close();
  });
});

describe('finding, from disk', () => {
  it('takes the beginning of a word and a slip of the pen, says so when there is nothing, and lists all', async () => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(folder, 'find.html')).href);
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
