import { beforeAll, describe, expect, it } from 'vitest';
import type { BakeLogRow } from '../../src/domain/bake-log.ts';
import type { Content } from '../../src/domain/content.ts';
import type { Kitchen } from '../../src/domain/kitchen.ts';
import type { Recipe } from '../../src/domain/recipe.ts';
import { chartBake } from '../../src/views/bake-figures.ts';
import { bakeGuideView } from '../../src/views/bake-guide.ts';
import { chartViews } from '../../src/views/chart-views.ts';
import { type RecipeBakes, recipeBakes } from '../../src/views/recipe-bakes.ts';
import { recipeCardView } from '../../src/views/recipe-card.ts';
import { readDemo } from '../samples/demo.ts';

let demo: Content;
let recipe: Recipe;

beforeAll(async () => {
  const { content } = await readDemo();
  const found = content?.recipes.find(({ id }) => id === 'vanilla-equal-weights');
  if (content === null || found === undefined) throw new Error('the demo content is wrong');
  demo = content;
  recipe = found;
});

const tinOf = (id: string) => {
  const tin = demo.kitchen.tins.find((one) => one.id === id);
  if (tin === undefined) throw new Error(`no tin ${id}`);
  return tin;
};
const likely = (bakes: RecipeBakes): number =>
  bakes.guidance(tinOf('round-8'), 65)?.plain.window.likelyMin ?? 0;
const width = (bakes: RecipeBakes): number => {
  const window = bakes.guidance(tinOf('round-8'), 65)?.plain.window;
  return window === undefined ? 0 : window.expectedByMin - window.firstLookMin;
};

describe('several ovens', () => {
  let kitchen: Kitchen;
  let moved: BakeLogRow[];
  beforeAll(() => {
    const [main] = [demo.kitchen.oven];
    if (main === undefined) throw new Error('the demo has no oven');
    const small = { ...main, id: 'small', name: 'The small oven', fan: false, dial: 'gas' as const };
    kitchen = { ...demo.kitchen, furtherOvens: [small] };
    // Every bake took a fifth longer in the small one.
    moved = demo.bakeLog.map((row) => ({ ...row, ovenId: 'small', minutes: row.minutes * 1.2 }));
  });

  it('learn each from its own bakes', () => {
    const both = { ...demo, kitchen, bakeLog: [...demo.bakeLog, ...moved] };
    const here = recipeBakes(recipe, both);
    const there = recipeBakes({ ...recipe, ovenId: 'small' }, both);
    expect(here.fit.plain.bakes).toBe(6);
    expect(there.fit.plain.bakes).toBe(6);
    expect(there.fit.plain.timeFactor / here.fit.plain.timeFactor).toBeGreaterThan(1.12);
    expect(there.oven.dial).toBe('gas');
  });

  it('start from what another taught, less surely than it, and more surely than from nothing', () => {
    const elsewhere = { ...demo, kitchen, bakeLog: moved };
    const here = recipeBakes(recipe, elsewhere);
    const there = recipeBakes({ ...recipe, ovenId: 'small' }, elsewhere);
    const nothing = recipeBakes(recipe, { ...elsewhere, bakeLog: [] });
    expect(here.fit.plain.bakes).toBe(0);
    expect(here.elsewhere).toBe(6);
    expect(here.fit.plain.timeFactor).toBeCloseTo(there.fit.plain.timeFactor, 6);
    expect(width(here)).toBeGreaterThan(width(there));
    expect(width(here)).toBeLessThan(width(nothing));
    expect(chartBake(here, 'en-GB').basisText).toContain(
      'Six logged bakes in another oven gave their say first',
    );
  });

  it('are named on the chart and beside each bake', () => {
    const both = { ...demo, kitchen, bakeLog: [...demo.bakeLog, ...moved] };
    const there = recipeBakes({ ...recipe, ovenId: 'small' }, both);
    expect(chartBake(there, 'en-GB').basisText).toMatch(/^In The small oven\./);
    const guide = bakeGuideView(there, kitchen, null);
    expect(guide.log).toHaveLength(14);
    expect(guide.log.filter(({ how }) => how.startsWith('The small oven'))).toHaveLength(7);
    expect(guide.log.filter(({ dial }) => dial.startsWith('gas'))).toHaveLength(7);
    expect(guide.settingText).toContain('The small oven');
  });
});

