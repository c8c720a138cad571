/** The words of what stands beside the tiers of an order, and of tiers that are no cake. */
import type { SmallKind } from '../../domain/order.ts';

/** What an order is made of, for its first sentence. */
export interface MadeOf {
  stacked: boolean;
  /** Cakes among the tiers, and dummies among them. */
  tiers: number;
  dummies: number;
  cuttingCakes: number;
  /** '24 cupcakes'. */
  small: readonly string[];
  portions: string;
}

export interface BesideWords {
  cuttingCake: (number: number, of: number) => string;
  small: Record<SmallKind, string>;
  /** Where an order has several lines of one kind. */
  smallOf: (name: string, number: number) => string;
  /** '24 cupcakes'; '1 cupcake'. */
  pieces: (count: number, kind: SmallKind) => string;
  summary: (made: MadeOf) => string;
  /** Over cutting cakes and small cakes, among the facts. */
  besideFact: string;
  /** 'g into each of 24 cups, cupcakes: 2 × twelve-cup muffin tin'. */
  intoCups: (cakes: string, pieces: number, tins: string) => string;
  /** '2 × 12 cups, round 7 base 5 × 3.2 cm'. */
  cups: (tins: number, cups: number, size: string) => string;
  /** '3 boxes of 12, the last with 6'. */
  boxes: (boxes: number, size: number, last: number) => string;
  topping: (gramsEach: string) => string;
  ownMinutes: string;
  /** 'Top tier (dummy)'. */
  dummy: (tier: string) => string;
  /** On lists, where nobody says which tier it is: takes its size. */
  dummyBought: (size: string) => string;
  dummyHired: (size: string) => string;
  /** On the quote: not cake. */
  notCake: string;
  supply: Record<'bought' | 'hired', string>;
  /** To whoever cuts the cake. */
  dummyCaution: (tiers: string, hired: boolean) => string;
}
