/** The words of orders, quotes, shopping lists and weeks. A missing key does not compile. */

import type { PlaceKind } from '../../domain/order.ts';
import type { DateFormat } from '../date.ts';
import type { BesideWords } from './beside-words.ts';
import type { OrderPageWords, OrderSteps, OrderTableWords } from './order-page-words.ts';
import type { PapersWords } from './papers-words.ts';

export interface OrderWords {
  date: DateFormat;
  /** 'Saturday 28 November 2026' */
  weekdayAndDate: (weekday: string, date: string) => string;
  orders: string;
  ordersLead: string;
  ordersNone: string;
  weekdays: readonly string[];
  places: Record<PlaceKind, string>;
  /** 'Saturday 28 November 2026, 14:00' */
  dayAndTime: (weekday: string, date: string, time: string) => string;
  zoneNote: (zone: string) => string;
  summary: (cakes: number, stacked: boolean, portions: string) => string;
  portionsOf: (count: string, size: string) => string;
  /** '14:00' as people say it. */
  clock: (time: string) => string;
  portionsWanted: (wanted: string, over: string) => string;
  /** Negative where there are too few. */
  portionsOver: (over: number) => string;
  keptTop: string;
  sizeNames: Record<'dessert' | 'finger', string>;
  tierName: (at: number, tiers: number, stacked: boolean) => string;
  tierOf: (order: string, tier: string) => string;
  count: (count: number, name: string) => string;
  partOf: (parts: number, of: number, name: string) => string;
  bowl: (number: number, of: number) => string;
  onlyBowl: string;
  mixOf: (recipe: string, flavours: readonly string[]) => string;
  inEach: (grams: string) => string;
  usesOf: Record<'filling' | 'coating' | 'rolled' | 'brushed' | 'dam' | 'topping', string>;
  /** Of a finish: what is not tinted, and how much is made in which colour. */
  plainColour: string;
  coloured: (amounts: string) => string;
  finishFor: (tiers: string) => string;
  noBoard: string;
  boards: (board: string) => string;
  open: string;
  steps: OrderSteps;
  table: OrderTableWords;
  facts: Record<
    'reference' | 'handOver' | 'place' | 'arrangement' | 'portions' | 'weight' | 'height' | 'cakes' | 'notes',
    string
  >;
  arrangement: (stacked: boolean, travelsAssembled: boolean) => string;
  private: string;
  /** On a page that stands on a public site. */
  publishedPrivate: string;
  sheet: {
    title: string;
    subtitle: (title: string) => string;
    lead: string;
    eggs: string;
    bowlful: string;
    fill: string;
    signOff: string;
    /** Lines to write on at hand-over; `inedible`: something comes off before it is eaten; `hired`: something comes back. */
    signLines: (inedible: boolean, hired: boolean) => string[];
    checked: string;
    spare: (yolks: number, whites: number) => string;
    inedible: string;
    nothingInedible: string;
    hired: string;
    /** What is hired, and the day by which it is to be back. */
    hiredBack: (name: string, by: string | null) => string;
    /** Read aloud for a box. */
    toTick: string;
    /** Over eggs, the bowl's weight and the tins. */
    eggsAndTins: string;
    beaten: (part: string, grams: string) => string;
    batterIn: string;
    /** `count` such tins, each with as much. */
    intoTin: (cake: string, tin: string, count: number) => string;
    surplus: (text: string) => string;
    /** A cake that several bakes of one tin make: how many, how high each, and layers from each. */
    bakes: (count: number, height: string, layersEach: number) => string;
    /** What is cut off the top of every bake, what it weighs, and how high a layer is then. */
    level: (cut: string, offcutsG: string, layer: string) => string;
    withCore: string;
    withBand: string;
    /** 'Raspberry jam, 368 g' */
    finishMade: (name: string, grams: string) => string;
    rollTo: (size: string, grams: string) => string;
    /** Takes the grams between two layers of one cake. */
    filling: (thickness: string, layers: number, gramsEach: string) => string;
    coats: (crumb: string, final: string) => string;
    dam: (bead: string) => string;
    /** Inside of a box: across × high. */
    box: (side: string, height: string) => string;
    boxForAll: (side: string, height: string) => string;
    boxShared: string;
    openBy: (question: string, date: string) => string;
    code: string;
  };
  allergens: {
    title: string;
    contains: (names: string) => string;
    none: string;
    unknown: (names: string) => string;
    mayContain: (names: string) => string;
    ask: string;
    notFree: string;
  };
  shopping: {
    title: string;
    forOrder: (title: string) => string;
    forWeek: (week: string) => string;
    lead: string;
    /** Where other orders of the week share the shelf. */
    alone: string;
    nothing: string;
    packs: (count: number, size: string) => string;
    total: string;
    stocked: string;
    /** What is no food. */
    things: string;
    /** 'pack of 25'; 'Cake card, 25.4 cm and 20.3 cm across' */
    packOf: (count: string) => string;
    ofSizes: (name: string, sizes: string) => string;
    /** The size that is bought, null where none is wide enough, and the widths it serves if they are others. */
    ofSize: (name: string, size: string | null, others: string) => string;
    eggsUnit: (count: string) => string;
    /** What is bought by the piece. */
    piecesUnit: (count: string) => string;
    unpriced: (names: string) => string;
    unpricedRow: string;
    bought: (name: string, count: string) => string;
  };
  cost: {
    title: string;
    lead: string;
    kinds: Record<'ingredients' | 'materials' | 'packaging' | 'energy' | 'labour' | 'overhead', string>;
    total: string;
    price: (margin: string, step: string) => string;
    margin: string;
    /** '2 h 37 min' */
    hours: (hours: number, minutes: number) => string;
    kwh: (kwh: string) => string;
    pieces: (count: string) => string;
    perHour: (money: string) => string;
    perKwh: (money: string) => string;
    ovenText: (loads: string, heatings: number, kwh: string) => string;
    load: (tins: number, dial: string, minutes: string) => string;
    /** Where some ingredient has no price; where nothing has. */
    tooLow: (names: string) => string;
    nothingPriced: string;
    jobs: Record<string, string>;
    workTitle: string;
    shopNote: string;
    /** What the drive costs beyond its time. */
    driveNote: string;
    /** Where an extra pays for it. */
    driveCharged: (names: string) => string;
  };
  quote: {
    title: string;
    forReference: (reference: string) => string;
    lead: string;
    includes: string;
    vatAt: (share: string) => string;
    noVat: string;
    subtotal: string;
    total: string;
    inedible: string;
    /** Hired, with the day by which it is to be back. */
    hired: (by: string | null) => string;
    allergenNote: string;
    vatNote: string;
    dated: (date: string) => string;
    taste: (recipe: string, finishes: string) => string;
    validUntil: (date: string) => string;
    payment: { deposit: (share: string) => string; balance: string; whole: string };
    due: { by: (date: string) => string; accepted: string; handOver: string };
    /** What the drive is called where it has no line of its own; null where nobody drives for a customer. */
    delivery: Record<PlaceKind, string | null>;
    included: string;
    /** The paper of what nobody has ordered. */
    costing: string;
    costingLead: string;
    costingPrivate: string;
    made: string;
    toBring: string;
    perPiece: (pieces: string, each: string) => string;
  };
  week: {
    title: (week: string) => string;
    range: (from: string, to: string) => string;
    lead: (orders: number) => string;
    mixes: string;
    mixesLead: string;
    shared: (eggsAlone: string, eggs: string, overAlone: string, over: string) => string;
    bakeOn: (day: string) => string;
    noDay: string;
    shopping: string;
    orders: string;
    toWeek: string;
    /** On an order whose batter is mixed with others'. */
    sharedWith: (week: string, batters: string, orders: string) => string;
    sheetTitle: (week: string) => string;
    sheetLead: string;
    finishes: string;
  };
  cautions: {
    supports: string;
    raw: string;
    rawWhite: string;
    rawGlaze: string;
    hot: string;
    cool: string;
    chilled: string;
    /** Takes the weight in kilograms above which two people lift. */
    heavy: (kg: string) => string;
    /** How the top tier is kept for another day. */
    kept: { frozen: (freezeOn: string, eatBy: string) => string; asItIs: string; notKept: string };
    inedible: (names: string) => string;
    hired: (things: string) => string;
    vat: string;
  };
  page: OrderPageWords;
  beside: BesideWords;
  papers: PapersWords;
}