describe('the batter’s temperature', () => {
  it('lengthens the bake when it comes from the cold, by the recipe or by the kitchen, and is told', () => {
    const warm = recipeBakes(recipe, { ...demo, bakeLog: [] });
    const chilled = recipeBakes({ ...recipe, batterC: 5 }, { ...demo, bakeLog: [] });
    const cool = recipeBakes(recipe, { ...demo, bakeLog: [], kitchen: { ...demo.kitchen, batterC: 5 } });
    expect(likely(chilled)).toBeGreaterThan(likely(warm) * 1.03);
    expect(likely(cool)).toBe(likely(chilled));
    expect(bakeGuideView(chilled, demo.kitchen, null).settingText).toContain('5\u00a0°C');
  });

  it('noted with a bake makes that bake say no more than it should of the recipe', () => {
    const cold = demo.bakeLog.map((row) => ({ ...row, batterC: 5 }));
    const [plain, noted] = [demo.bakeLog, cold].map((bakeLog) => recipeBakes(recipe, { ...demo, bakeLog }));
    expect(noted?.fit.plain.timeFactor).toBeLessThan(plain?.fit.plain.timeFactor ?? 0);
  });
});

describe('a recipe that starts from its make-up', () => {
  it('does so only while nothing is logged, and says so on chart and page', () => {
    const asks: Recipe = { ...recipe, bakeClass: 'dense chocolate', bakeStart: 'composition' };
    const bakes = recipeBakes(asks, { ...demo, bakeLog: [] });
    expect(bakes.fit.plain.timeFactor).toBeCloseTo(bakes.makeUp.timeFactor, 6);
    expect(bakes.fit.plain.timeFactor).toBeLessThan(1.1);
    expect(width(bakes) / likely(bakes)).toBeGreaterThan(
      width(recipeBakes(recipe, { ...demo, bakeLog: [] })) /
        likely(recipeBakes(recipe, { ...demo, bakeLog: [] })),
    );
    expect(chartBake(bakes, 'en-GB').basisText).toContain('what its batter is made of');
    expect(bakeGuideView(bakes, demo.kitchen, null).makeUp.sentences.join(' ')).toContain(
      'asks to start from its make-up',
    );
  });
});

describe('cores', () => {
  it('are not spoken of in a tray, a ring or for an egg-white foam, and are in a deep wide round', () => {
    const advice = (one: Recipe, tinId: string, heightMm: number) =>
      recipeBakes(one, demo).guidance(tinOf(tinId), heightMm);
    expect(advice(recipe, 'round-10', 65)?.coreIsWorthIt).toBe(true);
    expect(advice(recipe, 'tray-13-9', 56)).toMatchObject({ coreIsWorthIt: false, noCore: 'shallow' });
    expect(advice(recipe, 'ring-10', 65)).toMatchObject({ coreIsWorthIt: false, noCore: 'tube' });
    const foam: Recipe = { ...recipe, method: 'angel' };
    expect(advice(foam, 'round-10', 65)).toMatchObject({ coreIsWorthIt: false, noCore: 'foam' });
  });
});

describe('a kitchen with bands and no core', () => {
  it('is told to put one on where the edge needs it, on the chart, in its times and on the card', () => {
    const kitchen: Kitchen = { ...demo.kitchen, oven: { fan: false, dial: 'C', core: 'none', band: true } };
    const content = { ...demo, kitchen, flavours: [], recipes: [recipe] };
    const hot: Recipe = { ...recipe, finishedHeightMm: 75, ovenC: 180 };
    const [view] = chartViews({ ...content, recipes: [hot] });
    const rows = (view?.chart.rows ?? []).filter(({ bake }) => bake?.band);
    expect(rows.length).toBeGreaterThan(0);
    for (const { bake } of rows) expect(bake?.advice).toContain('Band round the tin.');
    if (view === undefined) throw new Error('no chart');
    const card = recipeCardView({ kitchen, recipe: hot, chart: view.chart });
    const banded = card.tins.filter(({ bake }) => bake?.band).map(({ id }) => id);
    expect(banded.length).toBeGreaterThan(0);
    expect(rows.map(({ id }) => id)).toEqual(expect.arrayContaining(banded));
  });
});
