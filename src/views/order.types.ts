/** An order as page, sheet, lists, quote and data show it. */
import type { Warning } from '../domain/problem.ts';
import type { BakeFigures } from './bake-figures.types.ts';
import type { Caution, Figure, Named } from './figure.ts';
import type { OrderCostView, QuoteView } from './order-money.types.ts';
import type { OrderPaper } from './order-papers.types.ts';
import type { ShoppingView } from './shopping.types.ts';
import type { StackView } from './stack-sheet.types.ts';
import type { TinPicture } from './tin-picture.ts';

export interface OrderFact {
  id: string;
  label: string;
  text: string;
}

/** One finish on one tier. */
export interface TierFinishView {
  finish: Named;
  /** 'Vanilla buttercream, sage'. */
  calledText: string;
  use: string;
  /** 'Filling, 8 mm'. */
  useText: string;
  /** On the cakes of this tier together. */
  on: Figure;
  /** Made for them, or rolled out, with what is left over in it. */
  make: Figure;
  /** '46 cm across'; null for what is not rolled. */
  sheetText: string | null;
}

export interface OrderTier {
  /** 'tier-1', its own within the order. */
  id: string;
  /** 'Bottom tier', 'The cake', 'Cutting cake', 'Cupcakes'. */
  name: string;
  /** With how many of them: '2 × cake', '24 cupcakes'. */
  countedName: string;
  tin: Named;
  sizeText: string;
  picture: TinPicture;
  recipe: Named;
  flavours: Named[];
  /** 'Equal-weights vanilla sponge, orange'. */
  batterText: string;
  /** Cakes, or pieces. */
  count: Figure;
  /** Set for small cakes: how often their tins are filled, and what they are boxed in. */
  small: { tins: Figure; boxes: Figure; boxesText: string } | null;
  layers: Figure;
  /** Batter that one cake gets. */
  receives: Figure;
  bakedHeight: Figure;
  /** Bakes of the tin that make one cake, and how high each is; null where one does. */
  bakes: { count: Figure; height: Figure; text: string } | null;
  /** Height of a layer of sponge once the cake is level. */
  layerHeight: Figure;
  /** What is cut off to make it level: from the top of every bake, and the weight of one cake's offcuts. */
  level: { cut: Figure; offcuts: Figure; text: string } | null;
  coatedHeight: Figure;
  /** Null where nobody knows how wide the cake is, as for the lengths below. */
  coatedAcross: Figure | null;
  board: Figure | null;
  /** Inside the box, across and high; null where the tier travels in the box of the one below it. */
  boxSide: Figure | null;
  boxHeight: Figure | null;
  /** The box in words. */
  boxText: string | null;
  ribbon: Figure | null;
  /** One cake. */
  weight: Figure;
  portions: Figure | null;
  inRings: Figure | null;
  bake: BakeFigures | null;
  finishes: TierFinishView[];
}

/** A tier that is not cake, as it is covered, boarded and handed over. */
export interface OrderDummy
  extends Pick<
    OrderTier,
    | 'id'
    | 'name'
    | 'countedName'
    | 'sizeText'
    | 'coatedHeight'
    | 'coatedAcross'
    | 'board'
    | 'boxSide'
    | 'boxHeight'
    | 'boxText'
    | 'ribbon'
    | 'weight'
    | 'finishes'
  > {
  /** 'Hired, and comes back'. */
  supplyText: string;
  small: null;
}

/** An amount to weigh, with what stands beside it: spoons, or how many eggs it is. */
export interface WeighedLine {
  ingredient: Named;
  grams: Figure;
  beside: string | null;
}

export interface BowlfulTin {
  /** 'Bottom tier', or with its order where several share the bowl. */
  name: string;
  tinName: string;
  count: Figure;
  each: Figure;
  /** 'one of 3 parts of …' where a tin is too big for one bowl; else null. */
  partText: string | null;
  /** 'with the heating core', or '': it stands in the tin before the batter. */
  aidText: string;
  /** Cups that are filled, where the tins have several; `each` is then of one cup. Null for whole cakes. */
  pieces: Figure | null;
}

