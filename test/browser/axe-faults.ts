/** What axe finds against a page as it stands, with its own check of the size of targets (WCAG 2.2) switched on. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules whose answer depends on colours alone. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

/** Only what speeds axe up without changing what it finds: no frames and no style sheets from elsewhere here. */
const QUICKLY = { resultTypes: ['violations'], preload: false, iframes: false, selectors: false };

interface AxeWindow {
  axe?: {
    run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
  };
}

/** 'rule: element' for each rule that something breaks; `colours` asks the colour rules alone. */
export async function axeFaults(page: Page, asked: 'all' | 'colours' = 'all'): Promise<string[]> {
  if (!(await page.evaluate(() => (window as unknown as AxeWindow).axe !== undefined)))
    await page.evaluate(AXE);
  const options =
    asked === 'all'
      ? { ...QUICKLY, rules: { 'target-size': { enabled: true } } }
      : { ...QUICKLY, runOnly: COLOUR_RULES };
  return page.evaluate(async (how) => {
    const { axe } = window as unknown as Required<AxeWindow>;
    const { violations } = await axe.run(how);
    return violations.map(({ id, nodes }) => `${id} (${nodes.length}): ${nodes[0]?.html.slice(0, 300)}`);
  }, options);
}

/**
 * Takes away what a page says over and over: of siblings built alike (the same elements with the same attributes and
 * classes all the way down) two stay. Nothing built otherwise is lost. Returns how many elements are left.
 */
export const thinned = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const built = new Map<Element, string>();
    const build = (element: Element): string => {
      const known = built.get(element);
      if (known !== undefined) return known;
      const attributes = [...element.attributes].map(({ name, value }) =>
        name === 'class' || name === 'role' || name === 'scope' || name.startsWith('aria-c')
          ? `${name}=${value}`
          : name,
      );
      const inner = new Set([...element.children].map(build));
      const text = `${element.tagName} ${attributes.sort().join(' ')}(${[...inner].join()})`;
      built.set(element, text);
      return text;
    };
    const thin = (element: Element): void => {
      const seen = new Map<string, number>();
      for (const child of [...element.children]) {
        const count = (seen.get(build(child)) ?? 0) + 1;
        seen.set(build(child), count);
        // Cells stay beside each other: a row with fewer cells than headings would be another table.
        if (count > 2 && !/^(TD|TH|COL)$/.test(child.tagName)) child.remove();
        else thin(child);
      }
    };
    thin(document.body);
    return document.querySelectorAll('*').length;
  });
