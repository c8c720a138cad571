import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { cardCautions, withoutAllergenList } from '../../src/views/card-cautions.ts';
import { methodPieces } from '../../src/views/method-text.ts';
import { recipeCardView } from '../../src/views/recipe-card.ts';
import type { RecipeCardView } from '../../src/views/recipe-card.types.ts';
import type { TinChartView } from '../../src/views/tin-chart.types.ts';
import { keptUnits } from '../../src/wording/kept-units.ts';
import { cardWordsFor } from '../../src/wording/recipe-card/index.ts';
import { chartsOf, readDemo } from '../samples/demo.ts';

const words = cardWordsFor('en-GB');

let content: Content;
let charts: TinChartView[];
beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  const recipes = read.content.recipes.filter(({ id }) => id === 'golden-carving-cake');
  content = { ...read.content, recipes };
  charts = chartsOf(content).map(({ chart }) => chart);
});

function card(chartId: string): RecipeCardView {
  const [recipe] = content.recipes;
  const chart = charts.find(({ id }) => id === chartId);
  if (!recipe || !chart) throw new Error(`no chart ${chartId}`);
  return recipeCardView({ kitchen: content.kitchen, flavours: content.flavours, recipe, chart });
}

describe('recipeCardView(source)', () => {
  it('shows the tins of the proven bakes before all others', () => {
    const [recipe] = content.recipes;
    const proven = recipe?.provenBakes.flatMap(({ tins }) => tins.map(({ tin }) => tin.id)) ?? [];
    const chart = charts.find(({ id }) => id === 'golden-carving-cake');
    const tinOf = (id: string | undefined) => chart?.rows.find((row) => row.id === id)?.tinId ?? '';
    const [best] = card('golden-carving-cake').tins;
    expect(proven).toContain(tinOf(best?.id));
  });

  it('tells what a flavour does to the method, and only on its own card', () => {
    expect(card('golden-carving-cake').flavours).toEqual([]);
    const orange = card('golden-carving-cake--orange');
    expect(orange.flavours.map(({ name }) => name)).toEqual(['Orange']);
    expect(orange.flavours[0]?.text).toContain('zest');
    expect(orange.summary).not.toBe(card('golden-carving-cake').summary);
  });

  it('leads to the working of its own chart', () => {
    expect(card('golden-carving-cake--orange').workingUrl).toBe(
      `${content.kitchen.siteUrl}/working/golden-carving-cake--orange.html`,
    );
  });
});

describe('cardCautions(cautions, method, words)', () => {
  const hot = { code: 'hot-tins', text: 'Tins stay hot.' };
  const raw = { code: 'raw-batter', text: 'Raw egg and raw flour make people ill.' };
  const milk = { code: 'allergens', text: 'Contains milk.' };
  const of = (method: string) => cardCautions([milk, raw, hot], methodPieces(method), words);

  it('leaves out what the method says itself', () => {
    expect(of('**Caution:** raw egg and raw flour: do not taste it.').others).toEqual([hot]);
    expect(of('**Caution:** hot tins. Dry gloves.').others).toEqual([raw]);
  });

  it('keeps what the method says in part only, or says in passing', () => {
    expect(of('**Caution:** raw egg white can carry germs. Do not taste it.').others).toEqual([raw, hot]);
    expect(of('Turn the hot tin over. Raw egg and flour: do not taste.').others).toEqual([raw, hot]);
    expect(of('**Caution:** hot sugar burns.').others).toEqual([raw, hot]);
  });

  it('sets allergens apart and never drops one', () => {
    expect(of('**Allergens:** contains milk.').allergens).toEqual([milk]);
  });
});

describe('withoutAllergenList(method, words)', () => {
  const left = (method: string): string[] =>
    withoutAllergenList(methodPieces(method), words).map((piece) =>
      piece.kind === 'heading' ? piece.text : piece.spans.map(({ text }) => text).join(''),
    );

  it('drops the bare list, which is the plain recipe’s and not a flavour’s', () => {
    expect(left('**Allergens:** contains wheat (gluten), milk and eggs.')).toEqual([]);
    expect(left('**Allergens:** contains milk. Wash the bowl.')).toEqual(['Allergens: Wash the bowl.']);
  });

  it('keeps a sentence that says more than the list, and every other caution', () => {
    const more = '**Allergens:** contains milk; dried fruit may hold sulphites, so read each packet.';
    expect(left(more)).toEqual([more.replaceAll('**', '')]);
    expect(left('**Caution:** contains a glass thermometer.')).toEqual([
      'Caution: contains a glass thermometer.',
    ]);
  });
});

describe('keptUnits(text)', () => {
  it('keeps figure and unit on one line, and lets words go', () => {
    expect(keptUnits('18 to 20 °C, 2½ in deep')).toBe('18 to 20\u00a0°C, 2½\u00a0in deep');
    expect(keptUnits('the 10 inch ring, 3 in a row')).toBe('the 10 inch ring, 3\u00a0in a row');
    expect(keptUnits('5 grams')).toBe('5 grams');
  });
});
