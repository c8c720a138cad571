/** How an ingredient is sold and what of it is on the shelf. Weighed things in g, whole eggs by count. */
import type { Minor } from './money.ts';

/** One size that a shop sells. */
export interface Pack {
  /** g; for whole eggs: eggs in the box. */
  size: number;
  /** The size as the baker wrote it: '500 ml', '12'. */
  text: string;
  priceMinor: Minor;
}

/** What of an ingredient is on hand, by the shelf list. */
export interface StockLine {
  ingredientId: string;
  /** g; for whole eggs: eggs. */
  amount: number;
}
