/** A week of orders on one page: who gets what when, what is mixed together, and one shopping list. */
import type { Warning } from '../domain/problem.ts';
import type { Caution, Figure } from './figure.ts';
import type { BatterView, HandOverView } from './order.types.ts';
import type { ShoppingView } from './shopping.types.ts';

export interface WeekOrder {
  id: string;
  title: string;
  reference: string;
  handOver: HandOverView;
  portions: Figure;
}

export interface WeekBatter extends BatterView {
  /** One for each bowl: the day the timetable mixes it on, ISO date; null where there is no timetable. */
  mixedOn: (string | null)[];
  mixedOnTexts: string[];
}

export interface WeekView {
  /** `2026-W48`. */
  id: string;
  title: string;
  kitchenName: string;
  edition: string;
  from: string;
  to: string;
  rangeText: string;
  lead: string;
  orders: WeekOrder[];
  mixesLead: string;
  batters: WeekBatter[];
  /** What sharing saves; '' where nothing is shared. */
  sharedText: string;
  eggs: Figure;
  surplus: Figure;
  shopping: ShoppingView;
  cautions: Caution[];
  warnings: Warning[];
  /** Why the week's work does not fit into its days; empty where it does. */
  refusals: { code: string; text: string; hint: string }[];
}
