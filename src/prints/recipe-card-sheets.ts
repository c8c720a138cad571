/** All cards of a kitchen in one size, as many to a sheet of A4 or Letter as it holds, with marks to cut by. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { CardSize } from '../domain/printable.ts';
import type { RecipeCardView } from '../views/recipe-card.types.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import { cardFaces } from './recipe-card/card-faces.ts';
import { cardForms } from './recipe-card/card-size.ts';
import { cutGrid } from './recipe-card/cut-grid.ts';
import { cutSheets } from './recipe-card/cut-sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

/** Null when the paper does not hold one card with its bleed and marks. */
export function recipeCardSheetsPrint(
  views: readonly RecipeCardView[],
  style: HouseStyle,
  metrics: Metrics,
  size: CardSize,
  paper: PaperName,
  lang: Locale,
): Print | null {
  const form = cardForms[size];
  const grid = cutGrid(paper, form);
  if (grid === null) return null;
  const words = cardWordsFor(lang);
  const context = sheetContext(style, metrics);
  const faces = views.flatMap((view) => cardFaces({ view, form, words, context }));
  const accessible = views.map((view) => `${view.id}-${form.slug}.pdf`).join(', ');
  return {
    path: `recipe-cards/to-cut-${form.slug}-${paper.toLowerCase()}`,
    title: words.sheets.title(words.sizes[size], paper, accessible),
    lang,
    subject: words.sheets.subject(words.sizes[size]),
    pages: cutSheets({ grid, form, words, context }, faces),
  };
}
