/** The planner's figures in a real browser, by address and by its own controls: those of `mix --json` and of the charts. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { answerMix } from '../../src/commands/mix-command.ts';
import type { Content } from '../../src/domain/content.ts';
import { EMPTY_PLAN, type PlanState, planText } from '../../src/planner/plan-state.ts';
import type { MixJson } from '../../src/views/mix-json.ts';
import { demoOutput } from '../build/support/demo-output.ts';
import { demoContent } from '../samples/demo.ts';
import { launchBrowser } from './browser.ts';
import { openedPlanner } from './planner-page.ts';

const isLong = process.env.TINWRIGHT_LONG !== undefined;
/** How many plans are compared without the controls: a sample, always the same, until the long run asks all. */
const PLANS = isLong ? 300 : 60;

let output = '';
let browser: Browser;
let demo: Content;

beforeAll(async () => {
  output = demoOutput();
  const content = await demoContent();
  demo = content;
  browser = await launchBrowser();
});

afterAll(async () => {
  await browser?.close();
});

const opened = () => openedPlanner(browser);

interface Commanded {
  /** Null where it refuses. */
  json: MixJson | null;
  told: string;
}

/** What the command `mix --json` says, read as a script would. */
function commanded({ recipeId, flavourIds, tins, height, egg, step }: PlanState): Commanded {
  const said: string[] = [];
  const told: string[] = [];
  const terminal = {
    say: (text: string) => void said.push(text),
    tell: (text: string) => void told.push(text),
    watched: false,
  };
  const { kitchen } = demo;
  const scale = step === 0 ? kitchen.scale : { ...kitchen.scale, stepG: step };
  const options = {
    ...{ content: '', output: '', json: true, recipe: recipeId },
    tins: tins.map(({ tin, count }) => `${count} x ${tin}`).join(', '),
    ...(flavourIds.length === 0 ? {} : { flavour: flavourIds.join(',') }),
    ...(height === '' ? {} : { height }),
    ...(egg === '' ? {} : { eggSize: egg }),
  };
  const code = answerMix(options, { ...demo, kitchen: { ...kitchen, scale } }, terminal);
  expect(code).toBe(said.length > 0 ? 0 : 2);
  return { json: said.length > 0 ? (JSON.parse(said.join('\n')) as MixJson) : null, told: told.join('\n') };
}

/** The bundled computation's answers in the page, all at once. */
const answersIn = (page: Page, plans: readonly PlanState[]): Promise<unknown[]> =>
  page.evaluate(
    (addresses) => {
      const { tinwrightPlan } = window as unknown as { tinwrightPlan(address: string): unknown };
      return addresses.map((address) => JSON.parse(JSON.stringify(tinwrightPlan(address))));
    },
    plans.map((plan) => planText(plan)),
  );

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

interface ChartTin {
  tin: string;
  count: number;
  batter_g: number;
  surplus_g: number;
  eggs: { whole: number } | null;
  ingredients: { id: string; grams: number }[];
}

/** Every row of a written chart as a plan of its own: as many of the tin as the row is for. */
function chartedPlans(id: string): { plan: PlanState; row: ChartTin }[] {
  const chart = JSON.parse(readFileSync(join(output, 'data/tin-charts', `${id}.json`), 'utf8')) as {
    recipe: { id: string };
    flavours: { id: string }[];
    tins: ChartTin[];
  };
  return chart.tins.map((row) => ({
    row,
    plan: {
      ...EMPTY_PLAN,
      recipeId: chart.recipe.id,
      flavourIds: chart.flavours.map((flavour) => flavour.id),
      tins: [{ tin: row.tin, count: row.count }],
    },
  }));
}

const byId = (lines: readonly { id: string; grams: number }[]): Record<string, number> =>
  Object.fromEntries(lines.map(({ id, grams }) => [id, grams]));