export interface Bowlful {
  id: string;
  /** 'Bowl 1 of 2'. */
  name: string;
  batter: Figure;
  /** 'Seven eggs'; null without. */
  eggsText: string | null;
  /** Each kind counted, with its weight beaten. */
  eggs: { part: string; partText: string; count: Figure; grams: Figure }[];
  lines: WeighedLine[];
  tins: BowlfulTin[];
  /** What this bowl makes beyond its tins, signed. */
  surplus: Figure;
  /** 'After filling: 11 g over.' */
  afterText: string;
}

export interface BatterView {
  id: string;
  name: string;
  recipe: Named;
  flavours: Named[];
  batter: Figure;
  /** Null without eggs. */
  eggs: Figure | null;
  /** Of all bowls together, signed. */
  surplus: Figure;
  bowlfuls: Bowlful[];
}

export interface FinishView {
  /** What of it is tinted, with what stays in its bowl, and as a sentence; none where nothing is. */
  colours: { name: string; make: Figure }[];
  coloursText: string;
  finish: Named;
  kindText: string;
  make: Figure;
  needed: Figure;
  lines: WeighedLine[];
  /** 'with 8 % to spare', or what a rolled sheet is trimmed by; '' where nothing is over. */
  spareText: string;
  /** '18 % of what is weighed boils away'; '' where nothing does. */
  boilsAwayText: string;
  /** 'For the bottom tier and the top tier.' */
  forText: string;
  keepsText: string;
  methodMarkdown: string;
}

export interface DecisionView {
  question: string;
  /** Null while it is open. */
  answer: string | null;
  byText: string | null;
}

/** What the label of a cake says of its keeping, or why there is none. */
export interface KeepingView {
  id: string;
  /** 'Orange sponge cake with raspberry jam'. */
  foodName: string;
  /** 'Best before: 30 November 2026'; null where there is no label. */
  dateText: string | null;
  /** Which part decides, and since when. */
  keepsText: string | null;
  storageText: string | null;
  refusals: string[];
}

export interface AllergenView {
  /** As a sentence lists them. */
  names: string[];
  sentence: string;
  unknown: string | null;
  mayContain: string | null;
  ask: string;
  notFree: string;
}

export interface HandOverView {
  /** `2026-11-28T14:00`. */
  localTime: string;
  zone: string;
  /** 'Saturday 28 November 2026, 14:00'. */
  text: string;
  placeText: string;
}

export interface OrderView {
  id: string;
  title: string;
  reference: string;
  kitchenName: string;
  edition: string;
  weekId: string;
  summary: string;
  handOver: HandOverView;
  facts: OrderFact[];
  tiers: OrderTier[];
  /** Tiers that are not cake, bottom first. */
  dummies: OrderDummy[];
  batters: BatterView[];
  /** Where the week mixes some of this batter together with other orders': which, and where it stands; else null. */
  sharedText: string | null;
  finishes: FinishView[];
  /** What to take off the shelf. */
  papers: OrderPaper[];
  decisions: DecisionView[];
  /** What must come off before it is eaten. */
  inedible: string[];
  /** What is hired out, with the day by which it is to be back. */
  hired: string[];
  /** Lines to write on when it is handed over. */
  signLines: string[];
  /** Null for cakes that do not stand on one another. */
  stack: StackView | null;
  /** Why a stacked order has no plan of its stack; else null. */
  noStackText: string | null;
  allergens: AllergenView;
  /** One for each label. */
  keeping: KeepingView[];
  portions: Figure;
  portionsWanted: Figure | null;
  weight: Figure;
  height: Figure;
  shopping: ShoppingView;
  cost: OrderCostView;
  quote: QuoteView;
  notes: string;
  cautions: Caution[];
  warnings: Warning[];
}
