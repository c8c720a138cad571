/** What a finish card is set from. */
import type { FinishCardView } from '../../views/finish-card.types.ts';
import type { FinishCardWords } from '../../wording/finish-card/index.ts';
import type { CardParts } from '../recipe-card/card-parts.ts';

export interface FinishCardParts extends Pick<CardParts, 'form' | 'words' | 'context' | 'kept'> {
  view: FinishCardView;
  /** Beside the words that all cards share. */
  own: FinishCardWords;
}
