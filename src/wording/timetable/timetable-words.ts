/** The words of timetables and oven plans. A missing key does not compile. */

import type { SmallKind } from '../../domain/order.ts';

/** Kinds of rows; the same names as the steps of a plan, and the hand-over. */
export type RowKind =
  | 'shop'
  | 'make-finish'
  | 'weigh-out'
  | 'oven-on'
  | 'mix'
  | 'fill-tins'
  | 'wash-bowl'
  | 'oven-in'
  | 'look'
  | 'oven-out'
  | 'turn-out'
  | 'wrap'
  | 'bore-holes'
  | 'build'
  | 'crumb-coat'
  | 'final-coat'
  | 'pour'
  | 'cover'
  | 'top'
  | 'cut-pieces'
  | 'cut-supports'
  | 'stack'
  | 'pack'
  | 'deliver'
  | 'set-up'
  | 'drive-back'
  | 'hand-over'
  | 'comes-back';

export type WaitKind =
  | 'finish-stands'
  | 'soften'
  | 'cool-in-tin'
  | 'cool'
  | 'rest'
  | 'filling-settles'
  | 'chill'
  | 'coat-chills'
  | 'coat-sets'
  | 'glaze-sets'
  | 'cover-sets'
  | 'stack-settles';

/** What a row is about, in words. */
export interface RowNames {
  /** 'six-inch round and eight-inch round'; once they are baked, small cakes by their number. */
  cakes: string;
  finish: string;
  batter: string;
  /** 'Load 2'. */
  load: string;
  /** '140 °C fan'. */
  dial: string;
  /** Bought ready and only worked until it is soft: sugarpaste, marzipan. */
  kneaded: boolean;
  /** Its coat goes on in one, with no first coat under it. */
  oneCoat: boolean;
  /** Layers that a cake is cut into; 1: it is only levelled. */
  layers: number;
  /** How high each of them is cut; '' where nobody says. */
  layerHigh: string;
  /** What is brushed on, and what goes between, from the inside out; '' for nothing. */
  brushed: string;
  filling: string;
  /** Tiers travel in boxes of their own and are stacked at the place. */
  stackedThere: boolean;
  /** A dowel goes through the middle. */
  dowel: boolean;
  /** There is a dummy among the tiers. */
  dummy: boolean;
  /** '8 in the square and 24 in the tray', for what is sold by the piece. */
  pieces: string;
  /** What is hired out, with the days it is due. */
  hired: string;
}

export interface TimetableWords {
  title: (orders: string) => string;
  and: string;
  weekdays: readonly string[];
  /** 'Thursday 22 October'. */
  day: (weekday: string, dayOfMonth: number, month: number) => string;
  clock: (minuteOfDay: number) => string;
  what: Record<RowKind, (names: RowNames) => string>;
  wait: Record<WaitKind, (until: string) => string>;
  /** '18:42', and on another day '05:00 on Friday'. */
  untilOn: (clock: string, weekday: string) => string;
  /** A bowlful made in several goes: which this is, of how many; g of batter now and of all; share of every weight. */
  part: (go: { at: number; of: number; now: string; whole: string; share: string }) => string;
  lookAt: (likely: string, by: string) => string;
  /** Weighed out long before it is mixed. */
  keepCold: (until: string) => string;
  seePlan: (load: string) => string;
  /** Beside greasing and lining: the core goes into these, the band round these. */
  coreIn: (cakes: string) => string;
  bandOn: (cakes: string) => string;
  /** Beside turning out. */
  coreOut: (cakes: string) => string;
  /** Beside cutting into pieces. */
  cutByGuide: string;
  /** Beside cutting supports; whether they are set at the place. */
  supportsByTemplate: (there: boolean) => string;
  /** Beside boring cards. */
  builtOnCards: string;
  /** Of a paste that was kneaded. */
  keepWrapped: string;
  /** Of what is sold at a stall. */
  labelForSale: string;
  /** To be written on when hired things are back. */
  cameBack: string;
  backBy: (name: string, day: string) => string;
  backOpen: (name: string) => string;
  /** 'Ten-inch round (bottom tier)', and the other way round once it is baked. */
  inTin: (first: string, second: string) => string;
  /** 'Square tin, 24 pieces'; each: of several cakes. */
  inPieces: (cakes: string, pieces: number) => string;
  inPiecesEach: (cakes: string, pieces: number) => string;
  /** A bowlful among those of the week, and among those of one order. */
  bowlfulOfWeek: (batter: string, at: number, of: number) => string;
  bowlfulOfOrder: (batter: string, at: number, of: number) => string;
  /** The bead that is piped before a soft filling. */
  damFirst: (finish: string) => string;
  /** On one order's paper: a line that serves other orders too. */
  shared: string;
  /** What is not eaten and goes on or beside the cake. */
  putOn: (names: string) => string;
  /** What goes into the car beside the cakes. */
  along: {
    take: (things: string) => string;
    forOrder: string[];
    forStall: string[];
    /** For tiers that are stacked at the place. */
    forStack: (dowel: boolean) => string[];
    stackSheet: string;
    /** For covered cakes. */
    forCovered: (stackedThere: boolean) => string[];
    ribbonOn: string;
    ribbonThere: string;
  };
  lead: (day: string, clock: string, handsOn: string, days: number, ovenOn: string) => string;
  daySummary: (handsOn: string, from: string, to: string) => string;
  dayWaiting: string;
  clocksForward: string;
  clocksBack: string;
  bound: (later: string) => string;
  boundReached: string;
  loadsProven: (loads: number) => string;
  loadsBound: (loads: number, least: number) => string;
  /** Those of one order among the week's. */
  loadsOfWeek: (own: number, all: number) => string;
  allOrders: string;
  /** '24 cupcakes'. */
  small: (pieces: number, kind: SmallKind) => string;
  /** In place of a tin's name: a tier that is not baked. */
  dummy: string;
  /** A cake that is cut in the kitchen, by its tin. */
  forCutting: (tin: string) => string;
  load: (number: number) => string;
  planTitle: (orders: string) => string;
  planLead: string;
  gaps: (air: string, wall: string, width: string, depth: string) => string;
  when: (day: string, inAt: string, outBy: string) => string;
  heatCold: (clock: string) => string;
  heatHot: string;
  /** Two shelves at once do not bake alike. */
  shelves: (fan: boolean) => string;
  /** The same heat on other dials. */
  elsewhere: (dials: string) => string;
  shelf: (fromBottom: number, shelves: number) => string;
  shelfAlt: (shelf: string, tins: string) => string;
  shelfEmpty: string;
  door: string;
  back: string;
  scale: (scale: number, lengthMm: number) => string;
  /** Read aloud for a box. */
  toTick: string;
  table: {
    time: string;
    what: string;
    lasts: string;
    order: string;
    number: string;
    tin: string;
    firstLook: string;
    likely: string;
    by: string;
    shelf: string;
  };
  lanes: { hands: string; mixer: string; oven: string };
  tones: { hands: string; heat: string; waiting: string };
  barsAlt: (day: string) => string;
  barText: (what: string, from: string, to: string) => string;
  /** Of the print. */
  daySheet: string;
  daySheetLead: string;
  ovenPlan: string;
  timetable: string;
  calendar: string;
  cautions: {
    hot: string;
    raw: string;
    cool: string;
    supports: string;
    chilled: (finishes: string) => string;
  };
}
