import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { answerMix } from '../../src/commands/mix-command.ts';
import type { Content } from '../../src/domain/content.ts';
import type { Recipe } from '../../src/domain/recipe.ts';
import type { TinCount } from '../../src/domain/tin.ts';
import { parseSpec } from '../../src/parse/spec.ts';
import { parseEggWeight } from '../../src/parse/units/egg-size.ts';
import { bakesOfRecipes } from '../../src/views/chart-inputs.ts';
import { mixJson } from '../../src/views/mix-json.ts';
import { type Planned, plan } from '../../src/views/plan.ts';
import type { RecipeBakes } from '../../src/views/recipe-bakes.ts';
import { recipeBakes } from '../../src/views/recipe-bakes.ts';
import { planWorking } from '../../src/views/working-plan.ts';
import { demoContent } from '../samples/demo.ts';
import { agrees, evaluate } from './arithmetic.ts';

let demo: Content;
let bakes: Map<string, RecipeBakes>;

beforeAll(async () => {
  const content = await demoContent();
  demo = content;
  bakes = bakesOfRecipes(content);
});

interface Asked {
  recipe: Recipe;
  flavourIds: string[];
  spec: string;
  heightMm?: number;
  eggSize?: string;
}

function tinsOf(spec: string): TinCount[] {
  const tins = parseSpec(spec, { tins: demo.kitchen.tins, outlines: demo.outlines });
  if (!tins.ok) throw new Error(tins.problems[0]?.message);
  return tins.value;
}

function planned({ recipe, flavourIds, spec, heightMm, eggSize }: Asked): Planned {
  const egg = eggSize === undefined ? null : parseEggWeight(eggSize, demo.kitchen.egg.size?.scheme);
  const bake = bakes.get(recipe.id);
  const result = plan(
    {
      recipe,
      flavours: flavourIds.flatMap((id) => demo.flavours.find((flavour) => flavour.id === id) ?? []),
      tins: tinsOf(spec),
      ...(heightMm === undefined ? {} : { heightMm }),
      ...(egg?.ok ? { egg: { ...demo.kitchen.egg, ...egg.value } } : {}),
      finishes: demo.finishes.flatMap(({ id, use }) =>
        (Object.keys(use) as (keyof typeof use)[]).map((one) => ({ finishId: id, use: one })),
      ),
      sizeId: 'dessert',
      ...(bake === undefined ? {} : { bakes: bake }),
    },
    demo,
  );
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join(' '));
  return result.value;
}

/** Questions that a baker might ask; tins from the shelf and tins described. */
function questions(): fc.Arbitrary<Asked> {
  const described = [
    'round 7in x 3in',
    'square 150mm x 75mm',
    'hexagon flats 9in x 3in',
    'ring 9in tube 3in x 3in',
  ];
  const tin = fc.constantFrom(...demo.kitchen.tins.map(({ id }) => id), ...described);
  const item = fc.tuple(fc.integer({ min: 1, max: 4 }), tin).map(([count, name]) => `${count} x ${name}`);
  return fc
    .record({
      recipe: fc.constantFrom(...demo.recipes),
      items: fc.uniqueArray(item, {
        minLength: 1,
        maxLength: 4,
        selector: (text) => text.replace(/^\d+ x /, ''),
      }),
      heightMm: fc.option(fc.integer({ min: 25, max: 45 }), { nil: undefined }),
      eggSize: fc.option(fc.constantFrom('UK large', 'US large', 'UK small'), { nil: undefined }),
      flavour: fc.nat(20),
    })
    .map(({ recipe, items, heightMm, eggSize, flavour }) => {
      const suits = demo.flavours.filter(({ suits: { recipeIds } }) => recipeIds.includes(recipe.id));
      const chosen = suits[flavour];
      return {
        recipe,
        flavourIds: chosen === undefined ? [] : [chosen.id],
        spec: items.join(', '),
        ...(heightMm === undefined ? {} : { heightMm }),
        ...(eggSize === undefined ? {} : { eggSize }),
      };
    });
}

const RUNS = process.env.TINWRIGHT_LONG ? 300 : 12;

