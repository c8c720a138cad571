import type { BakeLogRow } from './bake-log.ts';
import type { CostSettings } from './costs.ts';
import type { Finish } from './finish.ts';
import type { FinishingSettings } from './finishing.ts';
import type { Flavour } from './flavour.ts';
import type { HouseStyle } from './house-style.ts';
import type { Ingredient } from './ingredient.ts';
import type { Kitchen } from './kitchen.ts';
import type { Business, LabelSettings } from './label-settings.ts';
import type { Order } from './order.ts';
import type { OrderWeek } from './order-week.ts';
import type { Outline } from './outline.ts';
import type { StockLine } from './pack.ts';
import type { PortionSize } from './portion.ts';
import type { BookletSettings, Printable } from './printable.ts';
import type { Recipe } from './recipe.ts';
import type { KitchenTimes } from './times.ts';
import type { WorkSettings } from './work-settings.ts';

/** A free page of the baker's own. */
export interface FreePage {
  id: string;
  title: string;
  order: number;
  markdown: string;
}

/** Everything read from the content folder, validated. Lists are sorted by id unless the file gives an order. */
export interface Content {
  kitchen: Kitchen;
  ingredients: Ingredient[];
  outlines: { id: string; outline: Outline }[];
  recipes: Recipe[];
  flavours: Flavour[];
  finishes: Finish[];
  /** How this kitchen finishes a cake when nobody says otherwise. */
  finishing: FinishingSettings;
  /** Height of the kitchen above the sea, m; null when it does not say. */
  altitudeM: number | null;
  houseStyle: HouseStyle;
  /** Further styles to print in, each below print/in-ID/. */
  houseStyles: { id: string; style: HouseStyle }[];
  /** What to print; null for everything. */
  printables: Printable[] | null;
  booklet: BookletSettings;
  pages: FreePage[];
  /** Dated real bakes, oldest first; empty without a bake-log.csv. */
  bakeLog: BakeLogRow[];
  /** What customers get, earliest hand-over first. */
  orders: Order[];
  /** Weeks with a hand-over, earliest first. */
  weeks: OrderWeek[];
  /** What is on the shelf; empty without a stock.csv. */
  stock: StockLine[];
  costs: CostSettings;
  work: WorkSettings;
  times: KitchenTimes;
  /** Null while the kitchen has not written its address down. */
  business: Business | null;
  label: LabelSettings;
  portionSizes: PortionSize[];
  /**
   * Whether orders stand on the site. They hold what a customer pays and what the baker earns, so only a kitchen
   * that says so shows them; prints and data are made either way.
   */
  publishesOrders: boolean;
}
