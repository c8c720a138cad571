/** The planner in a real browser: the build's figures, by its own controls and by address; its prints, byte for byte. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { planAnswer } from '../../src/planner/answer.ts';
import { EMPTY_PLAN, type PlanState, planText } from '../../src/planner/plan-state.ts';
import { plannerContent } from '../../src/views/planner-content.ts';
import { demoOutput } from '../build/support/demo-output.ts';
import { ask } from '../commands/support/command-line.ts';
import { readDemo } from '../samples/demo.ts';
import { launchBrowser } from './browser.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
/** How many plans are compared without the controls: a sample, always the same, until the long run asks all. */
const PLANS = isLong ? 300 : 60;

let output = '';
let browser: Browser;
let demo: Content;

beforeAll(async () => {
  output = demoOutput();
  const { content } = await readDemo();
  if (content === null) throw new Error('the demo content is wrong');
  demo = content;
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

const address = (hash = ''): string => `${pathToFileURL(join(output, 'site/planner.html')).href}${hash}`;

async function opened(
  hash = '',
  viewport = { width: 390, height: 844 },
): Promise<{ page: Page; faults: string[] }> {
  const context = await browser.newContext({ viewport });
  await context.setOffline(true);
  const page = await context.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  await page.goto(address(hash));
  await page.waitForSelector('.tin-shelf, .found, .asked');
  return { page, faults };
}

/** Plans that a baker might ask for. */
function plans(): fc.Arbitrary<PlanState> {
  const described = ['round 7in x 3in', 'square 150mm x 75mm', 'petal6 9in x 3in', 'ring 9in tube 3in x 3in'];
  const tin = fc.constantFrom(...demo.kitchen.tins.map(({ id }) => id), ...described);
  return fc
    .record({
      recipe: fc.constantFrom(...demo.recipes),
      tins: fc.uniqueArray(fc.record({ tin, count: fc.integer({ min: 1, max: 5 }) }), {
        minLength: 1,
        maxLength: 5,
        selector: (one) => one.tin,
      }),
      flavour: fc.nat(30),
      height: fc.constantFrom('', '', '40 mm', '1 1/2in'),
      egg: fc.constantFrom('', 'UK large', 'US large'),
      step: fc.constantFrom(0, 0, 1, 10),
    })
    .map(({ recipe, flavour, ...rest }): PlanState => {
      const suits = demo.flavours.filter(({ suits: { recipeIds } }) => recipeIds.includes(recipe.id));
      const chosen = suits[flavour];
      return {
        ...EMPTY_PLAN,
        ...rest,
        recipeId: recipe.id,
        flavourIds: chosen === undefined ? [] : [chosen.id],
      };
    });
}

describe('the planner', () => {
  it(`gives for ${PLANS} plans the very figures of the build’s own computations`, async () => {
    const { page, faults } = await opened();
    const asked = fc.sample(plans(), { numRuns: PLANS, seed: 5 });
    const addresses = asked.map(planText);
    const answers = await page.evaluate((texts) => {
      const plan = (window as unknown as { tinwrightPlan(text: string): unknown }).tinwrightPlan;
      return texts.map((text) => JSON.stringify(plan(text)));
    }, addresses);
    const content = plannerContent(demo);
    let answered = 0;
    for (const [at, state] of asked.entries()) {
      const here = planAnswer(state, content);
      const expected = here?.ok ? here.value.json : here;
      expect(JSON.parse(answers[at] ?? 'null'), addresses[at]).toEqual(JSON.parse(JSON.stringify(expected)));
      answered += here?.ok ? 1 : 0;
    }
    expect(answered).toBeGreaterThan((2 / 3) * PLANS);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('shows by its own controls what mix --json says, for twenty plans', async () => {
    const { page, faults } = await opened();
    const ids = demo.kitchen.tins.map(({ id }) => id);
    for (let round = 0; round < 20; round += 1) {
      const recipe = demo.recipes[round % demo.recipes.length];
      const chosen = [ids[(3 * round) % ids.length], ids[(3 * round + 7) % ids.length]].flatMap(
        (one) => one ?? [],
      );
      const tins = chosen.flatMap((one) => demo.kitchen.tins.find(({ id }) => id === one) ?? []);
      await page.locator('.recipe select').selectOption(recipe?.id ?? '');
      const clear = page.locator('.asking > section > button.plain');
      if ((await clear.count()) > 0) await clear.first().click();
      for (const { name } of tins)
        await page
          .locator('button.tin')
          .filter({ has: page.getByText(name, { exact: true }) })
          .click();
      const spec = tins.map(({ id, owned }) => `${owned} x ${id}`).join(', ');
      const { stdout } = await ask('mix', '--recipe', recipe?.id ?? '', '--tins', spec, '--json');
      const { mix } = JSON.parse(stdout) as {
        mix: { batter_g: number; ingredients: { id: string; grams: number }[] };
      };
      const shown = await page.locator('.answer > .weights td b').allTextContents();
      const eggs = new Set(demo.ingredients.filter(({ role }) => role === 'egg').map(({ id }) => id));
      const weighed = mix.ingredients.filter(({ id, grams }) => !eggs.has(id) && grams > 0);
      const figures = shown.map((text) => Number(text.replaceAll(',', '')));
      expect(figures, `${recipe?.id}: ${spec}`).toEqual(weighed.map(({ grams }) => grams));
      expect(await page.locator('.answer .headline .batter').textContent()).toContain(
        Math.round(mix.batter_g).toLocaleString('en-GB'),
      );
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('answers two four-inch and two six-inch tins in two taps, and sends the plan as an address', async () => {
    const { page } = await opened();
    await page
      .locator('button.tin', { hasText: 'Four-inch round' })
      .tap()
      .catch(() => undefined);
    await page.locator('button.tin', { hasText: 'Four-inch round' }).first().click();
    const first = page.url();
    expect(first).toContain('tins=');
    await page.goto(address('#tins=2+x+round-4%2C+2+x+round-6'));
    await page.waitForSelector('.headline');
    const told = await page.locator('.headline').textContent();
    const { page: other } = await opened(new URL(page.url()).hash);
    expect(await other.locator('.headline').textContent()).toBe(told);
    await page.context().close();
    await other.context().close();
  });

  it('prints a chart and a template with the very bytes of the build, without a signal', async () => {
    const { page, faults } = await opened('#recipe=vanilla-equal-weights&tins=2+x+round-6');
    for (const [button, path] of [
      ['Tin chart', 'tin-charts/vanilla-equal-weights-a4.pdf'],
      ['Lining templates', 'templates/round-6-a4.pdf'],
    ] as const) {
      const [file] = await Promise.all([
        page.waitForEvent('download'),
        page.locator('.print-here button', { hasText: button }).click(),
      ]);
      const made = readFileSync(await file.path());
      expect(made.equals(readFileSync(join(output, 'print', path))), path).toBe(true);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('turns eggs and guests into plans with a tap', async () => {
    for (const hash of ['#ask=7+eggs', '#ask=60+portions']) {
      const { page } = await opened(hash);
      await page.locator('.found button').first().click();
      await page.waitForSelector('.answer .headline');
      expect(page.url()).toContain('tins=');
      await page.context().close();
    }
  });

  it('takes a tin that nobody owns, and says what is wrong with one that cannot be', async () => {
    const { page } = await opened();
    await page.locator('.other-tin summary').click();
    await page.locator('.other-tin input').nth(0).fill('7');
    await page.locator('.other-tin input').nth(1).fill('nothing');
    await page.locator('.other-tin button').click();
    expect(await page.locator('.other-tin .wrong').count()).toBeGreaterThan(0);
    await page.locator('.other-tin input').nth(1).fill('3');
    await page.locator('.other-tin button').click();
    expect(await page.locator('.headline .batter').count()).toBe(1);
    await page.context().close();
  });

  it('keeps my tins and settings on the device', async () => {
    const { page } = await opened('#tins=1+x+round-6');
    await page.locator('.own summary').click();
    await page.locator('.own input').first().fill('US large');
    await page.reload();
    await page.waitForSelector('.own');
    expect(await page.locator('.answer').textContent()).toContain('US large');
    await page.context().close();
  });

  it('has nothing against it, on a phone and a desk, in light and dark', async () => {
    const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
    for (const colorScheme of ['light', 'dark'] as const) {
      for (const viewport of [
        { width: 320, height: 700 },
        { width: 1280, height: 900 },
      ]) {
        const { page } = await opened(
          '#tins=2+x+round-12,1+x+beehive&finishes=vanilla-buttercream--filling',
          viewport,
        );
        await page.emulateMedia({ colorScheme });
        for (const details of await page.locator('summary').all()) await details.click();
        await page.evaluate(axe);
        // The dark has the light's elements in other colours: the quick run asks of it only what colours decide.
        const asked =
          isLong || colorScheme === 'light' ? {} : { runOnly: ['color-contrast', 'link-in-text-block'] };
        const found = await page.evaluate(async (options) => {
          const run = (
            window as unknown as {
              axe: {
                run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
              };
            }
          ).axe;
          return (await run.run(options)).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
        }, asked);
        expect(found).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(wide).toBeLessThanOrEqual(0);
        await page.context().close();
      }
    }
  });
});
