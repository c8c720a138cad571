/** Boards, boxes and supports of three orders of the demo, counted and added up by hand; prices are invented. */
import { beforeAll, describe, expect, it } from 'vitest';
import { orderCost } from '../../../src/compute/costs/order-cost.ts';
import { type OrderPieces, orderPieces, summedPieces } from '../../../src/compute/costs/order-pieces.ts';
import type { PlannedOrder } from '../../../src/compute/orders/planned-order.types.ts';
import { withPackaging } from '../../../src/compute/shopping/packaging-lines.ts';
import { shoppingList } from '../../../src/compute/shopping/shopping-list.ts';
import type { Content } from '../../../src/domain/content.ts';
import { shoppingView } from '../../../src/views/shopping.ts';
import { orderNamed, plannedDemo } from '../orders/demo-orders.ts';

let content: Content;
let orders: PlannedOrder[];
beforeAll(async () => {
  ({ content, orders } = await plannedDemo());
});

const piecesOf = (id: string): OrderPieces => orderPieces(orderNamed(orders, id), content.finishing);

/** What packaging costs an order, and what the shop takes for it. */
function sums(pieces: OrderPieces): { costMinor: number; boughtMinor: number; buys: string[] } {
  const { counts, widthsMm } = pieces;
  const basis = {
    ingredients: [],
    materials: [],
    pieces: counts,
    widthsMm,
    ovenKwh: 0,
    handsOnMin: 0,
    extras: [],
  };
  const cost = orderCost('Cake', basis, content.costs);
  const list = withPackaging(shoppingList([], [], []), content.costs.packaging, pieces);
  return {
    costMinor: cost.costMinor,
    boughtMinor: list.boughtMinor,
    buys: list.lines.map(
      ({ name, needed, onHand, packs }) =>
        `${name} ${needed}-${onHand}: ${(packs ?? []).map(({ count, size }) => `${count}x${size}`).join(' ')}`,
    ),
  };
}

