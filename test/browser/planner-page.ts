/** The planner's page of the built demo, from disk and without a network: what both of its test files open. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { demoOutput } from '../build/support/demo-output.ts';

/** A phone as it is held: touched, not pointed at. */
const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  hasTouch: true,
  isMobile: true,
};

export interface OpenedPage {
  page: Page;
  /** What the page threw or complained of. */
  faults: string[];
}

/** The address of a page of the built site. */
export const fileAddress = (path: string, hash = ''): string =>
  `${pathToFileURL(join(demoOutput(), 'site', path)).href}${hash}`;

/** A page of its own, watched from its first moment. */
export async function openedPage(
  browser: Browser,
  path: string,
  hash = '',
  options: BrowserContextOptions = PHONE,
): Promise<OpenedPage> {
  const context = await browser.newContext(options);
  await context.setOffline(true);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  await page.goto(fileAddress(path, hash));
  return { page, faults };
}

/** The planner with what stands behind the # of its address. */
export async function openedPlanner(
  browser: Browser,
  hash = '',
  options: BrowserContextOptions = PHONE,
): Promise<OpenedPage> {
  const opened = await openedPage(browser, 'planner.html', hash, options);
  await opened.page.waitForSelector('.tin-shelf, .found, .asked');
  return opened;
}