describe('a plan', () => {
  it('has the very figures of mix --json', () => {
    fc.assert(
      fc.property(questions(), (asked) => {
        const { recipe, flavourIds, spec, heightMm, eggSize } = asked;
        const said: string[] = [];
        const options = {
          ...{ content: '', output: '', json: true, recipe: recipe.id, tins: spec },
          ...(flavourIds.length === 0 ? {} : { flavour: flavourIds.join(',') }),
          ...(heightMm === undefined ? {} : { height: `${heightMm}mm` }),
          ...(eggSize === undefined ? {} : { eggSize }),
        };
        const terminal = {
          say: (text: string) => void said.push(text),
          tell: () => undefined,
          watched: false,
        };
        expect(answerMix(options, demo, terminal)).toBe(0);
        const { mix } = planned(asked);
        const size = eggSize === undefined ? demo.kitchen.egg.size : parseSize(eggSize);
        const answer = mixJson(mix, {
          finishedHeightMm: heightMm ?? recipe.finishedHeightMm,
          egg: { size },
          bakes: recipeBakes(recipe, demo),
          locale: demo.kitchen.locale,
        });
        expect(JSON.parse(JSON.stringify(answer))).toEqual(JSON.parse(said.join('\n')));
      }),
      { numRuns: RUNS, seed: 11 },
    );
  });

  it('can be worked through from its own text', () => {
    fc.assert(
      fc.property(questions(), (asked) => {
        const { input, mix, view } = planned(asked);
        const working = planWorking(input, mix, view.title, view.chartId);
        const steps = [...working.shared, ...working.rows.flatMap((row) => row.steps)];
        const wrong = steps
          .filter(({ operation, output }) => !agrees(operation, output.figure.text, new Map(), 5e-3))
          .map(({ id, operation, output }) => `${id}: ${operation} = ${evaluate(operation)}, ${output.text}`);
        expect(wrong).toEqual([]);
      }),
      { numRuns: RUNS, seed: 12 },
    );
  });

  it('adds up: bowlfuls make the mix, and what the tins get is what the bowls give', () => {
    fc.assert(
      fc.property(questions(), (asked) => {
        const { view, mix } = planned(asked);
        expect(view.loads.reduce((sum, { batter }) => sum + batter.value, 0)).toBeCloseTo(
          view.batter.value,
          3,
        );
        for (const [at, { id }] of view.columns.entries()) {
          const total = view.loads.reduce((sum, { amounts }) => sum + (amounts[at]?.figure.value ?? 0), 0);
          expect(total, id).toBeCloseTo(view.amounts[at]?.figure.value ?? 0, 3);
        }
        const poured = view.tins.reduce((sum, { receives, count }) => sum + receives.value * count, 0);
        // A bowl that falls short shares what it has; one that makes more leaves it over.
        const given = mix.loads.reduce((sum, { batterG, askedG }) => sum + Math.min(batterG, askedG), 0);
        expect(poured).toBeCloseTo(given, 1);
      }),
      { numRuns: RUNS * 2, seed: 13 },
    );
  });

  it('finishes all cakes: parts make up what is made, and packets hold it', () => {
    const [recipe] = demo.recipes;
    if (recipe === undefined) throw new Error('no recipes');
    const { view } = planned({ recipe, flavourIds: [], spec: '2 x round-6, 1 x square-8, 1 x beehive' });
    expect(view.finishes.length).toBeGreaterThan(8);
    for (const { id, make, buy, needed, parts } of view.finishes) {
      expect(make.value, id).toBeGreaterThanOrEqual(needed.value);
      if (buy !== null) expect(buy.value).toBeGreaterThanOrEqual(make.value);
      const lost = demo.finishes.find((finish) => id.startsWith(`${finish.id}--`))?.cookingLossShare ?? 0;
      const whole = parts.reduce((sum, { amount }) => sum + amount.figure.value, 0);
      expect(Math.abs(whole * (1 - lost) - make.value), id).toBeLessThan(0.02 * make.value + 5);
    }
    expect(view.unfinished).toHaveLength(1);
  });
});

function parseSize(text: string): Content['kitchen']['egg']['size'] {
  const egg = parseEggWeight(text, demo.kitchen.egg.size?.scheme);
  return egg.ok ? (egg.value.size ?? null) : null;
}