describe('boards, boxes and supports', () => {
  it('three tiers carried apart: 3.20 + 2 × 0.65 + 3 × 2.00 + 8 × 0.25 + 1.20 + 3 × 0.30 + 3 × 0.05 = 14.75', () => {
    const pieces = piecesOf('three-tiers-for-sixty');
    // Four supports under the eight-inch tier and four under the six-inch; 893 + 734 + 574 mm of ribbon are 2.2 m.
    expect(pieces.counts).toMatchObject({ drum: 1, card: 2, 'cake box': 3, support: 8, 'centre dowel': 1 });
    expect(pieces.counts).toMatchObject({ 'metre of ribbon': 3, 'lined tin': 3, drive: 1 });
    expect([pieces.widthsMm.drum.length, pieces.widthsMm.card.length]).toEqual([1, 2]);
    // A drum of 14 in is 3.20; + 1.30 + 6.00 + 3.00 + 1.20 + 1.50: four supports are there, and paper for all tins.
    expect(sums(pieces)).toEqual({
      costMinor: 1475,
      boughtMinor: 1620,
      buys: [
        'Cake drum 1-0: 1x1',
        'Cake card 2-0: 2x1',
        'Cake box 3-0: 3x1',
        'Support 8-4: 1x12',
        'Centre dowel 1-0: 1x1',
        'Ribbon, by the metre 3-0: 1x5',
        'Lining paper, sheet 3-10: ',
      ],
    });
  });

  it('trays and 24 cupcakes: 4 × 0.65 + 4 × 2.00 + 4 × 0.05 + 24 × 0.04 + 4 × 0.85 = 15.16, no drum, no supports', () => {
    const pieces = piecesOf('fair-trays');
    expect(pieces.counts).toMatchObject({ drum: 0, card: 4, 'small cake': 24, 'box of 6': 4, support: 0 });
    // 2.60 + 8.00 + one pack of 60 cases for 2.40 + 3.40
    expect(sums(pieces)).toMatchObject({ costMinor: 1516, boughtMinor: 1640 });
  });

  it('a stack put together in one box, its cutting cake in another: 2.60 + 3 × 0.65 + 2 × 2.00 + 7 × 0.25 + 1.20 + 2 × 0.30 + 3 × 0.05 = 12.25', () => {
    const pieces = piecesOf('square-and-round');
    // Four supports under the six-inch round, three under the four-inch dummy.
    expect(pieces.counts).toMatchObject({ drum: 1, card: 3, 'cake box': 2, support: 7, 'centre dowel': 1 });
    // 2.60 + 1.95 + 4.00 + 3.00 + 1.20 + 1.50
    expect(sums(pieces)).toMatchObject({ costMinor: 1225, boughtMinor: 1425 });
  });

  it('adds orders up before packs are chosen: 8 + 7 supports less 4 on hand are one pack of 12', () => {
    const both = summedPieces([piecesOf('three-tiers-for-sixty'), piecesOf('square-and-round')]);
    expect(both.counts.support).toBe(15);
    expect(sums(both).buys).toContain('Support 15-4: 1x12');
    expect(both.widthsMm.card).toHaveLength(5);
  });

  it('are listed by size as a shop is asked for them: so many of each', () => {
    const both = summedPieces([piecesOf('three-tiers-for-sixty'), piecesOf('three-tiers-for-sixty')]);
    const list = withPackaging(shoppingList([], [], []), content.costs.packaging, both);
    const names = shoppingView('week', 'Week', list, content).rows.map(({ ingredient }) => ingredient.name);
    // 10, 8 and 6 in with coats of 12 mm on each side and 75 mm to spare, up to whole inches: 14, 12 and 10 in.
    expect(names.find((name) => name.startsWith('Cake box'))?.replaceAll('\u00a0', ' ')).toBe(
      'Cake box, 2 × 14 in, 2 × 12 in and 2 × 10 in across',
    );
    expect(names).toContain('Cake drum, 14 in (35.6 cm) across');
  });

  it('boards by width: each takes the next size up, said, and what is wider than all costs the line’s own price', () => {
    const inch = (inches: number) => inches * 25.4;
    const sizes = [
      { acrossMm: inch(10), eachMinor: 210 },
      { acrossMm: inch(12), eachMinor: 260 },
    ];
    const packaging = [{ name: 'Drum', eachMinor: 480, per: 'drum', sizes } as const].map((one) => ({
      ...one,
      sizes: [...one.sizes],
    }));
    const plain = piecesOf('three-tiers-for-sixty');
    const pieces: OrderPieces = {
      ...plain,
      counts: { ...plain.counts, drum: 4 },
      widthsMm: { ...plain.widthsMm, drum: [inch(9), inch(12), inch(10), inch(14)] },
    };
    // 9 and 10 in take a size of 10 in: 2 × 2.10; 12 in: 2.60; 14 in is wider than all: 4.80. Together 11.60.
    const basis = { ingredients: [], materials: [], pieces: pieces.counts, widthsMm: pieces.widthsMm };
    const cost = orderCost(
      'Cake',
      { ...basis, ovenKwh: 0, handsOnMin: 0, extras: [] },
      { ...content.costs, packaging },
    );
    const list = withPackaging(shoppingList([], [], []), packaging, pieces);
    expect([cost.costMinor, list.boughtMinor]).toEqual([1160, 1160]);
    const { rows } = shoppingView('week', 'Week', list, content);
    expect(rows.map(({ ingredient, cost: paid }) => `${ingredient.name}: ${paid?.text}`)).toEqual([
      'Drum, 14 in (35.6 cm) across: no size so wide has a price: £4.80',
      'Drum, 12 in (30.5 cm) across: £2.60',
      'Drum, 10 in (25.4 cm) across, the next size up for 9 in (22.9 cm): £4.20',
    ]);
  });

  it('each is the price as used, packs the price as bought: 8 supports are charged 8 × 0.25, and 4 missing ones bought as one of 5 for 1.10', () => {
    const support = { name: 'Support', eachMinor: 25, per: 'support', onHand: 4 } as const;
    const packs = [
      { size: 2, text: '2', priceMinor: 60 },
      { size: 5, text: '5', priceMinor: 110 },
      { size: 12, text: '12', priceMinor: 300 },
    ];
    const packaging = [{ ...support, packs }];
    const pieces = piecesOf('three-tiers-for-sixty');
    const basis = {
      ingredients: [],
      materials: [],
      pieces: pieces.counts,
      ovenKwh: 0,
      handsOnMin: 0,
      extras: [],
    };
    expect(orderCost('Cake', basis, { ...content.costs, packaging }).costMinor).toBe(200);
    // Two packs of 2 would be 1.20.
    expect(withPackaging(shoppingList([], [], []), packaging, pieces).boughtMinor).toBe(110);
  });

  it('a drive is costed and never shopped for', () => {
    const packaging = [{ name: 'Fuel', eachMinor: 450, per: 'drive' } as const];
    const pieces = piecesOf('three-tiers-for-sixty');
    const list = withPackaging(shoppingList([], [], []), packaging, pieces);
    expect(list.lines).toEqual([]);
    const basis = { ingredients: [], materials: [], pieces: pieces.counts, ovenKwh: 0, handsOnMin: 0 };
    expect(orderCost('Cake', { ...basis, extras: [] }, { ...content.costs, packaging }).costMinor).toBe(450);
    expect(piecesOf('orange-birthday').counts.drive).toBe(0);
  });
});

describe('a tier whose width nobody knows', () => {
  const withMould = (at: number): PlannedOrder => {
    const three = orderNamed(orders, 'three-tiers-for-sixty');
    const mould = content.kitchen.tins.find(({ id }) => id === 'beehive');
    if (mould === undefined) throw new Error('no beehive');
    const unknown = { tin: mould, coatedAcrossMm: null, boardAcrossMm: null, ribbonMm: null };
    return {
      ...three,
      tiers: three.tiers.map((tier, index) => (index === at ? { ...tier, ...unknown } : tier)),
    };
  };

  it('has its supports named as uncounted, while those under the others are counted', () => {
    // On top: four under the eight-inch tier are known. Below all: four and four, none of them under the mould.
    for (const [at, support, uncounted] of [
      [2, 4, ['Beehive mould']],
      [1, 4, ['Beehive mould']],
      [0, 8, []],
    ] as const) {
      const pieces = orderPieces(withMould(at), content.finishing);
      expect(pieces.uncounted).toEqual(uncounted);
      expect(pieces.counts).toMatchObject({ support, drum: 1, card: 2, 'cake box': 3, 'centre dowel': 1 });
    }
  });

  it('is told on the shopping list of its order and of its week, never as nothing', () => {
    const pieces = summedPieces([orderPieces(withMould(2), content.finishing), piecesOf('square-and-round')]);
    const list = withPackaging(shoppingList([], [], []), content.costs.packaging, pieces);
    const { notes } = shoppingView('week', 'Week', list, content);
    expect(notes.join()).toMatch(/^Supports under the cake from Beehive mould are not counted.*by hand/);
    const counted = withPackaging(list, content.costs.packaging, piecesOf('square-and-round'));
    expect(shoppingView('week', 'Week', counted, content).notes).toEqual([]);
  });
});
