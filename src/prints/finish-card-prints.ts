/** The cards of a kitchen's finishes, one piece a finish with all its sizes. */
import { CARD_SIZES, type CardSize } from '../domain/printable.ts';
import { finishCardViews } from '../views/finish-card.ts';
import { inHomeUnits } from '../views/home-units.ts';
import { type FinishCardAsk, finishCardPrints } from './finish-card.ts';
import { printable } from './printable.ts';
import { wantedSizes } from './recipe-card-prints.ts';

/** A method of some sentences stands on one face of every size but the smallest, which is made where it is asked for. */
const FINISH_CARD_SIZES: readonly CardSize[] = CARD_SIZES.filter((size) => size !== 'index 3 x 5 in');

export const finishCards = printable<FinishCardAsk>({
  kind: 'finish-card',
  inputs({ content, finishing, cardSizes }) {
    const { paper: papers, locale: lang } = content.kitchen;
    const usual = wantedSizes({ sizes: null, papers, lang }).filter((size) =>
      FINISH_CARD_SIZES.includes(size),
    );
    return finishing
      .flatMap((chart) => inHomeUnits(finishCardViews({ content, chart }), content.kitchen))
      .map((view) => ({ view, sizes: cardSizes ?? usual, lang }));
  },
  draw: finishCardPrints,
});
