/** A shopping list, for an order or for a week. */
import type { Caution, Figure, Named } from './figure.ts';

export interface ShoppingRow {
  ingredient: Named;
  /** No ingredient, but a thing: a dummy tier, a board, a box, a support. */
  material: boolean;
  needed: Figure;
  onHand: Figure;
  missing: Figure;
  /** '2 × 500 g and 1 × 250 g'; 'enough on the shelf'. */
  buyText: string;
  packs: { count: Figure; size: Figure; sizeText: string; price: Figure }[];
  /** Whether there is anything to fetch. */
  buys: boolean;
  /** Null where nobody has said how it is sold. */
  cost: Figure | null;
  left: Figure;
  /** The need at the price of its packs. */
  used: Figure | null;
}

export interface ShoppingView {
  id: string;
  title: string;
  lead: string;
  rows: ShoppingRow[];
  total: Figure;
  /** Spare whites and yolks, things without a pack. */
  notes: string[];
  cautions: Caution[];
}
