/** One visit of a page from disk that answers all that can be asked of any page: loading is the dear part. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { axeFaults, thinned } from './axe-faults.ts';
import { cutOff, goneInForcedColours, moving, pageWidth, withoutFocusSign, withText } from './in-the-page.ts';

/** What is wrong with a page, sorted by the question; every list should be empty. */
export interface Visit {
  path: string;
  look: { fontFamily: string; backgroundColor: string; loaded: number };
  /** Addresses asked for outside the site, and errors. */
  complaints: string[];
  /** 'width of the page at width of the window' where one must scroll sideways, and text cut off. */
  tooWide: string[];
  /** Only for pages looked at closely. */
  axe: { light: Record<string, string[]>; dark: Record<string, string[]> };
  forced: string[];
  focus: { count: number; faults: string[] };
  motion: string[];
}

interface Watched {
  page: Page;
  complaints: string[];
}

/** A page that records everything it should not do; `home` begins every address it may ask for. */
export async function watched(context: BrowserContext, home: string): Promise<Watched> {
  const complaints: string[] = [];
  const page = await context.newPage();
  page.on('request', (request) => {
    const address = request.url();
    if (!address.startsWith(home) && !address.startsWith('data:')) complaints.push(`asked for ${address}`);
  });
  page.on('pageerror', (error) => complaints.push(`threw ${error.message}`));
  page.on('dialog', (dialog) => {
    complaints.push(`opened a dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
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

/** Opens an address and waits until scripts have run and the fonts are there. */
async function opened(page: Page, address: string): Promise<Visit['look']> {
  await page.goto(address);
  return page.evaluate(async () => {
    await document.fonts.ready;
    const { fontFamily, backgroundColor } = getComputedStyle(document.documentElement);
    const loaded = [...document.fonts].filter(
      ({ status, family }) => status === 'loaded' && family.startsWith('house-'),
    ).length;
    return { fontFamily, backgroundColor, loaded };
  });
}

const HEIGHT = 800;
const NARROWEST = 320;
/** A phone, and a desk at 200 % zoom. */
const ZOOMED = [390, 640];
const DEVICES = { phone: 390, desk: 1280 };

async function wideAt(page: Page, width: number, how = ''): Promise<string[]> {
  await page.setViewportSize({ width, height: HEIGHT });
  const wide = await pageWidth(page);
  return [
    ...(wide > width ? [`${wide} px wide at ${width} px${how}`] : []),
    ...(await cutOff(page)).map((fault) => `${fault} at ${width} px${how}`),
  ];
}

async function stretched(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const width of ZOOMED) faults.push(...(await wideAt(page, width)));
  await withText(page, 'spaced');
  faults.push(...(await wideAt(page, NARROWEST, ', letters spaced')));
  await withText(page, 'twice as large');
  faults.push(...(await wideAt(page, DEVICES.desk, ', letters twice as large')));
  await withText(page, 'as it is');
  return faults;
}

async function byAxe(page: Page, inDark: 'all' | 'colours'): Promise<Visit['axe']> {
  const axe: Visit['axe'] = { light: {}, dark: {} };
  for (const [device, width] of Object.entries(DEVICES)) {
    await page.setViewportSize({ width, height: HEIGHT });
    axe.light[device] = await axeFaults(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    axe.dark[device] = await axeFaults(page, inDark);
    await page.emulateMedia({ colorScheme: 'light' });
  }
  return axe;
}

/** Asks everything of a page that stands open, which is spoilt by it: alike parts are taken out for axe. */
async function lookedAtClosely(
  page: Page,
  { isLong }: { isLong: boolean },
): Promise<Pick<Visit, 'axe' | 'forced' | 'focus' | 'motion' | 'tooWide'>> {
  if (!isLong) await thinned(page);
  const tooWide = await stretched(page);
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const forced = await goneInForcedColours(page);
  await page.emulateMedia({ forcedColors: 'none', colorScheme: 'light', reducedMotion: 'reduce' });
  const motion = await moving(page);
  const focus = await withoutFocusSign(page);
  return { tooWide, forced, motion, focus, axe: await byAxe(page, isLong ? 'all' : 'colours') };
}

/** Visits pages one after the other; those in `closely` are asked everything. */
export async function visits(
  browser: Browser,
  paths: readonly string[],
  {
    addressOf,
    closely,
    isLong,
  }: { addressOf(path: string): string; closely: ReadonlySet<string>; isLong: boolean },
): Promise<Visit[]> {
  const context = await browser.newContext();
  const { page, complaints } = await watched(context, 'file://');
  const made: Visit[] = [];
  for (const path of paths) {
    complaints.length = 0;
    await page.setViewportSize({ width: NARROWEST, height: HEIGHT });
    const look = await opened(page, addressOf(path));
    await withText(page, 'as it is');
    const tooWide = await wideAt(page, NARROWEST);
    const visit = { path, look, tooWide, axe: { light: {}, dark: {} }, forced: [], motion: [] };
    const close = closely.has(path) ? await lookedAtClosely(page, { isLong }) : null;
    made.push({
      ...visit,
      focus: { count: 0, faults: [] },
      ...close,
      tooWide: [...tooWide, ...(close?.tooWide ?? [])],
      complaints: [...complaints],
    });
  }
  await context.close();
  return made;
}
