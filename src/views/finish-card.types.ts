/** A finish card: batches by weight, how it is made, how it keeps, and what the cake of a tin takes. */
import type { Caution, Figure, Named } from './figure.ts';
import type { MethodPiece } from './method-text.types.ts';
import type { Amount } from './tin-chart.types.ts';

/** So much of a finish, ready to use, and what to weigh for it. */
export interface FinishBatch {
  make: Figure;
  /** One for each part, same order. */
  parts: Amount[];
}

/** What the cake of one tin takes, the finishing chart's own figures. */
export interface FinishCardTin extends Named {
  sizeText: string;
  /** One for each use, same order; null where it is not used so on this cake. */
  uses: ({ make: Figure; sheetText: string | null } | null)[];
}

export interface FinishCardView {
  /** The finish's id. */
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  partsText: string;
  keepsText: string;
  mass: 'g' | 'oz';
  parts: Named[];
  /** None for what is bought ready made. */
  batches: FinishBatch[];
  /** What boils away; null where nothing does. */
  boilsAwayText: string | null;
  uses: { id: string; text: string }[];
  /** In order of size; a card takes as many as it has room for. */
  tins: FinishCardTin[];
  /** Over them: for which cake, and with how much to spare. */
  tinsText: string;
  method: MethodPiece[];
  cautions: Caution[];
  /** The finish's page, when the site has an address. */
  pageUrl: string | null;
}
