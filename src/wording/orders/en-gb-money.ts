/** British English for what an order costs, what is bought for it and what is asked for it. */
import type { OrderWords } from './order-words.ts';

const JOBS: OrderWords['cost']['jobs'] = {
  'make-finish': 'Making fillings and coats',
  'weigh-out': 'Weighing out',
  mix: 'Mixing',
  'fill-tins': 'Filling tins',
  'wash-bowl': 'Washing the bowl',
  'line-tins': 'Greasing and lining',
  'oven-in': 'Into the oven',
  'oven-out': 'Out of the oven',
  'turn-out': 'Turning out',
  wrap: 'Wrapping',
  build: 'Levelling, brushing and filling',
  'crumb-coat': 'First coat',
  'final-coat': 'Final coat',
  pour: 'Pouring the glaze',
  cover: 'Rolling out and covering',
  top: 'Topping small cakes',
  'bore-holes': 'Boring for the dowel',
  'cut-pieces': 'Cutting into pieces',
  'cut-supports': 'Cutting supports',
  stack: 'Stacking',
  pack: 'Boxing',
  deliver: 'Driving',
  'set-up': 'Setting up',
  'drive-back': 'Driving back',
};

export const enGbMoneyWords: Pick<OrderWords, 'shopping' | 'cost' | 'quote'> = {
  shopping: {
    title: 'Shopping list',
    forOrder: (title) => `Shopping for ${title}`,
    forWeek: (week) => `Shopping for week ${week}`,
    lead: 'What is needed less what is on the shelf, in the packs that cost least.',
    alone: 'As if this were the week’s only order: the week’s own list shares the shelf among them all.',
    nothing: 'enough on the shelf',
    packs: (count, size) => `${count} × ${size}`,
    total: 'Together',
    stocked: 'On the shelf already',
    things: 'Boards, boxes and supports',
    packOf: (count) => `pack of ${count}`,
    ofSizes: (name, sizes) => `${name}, ${sizes} across`,
    ofSize: (name, size, others) =>
      size === null
        ? `${name}, ${others === '' ? 'of unknown width' : `${others} across: no size so wide has a price`}`
        : `${name}, ${size} across${others === '' ? '' : `, the next size up for ${others}`}`,
    piecesUnit: (count) => count,
    eggsUnit: (count) => (count === '1' ? '1 egg' : `${count} eggs`),
    unpriced: (names) =>
      `No pack is known for ${names}: buy by weight, and add ‘packs:’ in ingredients.yaml.`,
    unpricedRow: 'no pack known',
    bought: (name, count) => `${name}, ${count}`,
  },
  cost: {
    title: 'Cost and price',
    lead: 'Each line is rounded to the smallest coin before it is added. Ingredients count as used, whatever stands on the shelf.',
    kinds: {
      ingredients: 'Ingredients, as used',
      materials: 'Materials',
      packaging: 'Packaging',
      energy: 'Oven',
      labour: 'Work',
      overhead: 'Overhead',
    },
    total: 'Cost',
    price: (margin, step) => `Price: cost ÷ (1 − ${margin}), up to the next ${step}`,
    margin: 'Left over the cost',
    hours: (hours, minutes) => [...(hours > 0 ? [`${hours}\u00a0h`] : []), `${minutes}\u00a0min`].join(' '),
    kwh: (kwh) => `${kwh}\u00a0kWh`,
    pieces: (count) => count,
    perHour: (money) => `${money} per h`,
    perKwh: (money) => `${money} per kWh`,
    ovenText: (loads, heatings, kwh) =>
      `Baked by itself: ${loads}; the oven is heated ${heatings === 1 ? 'once' : heatings === 2 ? 'twice' : `${heatings} times`}, ${kwh}\u00a0kWh in all, with the minutes in which cakes are taken out.`,
    load: (tins, dial, minutes) => `${tins === 1 ? 'one tin' : `${tins} tins`} at ${dial} for ${minutes}`,
    tooLow: (names) => `Without the price of ${names}: the cost is too low by as much.`,
    nothingPriced:
      'Nothing is priced yet, so there is no quote: write ‘costs:’ in kitchen.yaml and ‘packs:’ in ingredients.yaml.',
    jobs: JOBS,
    workTitle: 'Hands-on time',
    shopNote:
      'Work and overhead are reckoned by these hours: hands-on in the kitchen, with the road both ways and setting up where there are any, without shopping. Shopping serves the whole week and is part of the overhead.',
    driveNote:
      'The drive is in the hours, there and back; its fuel and wear are not in this cost. Add ‘per: drive’ under ‘packaging:’ in kitchen.yaml, or charge it under the order’s extras with ‘delivery: yes’.',
    driveCharged: (names) =>
      `The drive’s hours, there and back, are in this cost; its fuel and wear are not, and are to be met by what is charged beside the cake: ${names}.`,
  },
  quote: {
    title: 'Quote',
    forReference: (reference) => `For ${reference}`,
    lead: 'What you get, when, and what it costs.',
    includes: 'What it is',
    vatAt: (share) => `VAT at ${share}`,
    noVat: 'no VAT',
    subtotal: 'Before VAT',
    total: 'To pay',
    inedible: 'not food: taken off before the cake is eaten',
    hired: (by) => (by === null ? 'hired: to be returned' : `hired: to be returned by ${by}`),
    allergenNote:
      'Tell us of any allergy before you order. Everything is made in one kitchen, so traces of what else is used there cannot be ruled out.',
    vatNote: 'VAT is worked out line by line.',
    dated: (date) => `Prices of ${date}.`,
    validUntil: (date) => `Valid until ${date}.`,
    payment: { deposit: (share) => `Deposit, ${share}`, balance: 'Balance', whole: 'In full' },
    due: {
      by: (date) => `due by ${date}`,
      accepted: 'due when the quote is accepted',
      handOver: 'due at the hand-over',
    },
    delivery: {
      collected: null,
      delivered: 'Delivery',
      'set up at the venue': 'Delivery and setting up',
      'sold at a stall': null,
    },
    included: 'in the price of the cake',
    costing: 'Costing',
    costingLead: 'What it costs to make, and what it has to bring.',
    costingPrivate: 'For the baker only: cost, margin and working time.',
    made: 'What is made',
    toBring: 'What it has to bring',
    perPiece: (pieces, each) =>
      `In ${pieces} pieces, ${each} a piece, up to the next coin. What is left unsold brings nothing: allow for it.`,
    taste: (recipe, finishes) => (finishes === '' ? recipe : `${recipe}; ${finishes}`),
  },
};
