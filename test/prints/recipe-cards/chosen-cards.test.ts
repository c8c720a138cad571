import { describe, expect, it } from 'vitest';
import type { Content } from '../../../src/domain/content.ts';
import type { Printable } from '../../../src/domain/printable.ts';
import { recipeCardPrints, recipeCardViews, wantedSizes } from '../../../src/prints/recipe-card-prints.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import { wantedPrints } from '../../../src/views/wanted-prints.ts';
import { sampleFonts } from '../../samples/fonts.ts';
import { sampleStyle } from '../../samples/house-style.ts';

const lang = 'en-GB';

describe('wantedSizes(wishes)', () => {
  it('go with the papers: A5 and A6 with A4, index cards with Letter', () => {
    const index = ['index 3 x 5 in', 'index 4 x 6 in', 'index 5 x 8 in'];
    expect(wantedSizes({ sizes: null, papers: ['A4'], lang })).toEqual(['A5', 'A6']);
    expect(wantedSizes({ sizes: null, papers: ['Letter'], lang })).toEqual(index);
    expect(wantedSizes({ sizes: null, papers: ['A4', 'Letter'], lang })).toEqual(['A5', 'A6', ...index]);
  });

  it('are those asked for, whatever the paper', () => {
    expect(wantedSizes({ sizes: ['index 4 x 6 in'], papers: ['A4'], lang })).toEqual(['index 4 x 6 in']);
  });
});

async function pathsOf(folder: string, printables: Printable[] | null): Promise<string[]> {
  const read = await readContent(folder);
  if (read.content === null) throw new Error(JSON.stringify(read.problems));
  const content: Content = { ...read.content, printables: printables ?? read.content.printables };
  const { metrics } = sampleFonts();
  return wantedPrints(content, chartViews(content), 'recipe-card').flatMap(({ cardSizes, ...wanted }) =>
    recipeCardPrints(recipeCardViews(wanted), sampleStyle, metrics, {
      sizes: cardSizes,
      papers: wanted.content.kitchen.paper,
      lang,
    }).map(({ path, pages }) => `${path}: ${pages.length > 0}`),
  );
}

describe('the cards of a kitchen that lists its prints', () => {
  it('come in the sizes listed, a file a recipe and a file to cut, on the paper there is', async () => {
    expect(await pathsOf('test/kitchens/good/high', null)).toEqual([
      'recipe-cards/vanilla-a6: true',
      'recipe-cards/to-cut-a6-a4: true',
      'recipe-cards/vanilla-4x6in: true',
      'recipe-cards/to-cut-4x6in-a4: true',
    ]);
  });

  it('show weights in the unit asked for', async () => {
    const { content } = await readContent('test/kitchens/good/high');
    if (content === null) throw new Error('the kitchen is wrong');
    const entry: Printable = { print: 'recipe-card', recipeIds: ['vanilla'], flavourIds: [], mass: 'oz' };
    const [wanted] = wantedPrints({ ...content, printables: [entry] }, chartViews(content), 'recipe-card');
    if (!wanted) throw new Error('nothing is wanted');
    const [card] = recipeCardViews(wanted);
    const [grams] = recipeCardViews({ content, charts: chartViews(content), mass: 'g' });
    const [ounces, inGrams] = [card?.tins[0], grams?.tins.find(({ id }) => id === card?.tins[0]?.id)];
    expect(card?.mass).toBe('oz');
    // One ounce is 28.349523125 g, exactly (the international pound of 1959).
    const weighed = Number(ounces?.batter.text) * 28.349523125;
    expect(Math.abs(weighed / (inGrams?.batter.value ?? 0) - 1)).toBeLessThan(0.02);
  });
});
