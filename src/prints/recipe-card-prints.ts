/**
 * Which files of recipe cards are made? For every size one file a recipe, its cards one to a sheet, and one file of
 * all cards several to a sheet, on the paper that the size belongs with or the first the kitchen has that holds it.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { CARD_SIZES, type CardSize } from '../domain/printable.ts';
import { recipeCardView } from '../views/recipe-card.ts';
import type { RecipeCardView } from '../views/recipe-card.types.ts';
import type { WantedPrints } from '../views/wanted-prints.ts';
import { cardStore } from './recipe-card/card-parts.ts';
import { cardSets } from './recipe-card/card-set.ts';
import { cardForms } from './recipe-card/card-size.ts';
import { recipeCardPrint } from './recipe-card.ts';
import { recipeCardSheetsPrint } from './recipe-card-sheets.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

/** More tins than the roomiest card holds: the others are let go with their chart. */
const MOST_TINS = Math.max(...Object.values(cardForms).map(({ mostTins }) => mostTins));

/** The card of every chart asked for that has a tin to fill; only its best tins. */
export function recipeCardViews({
  content,
  charts,
  mass,
}: Pick<WantedPrints, 'content' | 'charts' | 'mass'>): RecipeCardView[] {
  const { kitchen, recipes, flavours } = content;
  return charts.flatMap(({ chart }) => {
    const recipe = recipes.find(({ id }) => id === chart.recipe.id);
    if (recipe === undefined || chart.rows.length === 0) return [];
    const view = recipeCardView({ kitchen, recipe, flavours, chart, mass });
    return [{ ...view, tins: view.tins.slice(0, MOST_TINS), sizeRank: view.sizeRank.slice(0, MOST_TINS) }];
  });
}

export interface CardWishes {
  /** Null for those that belong with the papers. */
  sizes: readonly CardSize[] | null;
  papers: readonly PaperName[];
  lang: Locale;
}

/** A5 and A6 go with A4, index cards with Letter, unless the kitchen says which it wants. */
export function wantedSizes({ sizes, papers }: CardWishes): CardSize[] {
  return CARD_SIZES.filter((size) => sizes?.includes(size) ?? papers.includes(cardForms[size].paper));
}

/** Papers to cut a size from, best first. */
function papersFor(size: CardSize, papers: readonly PaperName[]): PaperName[] {
  const own = cardForms[size].paper;
  return [...papers].sort((a, b) => Number(b === own) - Number(a === own));
}

/** The cards of one recipe one to a sheet, or those of all recipes several to a sheet. */
export interface CardsAsk {
  views: RecipeCardView[];
  size: CardSize;
  lang: Locale;
  /** Papers to cut the sheets from, best first; null for cards one to a sheet. */
  sheets: PaperName[] | null;
}

const recipesOf = (views: readonly RecipeCardView[]): string[] => [
  ...new Set(views.map(({ recipe }) => recipe.id)),
];

/** For every size a piece for each recipe, then one for all. */
export function cardsAsks(views: RecipeCardView[], wishes: CardWishes): CardsAsk[] {
  const { lang, papers } = wishes;
  return wantedSizes(wishes).flatMap((size) => [
    ...recipesOf(views).map((id) => ({
      views: views.filter(({ recipe }) => recipe.id === id),
      size,
      lang,
      sheets: null,
    })),
    { views, size, lang, sheets: papersFor(size, papers) },
  ]);
}

export function recipeCardsPrint(
  { views, size, lang, sheets }: CardsAsk,
  style: HouseStyle,
  metrics: Metrics,
): Print[] {
  const context = sheetContext(style, metrics);
  const sets = cardSets(views, size, context, lang, cardStore());
  if (sheets === null) return sets.map((set) => recipeCardPrint(set, lang));
  return sheets.flatMap((paper) => recipeCardSheetsPrint(sets, paper, context, lang) ?? []).slice(0, 1);
}

/** All files. */
export const recipeCardPrints = (
  views: RecipeCardView[],
  style: HouseStyle,
  metrics: Metrics,
  wishes: CardWishes,
): Print[] => cardsAsks(views, wishes).flatMap((ask) => recipeCardsPrint(ask, style, metrics));
