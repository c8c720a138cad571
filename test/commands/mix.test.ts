/** Long because every promise of `mix --json` and every way of asking it stand together. */
import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { answerMix } from '../../src/commands/mix-command.ts';
import { chartViews } from '../../src/views/chart-views.ts';
import { demoContent } from '../samples/demo.ts';
import { ask } from './support/command-line.ts';

/** What the contract promises, key by key; other keys may stand beside these. */
const eggs = z.object({
  exact: z.number().positive().nullable(),
  whole: z.number().int().positive().nullable(),
  rule: z.enum(['nearest', 'step-up', 'weigh', 'none']),
  deviation: z.number().nullable(),
});
const answer = z.object({
  recipe: z.string(),
  flavours: z.array(z.string()),
  finished_height_mm: z.number().positive(),
  egg_size: z.string().nullable(),
  tins: z
    .array(
      z.object({
        tin: z.string(),
        count: z.number().int().positive(),
        plan_area_mm2: z.number().positive().nullable(),
        perimeter_mm: z.number().positive().nullable(),
        volume_ml: z.number().positive(),
        batter_g_each: z.number().positive(),
        raw_fill_mm: z.number().positive(),
        finished_height_mm: z.number().positive(),
      }),
    )
    .min(1),
  mix: z.object({
    batter_g: z.number().positive(),
    scale: z.number().positive(),
    eggs,
    ingredients: z.array(z.object({ id: z.string(), grams: z.number().positive() })).min(1),
    surplus_g: z.number(),
  }),
  loads: z.array(z.object({ batter_g: z.number().positive(), eggs })).min(1),
  warnings: z.array(z.object({ code: z.string().regex(/^[a-z]+(-[a-z]+)*$/), message: z.string().min(1) })),
});
type MixAnswer = z.infer<typeof answer>;

const RECIPES = readdirSync('content/recipes').map((name) => name.replace(/\.md$/, ''));
const SPECS = [
  '2 x round 4in x 3in, 2 x round 6in x 3in',
  '1 x square 200mm x 75mm',
  '1 x rectangle 9in by 13in x 2in',
  '1 x hexagon flats 8in x 3in, 1 x octagon corners 8in x 3in',
  '1 x heart across 8in x 3in, 1 x heart point 8in x 3in',
  '1 x long-octagon 12in by 9in slant 3in x 3in',
  '1 x petal6 9in x 3in',
  '1 x ring 10in tube 3in x 3in',
  '1 x loaf 9in by 5in base 8in by 4in x 2.75in',
  '1 x round 8in base 7.5in x 3in',
  '1 x oval 10in by 8in x 3in',
  '1 x dome 6in, 1 x dome 8in x 2in',
  '1 x measured 1850ml x 75mm',
];
const TOLERANCE = 0.06;

const sum = (numbers: number[]): number => numbers.reduce((total, number) => total + number, 0);

async function mixOf(recipe: string, tins: string, ...more: string[]): Promise<MixAnswer> {
  const { code, stdout, stderr } = await ask(
    'mix',
    '--recipe',
    recipe,
    '--tins',
    tins,
    '--json',
    ...OUT,
    ...more,
  );
  expect(stderr).toBe('');
  expect(code).toBe(0);
  return answer.parse(JSON.parse(stdout));
}

/** The same where many are asked: the command itself, with the demo read once. The command line is asked for each option once. */
async function saidFromRead(recipe: string, tins: string, json: boolean, flavour?: string): Promise<string> {
  const content = await demoContent();
  const [said, told]: [string[], string[]] = [[], []];
  const terminal = {
    say: (text: string) => void said.push(text),
    tell: (text: string) => void told.push(text),
    watched: false,
  };
  const options = { content: 'content', output: 'nowhere', recipe, tins, json };
  const code = answerMix(flavour === undefined ? options : { ...options, flavour }, content, terminal);
  expect([code, told]).toEqual([0, []]);
  return said.join('\n');
}

