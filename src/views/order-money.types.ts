/** What an order costs the baker, and what the customer is asked: kept apart. */
import type { Caution, Figure } from './figure.ts';

export interface CostRow {
  kind: string;
  name: string;
  /** '4.5 h', '2 kWh', '1'; '' for ingredients. */
  amountText: string;
  /** '£14.00 per h'; '' for ingredients. */
  eachText: string;
  cost: Figure;
}

export interface JobRow {
  kind: string;
  name: string;
  times: Figure;
  minutes: Figure;
}

export interface OrderCostView {
  rows: CostRow[];
  cost: Figure;
  priceText: string;
  price: Figure;
  margin: Figure;
  /** What makes the cost less than it is; empty where everything is priced. */
  notes: string[];
  jobs: JobRow[];
  handsOn: Figure;
  ovenText: string;
  ovenEnergy: Figure;
}

export interface QuoteRow {
  name: string;
  count: Figure;
  each: Figure;
  net: Figure;
  vatText: string;
  vat: Figure;
  /** 'not food: …' beside what must come off; else null. */
  note: string | null;
}

export interface PaymentRow {
  kind: 'deposit' | 'balance' | 'whole';
  /** 'Deposit, 25 %'. */
  name: string;
  /** 'by 21 November 2026'. */
  dueText: string;
  sum: Figure;
}

export interface QuoteView {
  /** A costing where nobody orders: at a stall. */
  kind: 'quote' | 'costing';
  title: string;
  reference: string;
  lead: string;
  business: { name: string; lines: string[] } | null;
  handOverText: string;
  placeText: string;
  portionsText: string;
  /** What each cake is, in words. */
  includes: string[];
  rows: QuoteRow[];
  net: Figure;
  vat: Figure;
  total: Figure;
  /** Whether any line carries VAT. */
  hasVat: boolean;
  datedText: string;
  /** 'Valid until 15 November 2026'; null where the kitchen does not say. */
  validText: string | null;
  /** What is due when, adding up to the total; none where the kitchen does not say. */
  payments: PaymentRow[];
  /** The drive where it has no price of its own: 'Delivery', 'in the price of the cake'. */
  delivery: { name: string; text: string } | null;
  /** Of a costing: what a piece has to bring. */
  perPiece: { text: string; each: Figure } | null;
  allergens: string[];
  notes: string[];
  cautions: Caution[];
}
