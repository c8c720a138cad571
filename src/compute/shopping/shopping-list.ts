/**
 * What is to be bought for some orders, and what is it as used? Needed less what is on hand, covered by the
 * cheapest packs. As used: the need at the price of the packs that would cover it alone, stock left aside, so that
 * a quote does not depend on what happens to stand on the shelf.
 */
import type { Ingredient } from '../../domain/ingredient.ts';
import { type Minor, wholeMinor } from '../../domain/money.ts';
import type { Pack, StockLine } from '../../domain/pack.ts';
import { quantiseG } from '../../domain/quantise.ts';
import type { Tin } from '../../domain/tin.ts';
import type { IngredientUse, PlannedDummy } from '../orders/planned-order.types.ts';
import { cheapestPacks } from './cheapest-packs.ts';
import { eggNeed } from './eggs-to-buy.ts';

export interface BoughtPack extends Pack {
  count: number;
}

/** What is bought by the piece and is no ingredient; always bought, never on the shelf. */
export interface Material {
  id: string;
  tin: Tin;
  eachMinor: Minor;
}

export interface ShoppingLine {
  ingredientId: string;
  name: string;
  /** What `needed`, `onHand`, `buy`, `left` and pack sizes are counted in. */
  unit: 'g' | 'eggs' | 'pieces';
  /** Set for what is no ingredient: a dummy tier, named by its form. */
  material?: Material;
  /** Set for boards, boxes and supports: how wide each is, mm, widest first, where that matters and is known. */
  packaging?: {
    acrossMm: number[];
    /** Where prices go by width: the size that is bought; null for one wider than all of them. */
    sizeMm?: number | null;
  };
  needed: number;
  onHand: number;
  /** Missing: 0 when the shelf has enough. */
  missing: number;
  /** Packs to fetch, largest first; null when nobody has said how it is sold. */
  packs: BoughtPack[] | null;
  boughtMinor: Minor | null;
  /** On the shelf when all is made. */
  left: number;
  /** The need itself, at the price of its packs; null without packs, and for what is no ingredient. */
  usedMinor: Minor | null;
}

export interface ShoppingList {
  lines: ShoppingLine[];
  /** Σ bought, of what has a price. */
  boughtMinor: Minor;
  /** Σ as used, each line rounded first. */
  usedMinor: Minor;
  /** Whites and yolks that nothing uses. */
  spareYolks: number;
  spareWhites: number;
  /** What has no pack, and so no price. */
  unpricedIds: string[];
  /** Tins whose cakes stand on supports that are not on the list: nobody knows how wide they are. */
  uncounted: string[];
}

interface Need {
  item: Pick<Ingredient, 'id' | 'name' | 'packs'>;
  unit: 'g' | 'eggs';
  amount: number;
}

/** What costs nothing in every pack comes from the tap, and nobody fetches it. */
const isFree = ({ packs = [] }: Need['item']): boolean =>
  packs.length > 0 && packs.every(({ priceMinor }) => priceMinor === 0);

const MG_PER_G = 1000;

const whole = (amount: number, unit: Need['unit']): number =>
  unit === 'eggs' ? amount : Math.round(amount * MG_PER_G);

const wholePacks = ({ item, unit }: Need) =>
  (item.packs ?? []).map(({ size, priceMinor }) => ({ size: whole(size, unit), priceMinor }));

function usedMinor(need: Need): Minor | null {
  const packs = wholePacks(need);
  const needed = whole(need.amount, need.unit);
  const mix = cheapestPacks(needed, packs);
  if (mix === null) return null;
  const content = packs.reduce((sum, { size }, at) => sum + size * (mix.counts[at] ?? 0), 0);
  return content === 0 ? 0 : wholeMinor((mix.priceMinor * needed) / content);
}

function line(need: Need, stock: readonly StockLine[]): ShoppingLine {
  const { item, unit, amount } = need;
  const onHand = stock.find(({ ingredientId }) => ingredientId === item.id)?.amount ?? 0;
  const missing = Math.max(0, quantiseG(amount - onHand));
  const mix = cheapestPacks(whole(missing, unit), wholePacks(need));
  const packs =
    mix === null ? null : (item.packs ?? []).map((pack, at) => ({ ...pack, count: mix.counts[at] ?? 0 }));
  const bought = (packs ?? []).reduce((sum, { size, count }) => sum + size * count, 0);
  return {
    ingredientId: item.id,
    name: item.name,
    unit,
    needed: amount,
    onHand,
    missing,
    packs: packs === null ? null : packs.filter(({ count }) => count > 0).reverse(),
    boughtMinor: mix === null ? (missing === 0 ? 0 : null) : mix.priceMinor,
    left: Math.max(0, quantiseG(onHand + bought - amount)),
    usedMinor: usedMinor(need),
  };
}

function needsOf(uses: readonly IngredientUse[], shelf: readonly Ingredient[]): Need[] {
  const eggs = eggNeed(uses, shelf);
  const item = (id: string) => shelf.find((one) => one.id === id) ?? { id, name: id };
  const wholeEgg = shelf.find(({ eggPart }) => eggPart === 'egg') ?? { id: 'egg', name: 'Egg' };
  const weighed = uses
    .filter(({ ingredientId, grams }) => grams > 0 && eggs?.ingredientIds.includes(ingredientId) !== true)
    .map(({ ingredientId, grams }): Need => ({ item: item(ingredientId), unit: 'g', amount: grams }));
  return eggs === null ? weighed : [{ item: wholeEgg, unit: 'eggs', amount: eggs.eggs }, ...weighed];
}

const materialLine = (material: Material): ShoppingLine => ({
  ...{ ingredientId: material.id, name: material.id, unit: 'pieces', material },
  ...{ needed: 1, onHand: 0, missing: 1, left: 0 },
  packs: [{ size: 1, text: '1', priceMinor: material.eachMinor, count: 1 }],
  ...{ boughtMinor: material.eachMinor, usedMinor: null },
});

const sum = (values: readonly (Minor | null)[]): Minor =>
  values.reduce<number>((all, value) => all + (value ?? 0), 0);

/** The list for some uses, by name, eggs as one line of whole ones; then what is no ingredient. */
export function shoppingList(
  uses: readonly IngredientUse[],
  stock: readonly StockLine[],
  shelf: readonly Ingredient[],
  materials: readonly Material[] = [],
): ShoppingList {
  const eggs = eggNeed(uses, shelf);
  const ingredients = needsOf(uses, shelf)
    .filter(({ item }) => !isFree(item))
    .map((need) => line(need, stock))
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const lines = [...ingredients, ...materials.map(materialLine)];
  return {
    lines,
    boughtMinor: sum(lines.map(({ boughtMinor }) => boughtMinor)),
    usedMinor: sum(lines.map((one) => one.usedMinor)),
    spareYolks: eggs?.spareYolks ?? 0,
    spareWhites: eggs?.spareWhites ?? 0,
    unpricedIds: ingredients.filter((one) => one.usedMinor === null).map(({ ingredientId }) => ingredientId),
    uncounted: [],
  };
}

/** The dummies of some orders that have to be bought; a hired one stands on the shelf. */
export const materialsOf = (
  orders: readonly { order: { id: string }; dummies: readonly PlannedDummy[] }[],
): Material[] =>
  orders.flatMap(({ order, dummies }) =>
    dummies.flatMap(({ ask, tin }) =>
      ask.supply === 'bought' ? [{ id: `${order.id}-${tin.id}`, tin, eachMinor: ask.eachMinor }] : [],
    ),
  );