describe('the planner’s figures', () => {
  it(`gives for ${PLANS} plans the very figures of mix --json, or refuses what it refuses`, async () => {
    const { page, faults } = await opened();
    const asked = fc.sample(plans(), { numRuns: PLANS, seed: 5 });
    const answers = await answersIn(page, asked);
    let answered = 0;
    for (const [at, plan] of asked.entries()) {
      const { json, told } = commanded(plan);
      if (json !== null) expect(answers[at], planText(plan)).toEqual(json);
      else {
        const { ok, problems } = answers[at] as { ok: boolean; problems: { message: string }[] };
        expect(ok, planText(plan)).toBe(false);
        expect(problems.length).toBeGreaterThan(0);
        for (const { message } of problems) expect(told, planText(plan)).toContain(message);
      }
      answered += json === null ? 0 : 1;
    }
    expect(answered).toBeGreaterThan((2 / 3) * PLANS);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('gives for the rows of the written charts the charts’ own figures', async () => {
    const { page } = await opened();
    const ids = readdirSync(join(output, 'data/tin-charts'))
      .filter((name) => name.endsWith('.json'))
      .map((name) => name.replace('.json', ''));
    // Each recipe plain, and one flavour of it: the long run asks all.
    const charts = isLong ? ids : ids.filter((id, at) => !id.includes('--') || !ids[at - 1]?.includes('--'));
    const rows = charts.flatMap(chartedPlans);
    const answers = (await answersIn(
      page,
      rows.map(({ plan }) => plan),
    )) as MixJson[];
    for (const [at, { row, plan }] of rows.entries()) {
      const mix = answers[at]?.mix;
      const about = planText(plan);
      expect(mix?.batter_g, about).toBe(row.batter_g);
      expect(mix?.surplus_g, about).toBe(row.surplus_g);
      expect(mix?.eggs?.whole ?? null, about).toBe(row.eggs?.whole ?? null);
      expect(byId(mix?.ingredients ?? []), about).toMatchObject(byId(row.ingredients));
    }
    expect(rows.length).toBeGreaterThan(150);
    await page.context().close();
  });

  it('shows by its own controls what mix --json says, for twenty plans', async () => {
    const { page, faults } = await opened();
    const ids = demo.kitchen.tins.map(({ id }) => id);
    const eggs = new Set(demo.ingredients.filter(({ role }) => role === 'egg').map(({ id }) => id));
    for (let round = 0; round < 20; round += 1) {
      const recipe = demo.recipes[round % demo.recipes.length];
      const chosen = [ids[(3 * round) % ids.length], ids[(3 * round + 7) % ids.length]].flatMap(
        (one) => one ?? [],
      );
      const tins = chosen.flatMap((one) => demo.kitchen.tins.find(({ id }) => id === one) ?? []);
      const { shown, headline } = await page.evaluate(
        async ({ recipeId, names }) => {
          const drawn = () => new Promise((resolve) => setTimeout(resolve));
          const press = async (wanted: (button: HTMLButtonElement) => boolean) => {
            const button = [...document.querySelectorAll('button')].find(wanted);
            button?.click();
            await drawn();
            return button !== undefined;
          };
          const select = document.querySelector<HTMLSelectElement>('.recipe select');
          if (select !== null) select.value = recipeId;
          select?.dispatchEvent(new Event('change', { bubbles: true }));
          await drawn();
          await press(({ textContent }) => textContent === 'Clear the plan');
          for (const name of names) {
            const there = await press((button) => button.querySelector('.tin-name')?.textContent === name);
            if (!there) throw new Error(`no button for ${name}`);
          }
          return {
            shown: [...document.querySelectorAll('.answer > .weights td b')].map((cell) => cell.textContent),
            headline: document.querySelector('.answer .headline')?.textContent ?? '',
          };
        },
        { recipeId: recipe?.id ?? '', names: tins.map(({ name }) => name) },
      );
      const { json } = commanded({
        ...EMPTY_PLAN,
        recipeId: recipe?.id ?? '',
        tins: tins.map(({ id, owned }) => ({ tin: id, count: owned })),
      });
      const mix = json?.mix;
      const weighed = (mix?.ingredients ?? []).filter(({ id, grams }) => !eggs.has(id) && grams > 0);
      const figures = shown.map((text) => Number(text?.replaceAll(',', '')));
      expect(figures, `${recipe?.id}: ${chosen}`).toEqual(weighed.map(({ grams }) => grams));
      expect(weighed.length).toBeGreaterThan(2);
      expect(headline).toContain(`${Math.round(mix?.batter_g ?? 0).toLocaleString('en-GB')} g of batter`);
    }
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
