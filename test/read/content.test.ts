import { describe, expect, it } from 'vitest';
import { outlineBounds } from '../../src/compute/outline/bounds.ts';
import type { Content } from '../../src/domain/content.ts';
import { readContent } from '../../src/read/content.ts';
import { readDemo } from '../samples/demo.ts';

async function good(name: string): Promise<Content> {
  const { content, problems } = await readContent(`test/kitchens/good/${name}`);
  expect(problems).toEqual([]);
  if (content === null) throw new Error(`the kitchen ${name} was not read`);
  return content;
}

const grams = (content: Content): Record<string, number> =>
  Object.fromEntries((content.recipes[0]?.formula ?? []).map((line) => [line.ingredientId, line.grams]));

describe('readContent', () => {
  it('reads the smallest metric kitchen, with the defaults of what it leaves out', async () => {
    const { kitchen, recipes, ingredients, houseStyle, pages, outlines } = await good('minimal');
    expect(kitchen.egg).toEqual({
      size: { scheme: 'UK', grade: 'medium' },
      shelledG: 58 * 0.88,
      source: 'table',
      tolerance: 0.06,
      otherwise: 'step-up',
    });
    expect(kitchen.scale).toEqual({ stepG: 5, fineStepG: 0.5 });
    expect(kitchen.mixer).toEqual({ bowlMl: 4800, maxFill: 0.55, minFill: 0.12 });
    expect(kitchen.tins[0]).toEqual({
      id: 'round-20',
      name: 'Round',
      shape: { kind: 'round', acrossMm: 200 },
      depthMm: 75,
      owned: 2,
      unit: 'cm',
    });
    expect(kitchen.tins[3]?.owned).toBe(1);
    expect(ingredients.map(({ id }) => id)).toEqual([...ingredients.map(({ id }) => id)].sort());
    expect(houseStyle.headingCase).toBe('as written');
    expect(outlines.map(({ id }) => id)).toEqual(['one']);
    expect(pages).toEqual([{ id: 'about', title: 'About', order: 10, markdown: 'A kitchen for tests.' }]);
    const [recipe] = recipes;
    expect(recipe).toMatchObject({
      ovenC: 160,
      rawDensityGPerMl: 0.85,
      rawDensitySource: 'method',
      layers: 2,
    });
  });

  it('turns counts, millilitres and spoons of a formula into grams, in the order written', async () => {
    const content = await good('minimal');
    expect(grams(content)).toEqual({
      butter: 200,
      'caster-sugar': 200,
      egg: 4 * 58 * 0.88,
      'self-raising-flour': 200,
      milk: 20.6,
      'baking-powder': 2,
    });
    const [recipe] = content.recipes;
    expect(recipe?.formula.map(({ ingredientId }) => ingredientId)[2]).toBe('egg');
    expect(recipe?.provenBakes[0]?.batterG).toBeCloseTo(200 * 3 + 4 * 58 * 0.88 + 22.6, 6);
  });

  it('reads a US kitchen in ounces, cups and inches', async () => {
    const content = await good('us');
    const { kitchen } = content;
    expect(kitchen.egg.shelledG).toBeCloseTo(1.75 * 28.349523125, 6);
    expect(kitchen.egg).toMatchObject({ source: 'weighed', otherwise: 'weigh', tolerance: 0.05 });
    expect(kitchen.paper).toEqual(['Letter', 'A4']);
    expect(kitchen.tins.map(({ shape }) => shape.kind)).toContain('measured');
    expect(grams(content)['granulated-sugar']).toBeCloseTo(453.59237 + 2 * 28.349523125, 6);
    expect(grams(content)['all-purpose-flour']).toBeCloseTo(2.5 * 236.5882365 * 0.53, 6);
    // Two large whites of the US table: 50 g × 66 %.
    expect(grams(content)['egg-white']).toBeCloseTo(66, 6);
    // Three eggs of the kitchen's own weighing, because the recipe names no size.
    expect(grams(content).egg).toBeCloseTo(3 * 1.75 * 28.349523125, 6);
    expect(
      content.recipes[0]?.provenBakes[1]?.tins.map(({ tin, count }) => [tin.id, tin.owned, count]),
    ).toEqual([
      ['sheet', 1, 1],
      ['round-6in-x-3in', 0, 1],
    ]);
  });

  it('scales a drawing without a size to the width its tin gives it', async () => {
    const star = (await good('us')).kitchen.tins.find(({ id }) => id === 'star');
    if (star?.shape.kind !== 'outline') throw new Error('the star is drawn');
    const { minX, maxX, minY, maxY } = outlineBounds(star.shape.outline);
    expect(Math.max(maxX - minX, maxY - minY)).toBeCloseTo(254, 3);
  });

  it('gives the same values however often it reads', async () => {
    expect(await good('us')).toEqual(await good('us'));
    expect(JSON.parse(JSON.stringify(await good('minimal')))).toEqual(await good('minimal'));
  });

  it('reads the demo without a word', async () => {
    const { content, problems } = await readDemo();
    expect(problems).toEqual([]);
    expect(content?.recipes.length).toBeGreaterThanOrEqual(5);
  });
});
