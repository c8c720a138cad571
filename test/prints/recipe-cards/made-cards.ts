/** Recipe cards of a kitchen in one style, printed and read back, with the charts that their figures come from. */
import type { Content } from '../../../src/domain/content.ts';
import type { HouseStyle } from '../../../src/domain/house-style.ts';
import type { CardSize } from '../../../src/domain/printable.ts';
import { recipeCardPrints, recipeCardViews } from '../../../src/prints/recipe-card-prints.ts';
import type { Print } from '../../../src/prints/sheet/surface.ts';
import { readContent } from '../../../src/read/content.ts';
import { chartViews } from '../../../src/views/chart-views.ts';
import type { RecipeCardView } from '../../../src/views/recipe-card.types.ts';
import type { TinChartView } from '../../../src/views/tin-chart.types.ts';
import { fontsOf } from '../../samples/fonts.ts';
import { printed } from '../../samples/printed.ts';

export interface Kitchen {
  content: Content;
  charts: TinChartView[];
  views: RecipeCardView[];
}

/** A kitchen with some of its recipes, all when none are named; only the plain charts when `plain`. */
export async function cardKitchen(folder: string, recipeIds: readonly string[] = []): Promise<Kitchen> {
  const { content, problems } = await readContent(folder);
  if (content === null) throw new Error(JSON.stringify(problems));
  const recipes = content.recipes.filter(({ id }) => recipeIds.length === 0 || recipeIds.includes(id));
  const narrowed = { ...content, recipes };
  const charts = chartViews(narrowed).map(({ chart }) => chart);
  const wanted = { content: narrowed, charts: charts.map((chart) => ({ chart })), mass: 'g' as const };
  return { content: narrowed, charts, views: recipeCardViews(wanted) };
}

export interface MadeCards {
  print: Print;
  bytes: Uint8Array;
}

const fonts = new Map<string, ReturnType<typeof fontsOf>>();

function fontsOnce(style: HouseStyle): ReturnType<typeof fontsOf> {
  const key = JSON.stringify(style.fonts);
  const found = fonts.get(key) ?? fontsOf(style);
  fonts.set(key, found);
  return found;
}

/** Every file of one size. */
export function cardsInSize(
  views: readonly RecipeCardView[],
  style: HouseStyle,
  size: CardSize,
  { kitchen }: Content,
): MadeCards[] {
  const loaded = fontsOnce(style);
  const wishes = { sizes: [size], papers: ['A4', 'Letter'] as const, lang: kitchen.locale };
  return recipeCardPrints([...views], style, loaded.metrics, wishes).map((print) => ({
    print,
    bytes: printed(print, loaded),
  }));
}
