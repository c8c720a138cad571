/** What a page costs somebody who opens it for the first time on a slow phone. */
import type { Browser, CDPSession } from 'playwright-core';

export interface Cost {
  /** Everything that came over the line, headers too. */
  transferredBytes: number;
  requests: number;
  elements: number;
  firstPaintMs: number;
  largestPaintMs: number;
  /** Sum of all shifts that nobody asked for. */
  layoutShift: number;
}

export interface SlowPhone {
  cpuSlowdown: number;
  kilobitsDown: number;
  kilobitsUp: number;
  latencyMs: number;
  width: number;
  height: number;
}

const bytesPerSecond = (kilobits: number): number => (kilobits * 1000) / 8;

async function slowedDown(session: CDPSession, phone: SlowPhone): Promise<void> {
  await session.send('Network.enable');
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: phone.latencyMs,
    downloadThroughput: bytesPerSecond(phone.kilobitsDown),
    uploadThroughput: bytesPerSecond(phone.kilobitsUp),
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: phone.cpuSlowdown });
}

interface Seen {
  largest: number;
  shift: number;
}

/** Runs in the page before anything else: paints and shifts are told only to who listens. */
function observe(): void {
  const seen: Seen = { largest: 0, shift: 0 };
  Object.assign(window, { seen });
  new PerformanceObserver((list) => {
    for (const { startTime } of list.getEntries()) seen.largest = startTime;
  }).observe({ type: 'largest-contentful-paint', buffered: true });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries() as (PerformanceEntry & {
      value: number;
      hadRecentInput: boolean;
    })[])
      if (!entry.hadRecentInput) seen.shift += entry.value;
  }).observe({ type: 'layout-shift', buffered: true });
}

/** Paints come a moment after the last script. */
const SETTLED_MS = 700;

/** Opens an address with an empty cache. */
export async function costOf(browser: Browser, address: string, phone: SlowPhone): Promise<Cost> {
  const { width, height } = phone;
  const context = await browser.newContext({ viewport: { width, height }, serviceWorkers: 'block' });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await slowedDown(session, phone);
  const came = { bytes: 0, requests: 0 };
  session.on('Network.loadingFinished', ({ encodedDataLength }) => {
    came.bytes += encodedDataLength;
    came.requests += 1;
  });
  await page.addInitScript(observe);
  await page.goto(address);
  await page.waitForTimeout(SETTLED_MS);
  const told = await page.evaluate(() => ({
    ...(window as unknown as { seen: Seen }).seen,
    first: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.POSITIVE_INFINITY,
    elements: document.querySelectorAll('*').length,
  }));
  await context.close();
  return {
    transferredBytes: came.bytes,
    requests: came.requests,
    elements: told.elements,
    firstPaintMs: told.first,
    largestPaintMs: told.largest,
    layoutShift: told.shift,
  };
}