const mixFromRead = async (recipe: string, tins: string, flavour?: string): Promise<MixAnswer> =>
  answer.parse(JSON.parse(await saidFromRead(recipe, tins, true, flavour)));

/** No command may touch the output folder of whoever runs the tests. */
const OUT = ['--output', 'nowhere'];

function expectMassKept({ tins, mix, loads }: MixAnswer): void {
  expect(sum(mix.ingredients.map(({ grams }) => grams))).toBeCloseTo(mix.batter_g, 2);
  const asked = sum(tins.map(({ count, batter_g_each }) => count * batter_g_each));
  expect(Math.abs(asked + mix.surplus_g - mix.batter_g)).toBeLessThan(0.05);
  expect(sum(loads.map(({ batter_g }) => batter_g))).toBeCloseTo(mix.batter_g, 2);
}

function expectEggsRuled({ mix, loads }: MixAnswer): void {
  const { rule, whole, exact, deviation } = mix.eggs;
  if (rule === 'none') expect([whole, exact, deviation]).toEqual([null, null, null]);
  else expect(sum(loads.map((load) => load.eggs.whole ?? 0))).toBe(whole);
  for (const { eggs: own } of loads) {
    if (own.rule === 'nearest') expect(Math.abs(own.deviation ?? 1)).toBeLessThanOrEqual(TOLERANCE + 1e-5);
    if (own.rule === 'step-up') expect(own.whole).toBe(Math.ceil(own.exact ?? 0));
    if (own.rule !== 'none')
      expect((own.whole ?? 0) / (own.exact ?? 1) - 1).toBeCloseTo(own.deviation ?? 9, 4);
  }
}

describe('mix --json', () => {
  it.each(RECIPES)('answers as the contract says for %s in tins of every shape', async (recipe) => {
    // Nine recipes ask for a third of the tins each, so that every tin is asked for; the long run asks all of all.
    const third = RECIPES.indexOf(recipe) % 3;
    const specs = SPECS.filter((_, index) => process.env.TINWRIGHT_LONG !== undefined || index % 3 === third);
    const [first] = specs;
    if (recipe === RECIPES[0] && first !== undefined)
      expect(await mixOf(recipe, first)).toEqual(await mixFromRead(recipe, first));
    for (const spec of specs) {
      const mix = await mixFromRead(recipe, spec);
      expect(mix.recipe).toBe(recipe);
      expectMassKept(mix);
      expectEggsRuled(mix);
    }
  });

  it('asks twice the batter for twice the tins, before eggs are rounded', async () => {
    for (const recipe of RECIPES) {
      const one = await mixFromRead(recipe, '1 x round 6in x 3in');
      const two = await mixFromRead(recipe, '2 x round 6in x 3in');
      expect(two.tins[0]?.batter_g_each).toBe(one.tins[0]?.batter_g_each);
      expect(two.tins[0]?.count).toBe(2);
    }
  });

  it('takes the height that was asked for', async () => {
    const mix = await mixOf('vanilla-equal-weights', '1 x round 6in x 3in', '--height', '2in');
    expect(mix.finished_height_mm).toBeCloseTo(50.8, 6);
    expect(mix.tins[0]?.finished_height_mm).toBeCloseTo(50.8, 6);
  });

  it('counts in the eggs to hand', async () => {
    const own = await mixOf('vanilla-equal-weights', '4 x round 8in x 3in');
    const large = await mixOf('vanilla-equal-weights', '4 x round 8in x 3in', '--egg-size', 'UK large');
    const weighed = await mixOf('vanilla-equal-weights', '4 x round 8in x 3in', '--egg-size', '40 g');
    expect(large.egg_size).toBe('UK large');
    expect(large.mix.eggs.exact ?? 0).toBeLessThan(own.mix.eggs.exact ?? 0);
    expect(weighed.mix.eggs.exact ?? 0).toBeGreaterThan(own.mix.eggs.exact ?? 0);
  });

  it('applies flavours in the order they are named, and keeps the mass', async () => {
    const ids = readdirSync('content/flavours').map((name) => name.replace(/\.yaml$/, ''));
    expect(ids.length).toBeGreaterThan(1);
    for (const id of ids) {
      const mix = await mixFromRead('vanilla-equal-weights', '2 x round 8in x 3in', id);
      expect(mix.flavours).toEqual([id]);
      expectMassKept(mix);
      expectEggsRuled(mix);
    }
    const two = ids.slice(0, 2);
    const both = await mixOf('vanilla-equal-weights', '2 x round 8in x 3in', '--flavour', two.join(', '));
    expect(both.flavours).toEqual(two);
    expectMassKept(both);
  });

  it('knows the kitchen’s own tins by their ids', async () => {
    const mix = await mixOf('vanilla-equal-weights', '2 x round-6');
    expect(mix.tins[0]).toMatchObject({ tin: 'round-6', count: 2 });
  });

  it('a pair of 6 inch round tins, 3 inches deep, takes 250 g each of fat, sugar and flour and 5 eggs within 8 % (common practice, no source)', async () => {
    const { mix } = await mixOf('vanilla-equal-weights', '2 x round 6in x 3in', '--egg-size', 'UK medium');
    expect(mix.eggs.whole).toBe(5);
    for (const id of ['butter', 'caster-sugar', 'self-raising-flour']) {
      const grams = mix.ingredients.find((line) => line.id === id)?.grams ?? 0;
      expect(Math.abs(grams / 250 - 1)).toBeLessThan(0.08);
    }
  });
});

