/** Facts of the trade: common practice, no source. Tested on the demo's own equal-weights sponge. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { type Mix, planMix } from '../../../src/compute/mixes/plan-mix.ts';
import type { Content } from '../../../src/domain/content.ts';
import { type EggSize, tableShelledG } from '../../../src/domain/egg.ts';
import type { Recipe } from '../../../src/domain/recipe.ts';
import { readContent } from '../../../src/read/content.ts';
import { surplusInWords } from '../../../src/wording/surplus.ts';
import { enGB } from '../../../src/wording/locales/en-GB.ts';
import { bigBowl, line, round, tin } from '../../compute/mixes/sample.ts';

const source: { tolerance: number } = JSON.parse(readFileSync(new URL('source.json', import.meta.url), 'utf8'));

let content: Content;
let sponge: Recipe;
beforeAll(async () => {
  const read = await readContent(fileURLToPath(new URL('../../../content', import.meta.url)));
  if (read.content === null) throw new Error(JSON.stringify(read.problems));
  content = read.content;
  const found = content.recipes.find(({ id }) => id === 'vanilla-equal-weights');
  if (found === undefined) throw new Error('the demo has no equal-weights sponge');
  sponge = found;
});

function mixFor(acrossIn: number, size: EggSize): Mix {
  const egg = { ...content.kitchen.egg, size, shelledG: tableShelledG(size) ?? Number.NaN };
  const mix = planMix({
    recipe: sponge,
    formula: sponge.formula,
    asks: [{ tin: round(acrossIn, 2), count: 2, heightMm: 65 }],
    kitchen: { ...content.kitchen, egg },
  });
  if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
  return mix.value;
}

const SIZES: EggSize[] = [
  { scheme: 'UK', grade: 'medium' },
  { scheme: 'US', grade: 'large' },
];
const gramsOf = (mix: Mix, role: string): number =>
  mix.lines.filter((each) => each.role === role).reduce((sum, { grams }) => sum + grams, 0);

describe('an equal-weights creamed sponge', () => {
  it('takes one egg with about 50 g of flour', () => {
    for (const size of SIZES) {
      const mix = mixFor(6, size);
      const flourPerEgg = gramsOf(mix, 'flour') / (mix.eggs?.whole ?? Number.NaN);
      expect(Math.abs(flourPerEgg / 50 - 1)).toBeLessThanOrEqual(source.tolerance);
    }
  });

  it('was proven in tins other than six-inch rounds', () => {
    const proven = sponge.provenBakes.flatMap((bake) => bake.tins.map(({ tin: used }) => used.shape));
    expect(proven.length).toBeGreaterThan(0);
    for (const shape of proven) {
      expect(shape.kind === 'round' && Math.abs(shape.acrossMm - 152.4) < 1).toBe(false);
    }
  });

  it.each(SIZES)('fills a pair of 6 × 3 in rounds at 65 mm with 250 g each and five eggs ($scheme $grade)', (size) => {
    const mix = mixFor(6, size);
    expect(mix.eggs?.whole).toBe(5);
    for (const role of ['fat', 'sugar', 'flour']) {
      expect(Math.abs(gramsOf(mix, role) / 250 - 1), role).toBeLessThanOrEqual(source.tolerance);
    }
  });

  it('follows the square of the width to the 8 inch pair, before eggs are rounded', () => {
    const [six, eight] = SIZES.slice(0, 1).flatMap((size) => [mixFor(6, size), mixFor(8, size)]);
    expect((eight?.askedG ?? 0) / (six?.askedG ?? 1)).toBeCloseTo((8 / 6) ** 2, 4);
    expect((eight?.eggs?.exact ?? 0) / (six?.eggs?.exact ?? 1)).toBeCloseTo((8 / 6) ** 2, 4);
  });
});

/** A formula a quarter of which is egg, 50 g each, in a tin that takes exactly what the example needs. */
function exampleOf(needG: number): Mix {
  const measured = tin('measured', { kind: 'measured', volumeMl: 1000 }, 100);
  const recipe: Recipe = {
    ...sponge,
    formula: [line('rest', 750), line('egg', 250, { role: 'egg', eggPart: 'egg' })],
    provenBakes: [{ tins: [{ tin: measured, count: 1 }], finishedHeightMm: 100, batterG: needG }],
    finishedHeightMm: 100,
  };
  const kitchen = { ...bigBowl, egg: { ...bigBowl.egg, shelledG: 50 }, scale: { stepG: 0.5, fineStepG: 0.5 } };
  const mix = planMix({ recipe, formula: recipe.formula, asks: [{ tin: measured, count: 1 }], kitchen });
  if (!mix.ok) throw new Error(JSON.stringify(mix.problems));
  return mix.value;
}

describe('the egg step-up, worked by hand', () => {
  it('needs 860 g: 4.30 eggs, −7.0 % from 4, so 5 eggs and 1,000 g, 5 fairy cakes and 15 g over', () => {
    const mix = exampleOf(860);
    expect(mix.eggs).toMatchObject({ rule: 'step-up', exact: 4.3, whole: 5 });
    expect(mix.loads[0]?.eggs?.factor).toBeCloseTo(1.16279, 5);
    expect(mix.batterG).toBe(1000);
    expect(mix.surplusG).toBe(140);
    expect(surplusInWords(mix.surplusG, 25, enGB)).toBe('140 g over: 5 fairy cakes and 15 g');
  });

  it('needs 830 g: 4.15 eggs, −3.6 % from 4, so 4 eggs, 622.5 g and 200 g, 7.5 g short', () => {
    const mix = exampleOf(830);
    expect(mix.eggs).toMatchObject({ rule: 'nearest', exact: 4.15, whole: 4 });
    expect(mix.eggs?.deviation).toBeCloseTo(-0.036, 3);
    expect(mix.lines.map(({ grams }) => grams)).toEqual([622.5, 200]);
    expect(mix.surplusG).toBe(-7.5);
    expect(surplusInWords(mix.surplusG, 25, enGB)).toBe('7.5 g short, shared by volume');
  });
});
