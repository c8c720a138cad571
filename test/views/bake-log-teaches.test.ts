import { beforeAll, describe, expect, it } from 'vitest';
import type { BakeLogRow } from '../../src/domain/bake-log.ts';
import type { Content } from '../../src/domain/content.ts';
import { bakeGuideView } from '../../src/views/bake-guide.ts';
import { bakesOfRecipes } from '../../src/views/chart-inputs.ts';
import { chartViews } from '../../src/views/chart-views.ts';
import { demoContent } from '../samples/demo.ts';

const RECIPE = 'vanilla-equal-weights';
let demo: Content;

beforeAll(async () => {
  const content = await demoContent();
  demo = { ...content, flavours: [], recipes: content.recipes.filter(({ id }) => id === RECIPE) };
});

/** Width of each tin's window in minutes, from the chart. */
function widths(bakeLog: BakeLogRow[]): number[] {
  const [view] = chartViews({ ...demo, bakeLog });
  return (view?.chart.rows ?? []).map(({ bake }) =>
    bake ? bake.expectedBy.value - bake.firstLook.value : 0,
  );
}

describe('the bake log', () => {
  it('narrows every window by ten more rows, and widens every window when it is taken away', () => {
    const plain = demo.bakeLog.filter(({ core, notes }) => core === 'none' && !notes?.startsWith('Door'));
    const own = plain.filter(({ recipeId }) => recipeId === RECIPE);
    const more = Array.from({ length: 10 }, (_, at): BakeLogRow[] =>
      own.slice(at % own.length).slice(0, 1),
    ).flat();
    const [none, logged, taught] = [widths([]), widths(demo.bakeLog), widths([...demo.bakeLog, ...more])];
    expect(none.length).toBeGreaterThan(20);
    none.forEach((width, at) => {
      expect(logged[at]).toBeLessThan(0.6 * width);
      expect(taught[at]).toBeLessThan(logged[at] ?? 0);
    });
  });

  it('without a row asks for three bakes and says that the windows are wide', () => {
    const bakes = bakesOfRecipes({ ...demo, bakeLog: [] }).get(RECIPE);
    if (bakes === undefined) throw new Error('no such recipe');
    const guide = bakeGuideView(bakes, demo.kitchen, null);
    expect(guide.ask?.bakes).toHaveLength(3);
    expect(guide.log).toEqual([]);
    expect(guide.basisText).toContain('wide');
  });

  it('names the row that disagrees, by how much, and draws every bake', () => {
    const bakes = bakesOfRecipes(demo).get(RECIPE);
    if (bakes === undefined) throw new Error('no such recipe');
    const guide = bakeGuideView(bakes, demo.kitchen, null);
    expect(guide.odd).toHaveLength(1);
    expect(guide.odd[0]).toMatch(/23 May 2026, Eight-inch round: \d+.min later/);
    expect(guide.plots.map(({ id }) => id)).toEqual(['size', 'warming', 'edge']);
    expect(guide.plots[0]?.marks).toHaveLength(bakes.rows.length);
    expect(JSON.parse(JSON.stringify(guide))).toEqual(guide);
  });
});
