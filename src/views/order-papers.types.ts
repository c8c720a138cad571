/** A paper that an order takes off the shelf. */
import type { OrderPaperKind } from '../domain/order-paper.ts';

export interface OrderPaper {
  id: string;
  kind: OrderPaperKind;
  /** 'Recipe card'. */
  kindText: string;
  /** By the name it has on the site, 'Raspberry jam'; null where its kind says all. */
  paperName: string | null;
  /** Which cakes or tins it is for: 'bottom tier and top tier'; '' where it is for all. */
  forText: string;
  /**
   * Where its files lie below print/, each without what tells the size: 'finish-cards/raspberry-jam'; with a name where
   * there are several.
   */
  prints: { printName: string; stem: string }[];
  /** Its page on the site; null where it has none of its own. */
  page: string | null;
}
