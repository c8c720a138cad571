/** All cards of a kitchen in one size, as many to a sheet of A4 or Letter as it holds, with marks to cut by. */
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import type { CardSet } from './recipe-card/card-set.ts';
import { cardForms } from './recipe-card/card-size.ts';
import { cutGrid } from './recipe-card/cut-grid.ts';
import { cutSheets } from './recipe-card/cut-sheet.ts';
import type { SheetContext } from './sheet/sheet-context.ts';
import type { Print } from './sheet/surface.ts';

/** Null when there is no card, or the paper does not hold one with its bleed and marks. */
export function recipeCardSheetsPrint(
  sets: readonly CardSet[],
  paper: PaperName,
  context: SheetContext,
  lang: Locale,
): Print | null {
  const [first] = sets;
  if (first === undefined) return null;
  const form = cardForms[first.size];
  const grid = cutGrid(paper, form);
  if (grid === null) return null;
  const words = cardWordsFor(lang);
  const size = words.sizes[first.size];
  const files = sets.map(({ recipe }) => `${recipe.id}-${form.slug}.pdf`).join(', ');
  return {
    path: `recipe-cards/to-cut-${form.slug}-${paper.toLowerCase()}`,
    title: words.sheets.title(size, paper, `-${form.slug}.pdf`),
    lang,
    subject: words.sheets.subject(size, files),
    pages: cutSheets(
      { grid, form, words, context },
      sets.flatMap(({ cards }) => cards),
    ),
  };
}
