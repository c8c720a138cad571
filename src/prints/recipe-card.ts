/** A recipe's cards one to a sheet: the sheet is the card, fronts and backs in turn for printing on both sides. */
import type { Locale } from '../domain/kitchen.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import type { CardSet } from './recipe-card/card-set.ts';
import { BLEED_MM, cardForms } from './recipe-card/card-size.ts';
import type { Print } from './sheet/surface.ts';

/** Shows and prints at the card's own size; whoever cuts it from larger paper finds the bleed around it. */
export function recipeCardPrint({ recipe, size, cards }: CardSet, lang: Locale): Print {
  const { slug, widthMm, heightMm } = cardForms[size];
  const words = cardWordsFor(lang);
  return {
    path: `recipe-cards/${recipe.id}-${slug}`,
    title: words.title(recipe.name, words.sizes[size]),
    lang,
    subject: words.subject(recipe.name),
    pages: cards
      .flatMap(({ faces }) => faces)
      .map((face) => ({
        widthMm,
        heightMm,
        bleedMm: BLEED_MM,
        draw: (surface, origin) => face.draw(surface, origin.xMm, origin.yMm),
      })),
  };
}
