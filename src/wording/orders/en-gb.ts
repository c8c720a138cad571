/** British English for orders, quotes, shopping lists and weeks. */

import { britishDate } from '../date.ts';
import { numberInWords } from '../locales/english-numbers.ts';
import { capitalised, uncapitalised } from '../sentence-case.ts';
import { enGbBeside } from './en-gb-beside.ts';
import { enGbMoneyWords } from './en-gb-money.ts';
import { enGbPageWords } from './en-gb-page.ts';
import { enGbPapers } from './en-gb-papers.ts';
import type { OrderWords } from './order-words.ts';

const number = (count: number): string => numberInWords(count, 12);

const TIERS = ['Bottom tier', 'Second tier', 'Third tier', 'Fourth tier', 'Fifth tier', 'Sixth tier'];

function tierName(at: number, tiers: number, stacked: boolean): string {
  if (!stacked) return tiers === 1 ? 'The cake' : `Cake ${at + 1}`;
  if (tiers > 1 && at === tiers - 1) return 'Top tier';
  return tiers === 3 && at === 1 ? 'Middle tier' : (TIERS[at] ?? `Tier ${at + 1}`);
}

export const enGbOrders: OrderWords = {
  date: britishDate,
  weekdayAndDate: (weekday, date) => `${weekday} ${date}`,
  orders: 'Orders',
  ordersLead: 'Each order from what was agreed to what is handed over, and the weeks they fall in.',
  ordersNone: 'There are no orders yet. Write one as orders/saturday-cake.yaml.',
  weekdays: ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'],
  places: {
    collected: 'Collected',
    delivered: 'Delivered',
    'set up at the venue': 'Set up at the venue',
    'sold at a stall': 'Sold at a stall',
  },
  dayAndTime: (weekday, date, time) => `${weekday} ${date}, ${time}`,
  zoneNote: (zone) => `${zone} time`,
  summary: (cakes, stacked, portions) =>
    stacked
      ? `${capitalised(number(cakes))} tiers, stacked: ${portions}.`
      : `${cakes === 1 ? 'One cake' : `${capitalised(number(cakes))} cakes`}: ${portions}.`,
  portionsOf: (count, size) => `${count} ${size}`,
  clock: (time) => time,
  portionsWanted: (wanted, over) => `${wanted} wanted, ${over}`,
  portionsOver: (over) => (over < 0 ? `${-over} short` : over === 0 ? 'none over' : `${over} over`),
  keptTop: 'the top tier is kept for another day and not counted',
  sizeNames: { dessert: 'dessert portions', finger: 'finger portions' },
  tierName,
  tierOf: (order, tier) => `${order}: ${uncapitalised(tier)}`,
  count: (count, name) => (count === 1 ? name : `${count} × ${name.replace(/^The cake/, 'cake')}`),
  partOf: (parts, of, name) =>
    parts === 1 ? `one of ${of} parts of ${name}` : `${parts} of ${of} parts of ${name}`,
  bowl: (at, of) => `Bowlful ${at} of ${of}`,
  onlyBowl: 'One bowlful',
  mixOf: (recipe, flavours) => [recipe, ...flavours.map((name) => name.toLowerCase())].join(', '),
  inEach: (grams) => `${grams}\u00a0g in each`,
  usesOf: {
    filling: 'Filling',
    coating: 'Coat',
    rolled: 'Rolled over',
    brushed: 'Brushed on',
    dam: 'Dam',
    topping: 'On each',
  },
  plainColour: 'untinted',
  coloured: (amounts) => `Of it: ${amounts}.`,
  finishFor: (tiers) => `For ${tiers}.`,
  noBoard: '–',
  boards: (board) => board,
  open: 'still open',
  facts: {
    reference: 'Reference',
    handOver: 'Hand over',
    place: 'Where',
    arrangement: 'Built',
    portions: 'Portions',
    weight: 'Weight without boards',
    height: 'Height without boards',
    cakes: 'Cakes',
    notes: 'Notes',
  },
  arrangement: (stacked, travelsAssembled) => {
    if (!stacked) return 'Side by side';
    return travelsAssembled
      ? 'Stacked, and travels put together'
      : 'Stacked on the spot, and travels in boxes';
  },
  private: 'For the baker only: cost, margin and working time. The customer gets the quote.',
  publishedPrivate:
    'This kitchen shows its orders on its site, money and all. Set ‘publish: no’ under ‘orders:’ in kitchen.yaml, or leave it out, to keep them to print and data.',
  sheet: {
    title: 'Order sheet',
    subtitle: (title) => title,
    lead: 'Work down the left-hand page, then the right. Tick each line as it is done.',
    eggs: 'Eggs',
    bowlful: 'Batter',
    fill: 'Into the tins',
    signOff: 'Sign-off',
    signLines: (inedible, hired) => [
      'Asked about allergies on',
      'Answer',
      'Allergens told to',
      ...(inedible ? ['Told what is not food'] : []),
      'Handed over by, at',
      ...(hired ? ['Hired things back on'] : []),
    ],
    checked: 'Checked',
    spare: (yolks, whites) => {
      const parts = [
        ...(yolks > 0 ? [yolks === 1 ? 'one yolk' : `${number(yolks)} yolks`] : []),
        ...(whites > 0 ? [whites === 1 ? 'one white' : `${number(whites)} whites`] : []),
      ];
      return `Left over: ${parts.join(' and ')}. Cover, chill and use within two days.`;
    },
    inedible: 'Take off before it is eaten',
    nothingInedible: 'Nothing inedible was ordered; supports and boards still come out.',
    hired: 'Hired, to be returned',
    hiredBack: (name, by) => (by === null ? name : `${name}, by ${by}`),
    toTick: 'to tick',
    eggsAndTins: 'Eggs, batter, tins',
    beaten: (part, grams) => `${part}, ${grams}\u00a0g beaten`,
    batterIn: 'g of batter in the bowl',
    intoTin: (cake, tin, count) =>
      count > 1 ? `g into each of ${tin}: ${uncapitalised(cake)}` : `g into ${uncapitalised(cake)}: ${tin}`,
    surplus: (text) => `After filling: ${text}.`,
    bakes: (count, height, layersEach) =>
      `${count} bakes of ${height} make one cake, ${layersEach === 1 ? 'a layer' : `${layersEach} layers`} from each`,
    level: (cut, offcutsG, layer) =>
      `Cut ${cut} off to level it (${offcutsG}\u00a0g of offcuts): layers of ${layer}`,
    withCore: 'with the heating core',
    withBand: 'with the insulated band',
    finishMade: (name, grams) => `${name}, ${grams}\u00a0g`,
    rollTo: (size, grams) => `roll out ${grams}\u00a0g to ${size}`,
    filling: (thickness, layers, gramsEach) =>
      layers < 2
        ? `Filling, ${thickness}`
        : `Filling, ${thickness} between ${number(layers)} layers, ${gramsEach}\u00a0g${layers === 2 ? '' : ' each time'}`,
    coats: (crumb, final) => `Crumb coat, ${crumb}; then ${final}`,
    dam: (bead) => `Dam: a bead of ${bead} round each layer’s edge, to hold the filling in`,
    box: (side, height) => `${side} × ${height}`,
    boxForAll: (side, height) => `${side} × ${height}, whole stack`,
    boxShared: 'the stack’s box',
    openBy: (question, date) => `${question} (by ${date})`,
    code: 'This order on screen',
  },
  allergens: {
    title: 'Allergens',
    contains: (names) => `Contains ${names}.`,
    none: 'None of the fourteen is among the ingredients by their packets.',
    unknown: (names) => `Not known of ${names}: read the packet before answering.`,
    mayContain: (names) => `May contain ${names}: handled in the same kitchen.`,
    ask: 'Ask before the order is taken and tell again at hand-over; write down question and answer.',
    notFree:
      'What is not listed may still be in the kitchen. Do not promise that a cake is safe for someone with an allergy.',
  },
  cautions: {
    supports:
      'Supports, boards and dowels that touch cake must be made for food, and all come out before it is cut.',
    raw: 'Batter holds raw egg and raw flour: nobody tastes it; wash hands and bowls after it.',
    rawWhite:
      'Royal icing holds egg white that nothing cooks: use pasteurised white, and say so to whoever is pregnant, very young, old or ill.',
    rawGlaze:
      'The poured glaze holds egg that nothing cooks: use pasteurised egg, and say so to whoever is pregnant, very young, old or ill.',
    hot: 'Tins, shelves and heating cores stay hot: dry cloths, both hands.',
    cool: 'Cool cakes fully before they are wrapped, filled or boxed: warm cake sweats and spoils.',
    chilled:
      'Something in this order must be kept in the fridge, at 8 °C or below: say so at hand-over, and for how long it may stand out.',
    heavy: (kg) => `Lift from the bottom board; two people lift what weighs more than ${kg}\u00a0kg.`,
    kept: {
      frozen: (freezeOn, eatBy) =>
        `Top tier kept back: wrap it in film twice and foil, freeze it on ${freezeOn}, eat it by ${eatBy}; thaw it wrapped in the fridge and eat it within a day. Local rules come first; if in doubt, throw it out.`,
      asItIs:
        'Top tier kept back: wrap it in baking paper and foil, keep it cool and dry, eat it by its label’s date.',
      notKept:
        'Fresh cream or curd does not keep: eat the top tier by its label’s date, and do not keep it back.',
    },
    inedible: (names) => `Not food, and to be taken off before eating: ${names}.`,
    hired: (things) => `Hired, to be returned: ${things}.`,
    vat: 'VAT on cake and on what goes with it differs from place to place: check before the quote goes out.',
  },
  week: {
    title: (week) => `Week ${week}`,
    range: (from, to) => `${from} to ${to}`,
    lead: (orders) =>
      orders === 1
        ? 'One order is handed over this week.'
        : `${capitalised(number(orders))} orders are handed over this week.`,
    mixes: 'What is mixed together',
    mixesLead:
      'Batter of one recipe and flavour is planned together where days suit all its cakes, so that its eggs are whole once; each bowl is mixed when the timetable says.',
    shared: (eggsAlone, eggs, overAlone, over) =>
      `Made together: ${eggs} and ${over} over. Order by order it would be ${eggsAlone} and ${overAlone} over.`,
    bakeOn: (day) => `Mix on ${day}`,
    noDay: 'No day is left to bake it in time',
    shopping: 'One shopping list',
    orders: 'Orders of the week',
    toWeek: 'The whole week',
    sharedWith: (week, batters, orders) =>
      `In week ${week} this is planned together with ${orders}: ${batters}. Weigh from the week sheet; use these weights only where this order is made alone.`,
    sheetTitle: (week) => `Week sheet ${week}`,
    sheetLead:
      'Every bowl of the week as it is mixed, shared where orders share a batter. Days and hours stand on the day sheets.',
    finishes: 'Fillings and coatings are made fresh for each order; their weights stand on its sheet.',
  },
  beside: enGbBeside,
  papers: enGbPapers,
  ...enGbPageWords,
  ...enGbMoneyWords,
};