describe('mix in words', () => {
  it('says the eggs and the batter first, then weights, tins, bowlfuls and what is over', async () => {
    const { code, stdout } = await ask(
      'mix',
      '--recipe',
      'vanilla-equal-weights',
      '--tins',
      '2 x round-6',
      ...OUT,
    );
    expect(code).toBe(0);
    const [title, , headline] = stdout.split('\n');
    expect(title).toBe('Equal-weights vanilla sponge: 2 × Six-inch round');
    expect(headline).toMatch(/^Five eggs and 1,0\d\d(\.\d)? g of batter in all\. UK medium eggs/);
    expect(stdout).toMatch(/^ {2}Butter +250 g$/m);
    expect(stdout).toMatch(/^ {2}Six-inch round +\d+ g +\d+ mm +65 mm +round 6 × 3 in$/m);
    expect(stdout).toMatch(/^One bowlful\.$/m);
    expect(stdout).toMatch(/^Caution: Raw egg and raw flour/m);
  });

  it('shows the same weights as the JSON: grams as they are, counted eggs to the gram', async () => {
    const tins = '3 x round 8in x 3in, 1 x square 10in x 3in';
    for (const recipe of RECIPES) {
      const { mix } = await mixFromRead(recipe, tins);
      const stdout = await saidFromRead(recipe, tins, false);
      const shown = [...stdout.matchAll(/^ {2}\S.*? {2,}(\d+ \()?([\d,.]+) g/gm)].slice(
        0,
        mix.ingredients.length,
      );
      for (const [at, { grams }] of mix.ingredients.entries()) {
        const [, counted, text = ''] = shown[at] ?? [];
        expect(Number(text.replaceAll(',', ''))).toBe(counted === undefined ? grams : Math.round(grams));
      }
    }
  });

  it('warns of the allergens that a flavour brings', async () => {
    const args = ['--recipe', 'vanilla-equal-weights', '--tins', '2 x round-6', ...OUT];
    expect((await ask('mix', ...args)).stdout).not.toContain('almonds');
    const { stdout } = await ask('mix', ...args, '--flavour', 'almond');
    expect(stdout).toMatch(/^Equal-weights vanilla sponge, Almond: 2 × Six-inch round$/m);
    expect(stdout).toMatch(/^Caution: .*almonds \(nuts\)/m);
  });

  it('gives each kind of bowlful a column of its own', async () => {
    const args = ['--recipe', 'whisked-butter-sponge', '--tins', '6 x square 12in x 3in, 1 x dome-6', ...OUT];
    const { stdout } = await ask('mix', ...args);
    const { loads } = await mixOf('whisked-butter-sponge', '6 x square 12in x 3in, 1 x dome-6');
    expect(stdout).toMatch(/^ +in all +\d+ bowls, each +one bowl$/m);
    expect(stdout).toContain(`In ${loads.length} bowlfuls:`);
    expect(stdout).toMatch(/^ {2}\d+\. [\d,]+ g, \w+ eggs?: for 1 × Half sphere$/m);
  });
});

describe('mix refuses, with exit 2, all at once', () => {
  it.each([
    [
      ['--recipe', 'vanila-equal-weights', '--tins', '2 x round-6'],
      "--recipe: error [recipe-unknown] There is no recipe 'vanila-equal-weights'\n    Did you mean 'vanilla-equal-weights'?",
    ],
    [
      ['--recipe', 'vanilla-equal-weights', '--tins', '2 x round-7x'],
      "[tin-unknown] There is no tin 'round-7x'",
    ],
    [['--recipe', 'vanilla-equal-weights', '--tins', 'round-6'], '[spec-count]'],
    [['--recipe', 'vanilla-equal-weights', '--tins', ''], '[spec-empty]'],
    [['--recipe', 'vanilla-equal-weights', '--tins', '1 x round 6in x 3'], '--tins:'],
    [
      ['--recipe', 'vanilla-equal-weights', '--tins', '1 x round-6', '--flavour', 'nothing-known'],
      "--flavour: error [flavour-unknown] There is no flavour 'nothing-known'",
    ],
    [['--recipe', 'vanilla-equal-weights', '--tins', '1 x round-6', '--height', '60'], '--height:'],
    [
      ['--recipe', 'vanilla-equal-weights', '--tins', '1 x round-6', '--height', '200mm'],
      '[height-over-rim]',
    ],
    [
      ['--recipe', 'vanilla-equal-weights', '--tins', '1 x round-6', '--egg-size', 'UK enormous'],
      '--egg-size',
    ],
    [['--recipe', 'vanilla-equal-weights'], "required option '--tins <spec>' not specified"],
    [['--tins', '1 x round-6'], "required option '--recipe <id>' not specified"],
    [['--recipe', 'x', '--tins', '1 x round-6', '--colour'], "unknown option '--colour'"],
  ])('%j', async (args, message) => {
    const { code, stdout, stderr } = await ask('mix', ...args, ...OUT);
    expect(stderr).toContain(message);
    expect(stderr).not.toMatch(/^\s+at /m);
    expect(stdout).toBe('');
    expect(code).toBe(2);
  });

  it('tells every mistake of a command line together', async () => {
    const { stderr } = await ask(
      'mix',
      '--recipe',
      'x',
      '--tins',
      '0 x y',
      '--height',
      '1',
      '--egg-size',
      'z',
      ...OUT,
    );
    for (const option of ['--recipe', '--tins', '--height', '--egg-size'])
      expect(stderr).toContain(`${option}:`);
  });

  it('tells the oven as the chart does: the same dial, times and bakes behind them', async () => {
    const { stdout } = await ask(
      'mix',
      '--recipe',
      'vanilla-equal-weights',
      '--tins',
      '1 x round-10',
      '--json',
    );
    const { bake } = JSON.parse(stdout).tins[0];
    const content = await demoContent();
    const [chart] = chartViews({
      ...content,
      recipes: content.recipes.filter(({ id }) => id === 'vanilla-equal-weights'),
    });
    const row = chart?.chart.rows.find(({ id }) => id === 'round-10')?.bake;
    expect(bake).toEqual({
      dial_c: row?.dial.value,
      first_look_min: row?.firstLook.value,
      likely_min: row?.likely.value,
      done_by_min: row?.expectedBy.value,
      core: row?.core,
      band: row?.band,
      logged_bakes: row?.bakes.value,
    });
    const said = await ask('mix', '--recipe', 'vanilla-equal-weights', '--tins', '1 x round-10');
    expect(said.stdout.replaceAll('\u00a0', ' ')).toContain((row?.advice ?? '').replaceAll('\u00a0', ' '));
  });
});
