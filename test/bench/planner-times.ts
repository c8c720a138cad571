/** How long the planner takes from a tap on a tin to the new answer in the page, with so many tins on the plan. */
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';

export interface Times {
  what: string;
  /** Whether the budget is asked of it. */
  counts: boolean;
  median: number;
  of99: number;
}

function times(what: string, counts: boolean, all: readonly number[]): Times {
  const sorted = all.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.ceil(share * sorted.length) - 1] ?? Number.NaN;
  return { what, counts, median: at(0.5), of99: at(0.99) };
}

/** Taps before the first that counts: engines translate code when it has run a few times. */
const WARM = 40;

/** One more, one fewer, tin after tin: the answer each time, and the page brought up to it. */
export async function plannerTimes(
  browser: Browser,
  site: string,
  tins: number,
  changes: number,
): Promise<Times[]> {
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(pathToFileURL(join(site, 'planner.html')).href);
  await page.waitForSelector('button.tin');
  for (let tin = 0; tin < tins; tin += 1) await page.locator('button.tin').nth(tin).click();
  await page.waitForSelector('.headline');
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  /** Seconds of the page's own processor time, so that other work on the computer does not count. */
  const worked = async (): Promise<number> => {
    const { metrics } = await session.send('Performance.getMetrics');
    return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
  };
  const answers: number[] = [];
  const shown: number[] = [];
  const busy: number[] = [];
  for (let change = 0; change < WARM + changes; change += 1) {
    const before = await worked();
    const taken = await page.evaluate(async (at) => {
      const buttons = [...document.querySelectorAll<HTMLButtonElement>('.steps-of button:last-child')];
      const fewer = [...document.querySelectorAll<HTMLButtonElement>('.steps-of button:first-child')];
      const tin = Math.floor(at / 2) % buttons.length;
      const start = performance.now();
      (at % 2 === 0 ? buttons : fewer)[tin]?.click();
      // The page is brought up to date in the next turn, before anything is painted.
      await new Promise((done) => queueMicrotask(() => queueMicrotask(() => done(null))));
      const drawn = performance.now();
      document.body.getBoundingClientRect();
      return { drawn: drawn - start, laidOut: performance.now() - start };
    }, change);
    if (change < WARM) continue;
    busy.push(1000 * ((await worked()) - before));
    answers.push(taken.drawn);
    shown.push(taken.laidOut);
  }
  await page.close();
  return [
    times('the new answer in the page', true, answers),
    times('and the page laid out anew', true, shown),
    times('processor time of the page for all of it', false, busy),
  ];
}
