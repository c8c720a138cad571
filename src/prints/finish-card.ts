/** A finish's card in every size that recipe cards have: one face, printed on one side, at the card's own size. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { CardSize } from '../domain/printable.ts';
import type { FinishCardView } from '../views/finish-card.types.ts';
import { finishCardWordsFor } from '../wording/finish-card/index.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import { finishFaces } from './finish-card/finish-faces.ts';
import { cardStore } from './recipe-card/card-parts.ts';
import { BLEED_MM, cardForms } from './recipe-card/card-size.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';

export interface FinishCardAsk {
  view: FinishCardView;
  sizes: readonly CardSize[];
  lang: Locale;
}

/** A file for each size. */
export function finishCardPrints(
  { view, sizes, lang }: FinishCardAsk,
  style: HouseStyle,
  metrics: Metrics,
): Print[] {
  const words = cardWordsFor(lang);
  const own = finishCardWordsFor(lang);
  const base = { view, words, own, context: sheetContext(style, metrics), kept: cardStore() };
  return sizes.map((size) => {
    const form = cardForms[size];
    const { slug, widthMm, heightMm } = form;
    return {
      path: `finish-cards/${view.id}-${slug}`,
      title: own.title(view.title, words.sizes[size]),
      lang,
      subject: own.subject(view.title),
      pages: finishFaces({ ...base, form }).map((face) => ({
        ...{ widthMm, heightMm, bleedMm: BLEED_MM },
        draw: (surface, origin) => face.draw(surface, origin.xMm, origin.yMm),
      })),
    };
  });
}
