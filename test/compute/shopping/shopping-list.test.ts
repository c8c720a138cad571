import { describe, expect, it } from 'vitest';
import { shoppingList } from '../../../src/compute/shopping/shopping-list.ts';
import type { Ingredient } from '../../../src/domain/ingredient.ts';

const item = (id: string, rest: Partial<Ingredient> = {}): Ingredient => ({
  id,
  name: id,
  role: 'flour',
  fine: false,
  ...rest,
});

const SHELF: Ingredient[] = [
  item('butter', {
    packs: [
      { size: 250, text: '250', priceMinor: 215 },
      { size: 500, text: '500', priceMinor: 395 },
    ],
  }),
  item('sugar', { packs: [{ size: 1000, text: '1000', priceMinor: 169 }] }),
  item('salt'),
  item('water', { packs: [{ size: 1000, text: '1 l', priceMinor: 0 }] }),
  item('egg', {
    role: 'egg',
    eggPart: 'egg',
    packs: [
      { size: 6, text: '6', priceMinor: 175 },
      { size: 12, text: '12', priceMinor: 305 },
    ],
  }),
  item('yolk', { role: 'egg', eggPart: 'yolk' }),
  item('white', { role: 'egg', eggPart: 'white' }),
];

const use = (ingredientId: string, grams: number, eggs: number | null = null) => ({
  ingredientId,
  grams,
  eggs,
});
const lineOf = (list: ReturnType<typeof shoppingList>, id: string) =>
  list.lines.find(({ ingredientId }) => ingredientId === id);

describe('shoppingList', () => {
  it('fetches nothing from the tap: 300 g of water at 0.00 is neither listed nor unpriced', () => {
    const list = shoppingList([use('water', 300), use('sugar', 450)], [], SHELF);
    expect(list.lines.map(({ ingredientId }) => ingredientId)).toEqual(['sugar']);
    expect(list).toMatchObject({ unpricedIds: [], boughtMinor: 169 });
  });

  it('buys what is missing, by hand: 700 g of butter with 250 g on hand is one 500 g pack at 3.95', () => {
    const list = shoppingList([use('butter', 700)], [{ ingredientId: 'butter', amount: 250 }], SHELF);
    expect(lineOf(list, 'butter')).toEqual({
      ingredientId: 'butter',
      name: 'butter',
      unit: 'g',
      needed: 700,
      onHand: 250,
      missing: 450,
      packs: [{ size: 500, text: '500', priceMinor: 395, count: 1 }],
      boughtMinor: 395,
      left: 50,
      // alone it would be 500 + 250 g for 6.10: 610 × 700 ÷ 750 = 569.33
      usedMinor: 569,
    });
    expect([list.boughtMinor, list.usedMinor]).toEqual([395, 569]);
  });

  it('buys nothing that the shelf has, and still charges for it as used', () => {
    const list = shoppingList([use('sugar', 450)], [{ ingredientId: 'sugar', amount: 700 }], SHELF);
    // 169 × 450 ÷ 1000 = 76.05
    expect(lineOf(list, 'sugar')).toMatchObject({
      missing: 0,
      packs: [],
      boughtMinor: 0,
      left: 250,
      usedMinor: 76,
    });
  });

  it('cracks a whole egg for a yolk and tells what is spare: 5 eggs and 4 yolks are 9, with 4 whites over', () => {
    const uses = [use('egg', 255, 5), use('yolk', 69, 4)];
    const list = shoppingList(uses, [{ ingredientId: 'egg', amount: 2 }], SHELF);
    expect(list.lines).toHaveLength(1);
    expect(lineOf(list, 'egg')).toMatchObject({
      unit: 'eggs',
      needed: 9,
      missing: 7,
      packs: [{ size: 12, count: 1 }],
      boughtMinor: 305,
      left: 5,
      // nine alone: a dozen at 3.05 × 9 ÷ 12 = 228.75
      usedMinor: 229,
    });
    expect([list.spareYolks, list.spareWhites]).toEqual([0, 4]);
  });

  it('shares one egg between a yolk and a white', () => {
    const list = shoppingList([use('yolk', 17, 3), use('white', 100, 3)], [], SHELF);
    expect(lineOf(list, 'egg')).toMatchObject({ needed: 3 });
    expect([list.spareYolks, list.spareWhites]).toEqual([0, 0]);
  });

  it('buys whites by the carton where they are sold so', () => {
    const shelf = SHELF.map((one) =>
      one.id === 'white' ? { ...one, packs: [{ size: 500, text: '500', priceMinor: 280 }] } : one,
    );
    const list = shoppingList([use('white', 330, 10)], [], shelf);
    expect(list.lines.map(({ ingredientId, unit }) => [ingredientId, unit])).toEqual([['white', 'g']]);
    // 280 × 330 ÷ 500 = 184.8
    expect(lineOf(list, 'white')?.usedMinor).toBe(185);
  });

  it('names what nobody has priced, and never guesses', () => {
    const list = shoppingList([use('salt', 3)], [], SHELF);
    expect(lineOf(list, 'salt')).toMatchObject({ packs: null, boughtMinor: null, usedMinor: null });
    expect(list.unpricedIds).toEqual(['salt']);
    expect(list.usedMinor).toBe(0);
  });
});
