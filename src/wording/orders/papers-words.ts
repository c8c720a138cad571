/** The words of the papers that an order is worked from, and of amounts with something to spare. */
import type { OrderPaperKind } from '../../domain/order-paper.ts';

export interface PapersWords {
  title: string;
  /** How names of files are meant. */
  about: string;
  kinds: Record<OrderPaperKind, string>;
  /** 'Raspberry jam: bottom tier' */
  forWhom: (name: string, cakes: string) => string;
  /** 'Raspberry jam (bottom tier)' */
  nameAndCakes: (name: string, cakes: string) => string;
  /** Behind an amount to make. */
  toSpare: (share: string) => string;
  /** Behind an amount to roll out. */
  trimmings: (grams: string) => string;
  boilsAway: (share: string) => string;
  /** Below a bowl whose tins get a little less than they ask for; takes '3.4 g'. */
  shortAfterFilling: (grams: string) => string;
  nothingAfterFilling: string;
  card: string;
}
