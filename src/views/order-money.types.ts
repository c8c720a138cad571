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

export interface QuoteView {
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
  allergens: string[];
  notes: string[];
  cautions: Caution[];
}
