/** A recipe's cards one to a sheet: the sheet is the card, fronts and backs in turn for printing on both sides. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { CardSize } from '../domain/printable.ts';
import type { RecipeCardView } from '../views/recipe-card.types.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import { cardFaces } from './recipe-card/card-faces.ts';
import { cardForms } from './recipe-card/card-size.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

export function recipeCardPrint(
  view: RecipeCardView,
  style: HouseStyle,
  metrics: Metrics,
  size: CardSize,
  lang: Locale,
): Print {
  const form = cardForms[size];
  const words = cardWordsFor(lang);
  const { widthMm, heightMm } = form;
  return {
    path: `recipe-cards/${view.id}-${form.slug}`,
    title: words.title(view.title, words.sizes[size]),
    lang,
    subject: words.subject(view.title),
    pages: cardFaces({ view, form, words, context: sheetContext(style, metrics) }).map((face) => ({
      widthMm,
      heightMm,
      draw: (surface, origin) => face.draw(surface, origin.xMm, origin.yMm),
    })),
  };
}
