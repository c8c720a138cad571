/** A recipe's cards in one size, plain first, then its flavours: set once, drawn one to a sheet and several up. */
import type { Locale } from '../../domain/kitchen.ts';
import type { CardSize } from '../../domain/printable.ts';
import type { Named } from '../../views/figure.ts';
import type { RecipeCardView } from '../../views/recipe-card.types.ts';
import { cardWordsFor } from '../../wording/recipe-card/index.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { cardFaces } from './card-faces.ts';
import type { CardFace, CardStore } from './card-parts.ts';
import { cardForms } from './card-size.ts';
import { facesBefore } from './set-before.ts';

export interface CardSet {
  recipe: Named;
  size: CardSize;
  /** The cards of each view follow those of the one before. */
  cards: { title: string; faces: CardFace[] }[];
}

/** The cards of each recipe, in the order in which the recipes first come. */
export function cardSets(
  views: readonly RecipeCardView[],
  size: CardSize,
  context: SheetContext,
  lang: Locale,
  kept: CardStore,
): CardSet[] {
  const form = cardForms[size];
  const words = cardWordsFor(lang);
  const sets = new Map<string, CardSet>();
  for (const view of views) {
    const set = sets.get(view.recipe.id) ?? { recipe: view.recipe, size, cards: [] };
    const faces = facesBefore([view, size, lang], context, () =>
      cardFaces({ view, form, words, context, kept }),
    );
    set.cards.push({ title: view.title, faces });
    sets.set(view.recipe.id, set);
  }
  return [...sets.values()];
}
