/** A shopping list as plain data: what to fetch first, then what the shelf has. */

import type { BoughtPack, ShoppingLine, ShoppingList } from '../compute/shopping/shopping-list.ts';
import type { Content } from '../domain/content.ts';
import type { Currency } from '../domain/money.ts';
import { formatLength } from '../wording/length.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams } from '../wording/mass.ts';
import { formatMoney } from '../wording/money.ts';
import { formatNumber } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { stackWordsFor } from '../wording/stacks/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import type { Figure } from './figure.ts';
import { countFigure } from './figures.ts';
import { boardFigure } from './finishing-figures.ts';
import type { ShoppingRow, ShoppingView } from './shopping.types.ts';

export const moneyFigure = (minor: number, currency: Currency): Figure => ({
  value: minor,
  unit: 'minor',
  text: formatMoney(minor, currency),
});

const KILOGRAM = 1000;

/** A weight as a shop would say it: kilograms from one up. */
function shelfText(amount: number, unit: ShoppingLine['unit'], words: OrderWords): string {
  if (unit === 'eggs') return words.shopping.eggsUnit(formatNumber(amount, 0));
  if (unit === 'pieces') return words.shopping.piecesUnit(formatNumber(amount, 0));
  if (amount >= KILOGRAM) return `${formatNumber(amount / KILOGRAM, 3)}\u00a0kg`;
  return `${formatGrams(amount)}\u00a0g`;
}

interface RowInput {
  currency: Currency;
  words: OrderWords;
  and: string;
  /** For the sizes of what is no ingredient. */
  sizes: Words;
}

const amountFigure = (amount: number, { unit }: ShoppingLine, { words }: RowInput): Figure => ({
  value: amount,
  unit: unit === 'pieces' ? 'count' : unit,
  text: shelfText(amount, unit, words),
});

function packFigures(pack: BoughtPack, line: ShoppingLine, input: RowInput): ShoppingRow['packs'][number] {
  const { words, currency } = input;
  return {
    count: countFigure(pack.count),
    size: amountFigure(pack.size, line, input),
    sizeText:
      line.unit === 'pieces'
        ? words.shopping.packOf(pack.text)
        : line.unit === 'eggs'
          ? words.shopping.eggsUnit(pack.text)
          : pack.text.replaceAll(' ', '\u00a0'),
    price: moneyFigure(pack.priceMinor, currency),
  };
}

/** A board or box with the size that is taken, and for which widths where those are others. */
export function sizedName(
  name: string,
  sizeMm: number | null,
  forMm: readonly number[],
  { shopping }: OrderWords,
  and: string,
): string {
  const size = sizeMm === null ? null : boardFigure(sizeMm).text;
  const others = [...new Set(forMm.map((mm) => boardFigure(mm).text))].filter((text) => text !== size);
  return shopping.ofSize(name, size, listInWords(others, and));
}

/** Sizes as they are asked for in a shop: '2 × 14 in (35.6 cm)'; of several, the inches by which boards are sold. */
function countedSizes(across: readonly number[], { words }: RowInput): string[] {
  const isOne = new Set(across).size === 1;
  const sizeText = (mm: number) => (isOne ? boardFigure(mm).text : formatLength(mm, 'in'));
  const texts = across.map((mm) => sizeText(mm).replaceAll(' ', '\u00a0'));
  return [...new Set(texts)].map((text) => {
    const count = texts.filter((one) => one === text).length;
    return count === 1 ? text : words.shopping.packs(count, text).replaceAll(' ', '\u00a0');
  });
}

/** A dummy tier is named by its size. */
function nameOf({ material, packaging, name }: ShoppingLine, input: RowInput): string {
  const { words, sizes, and } = input;
  if (material !== undefined) return words.beside.dummyBought(tinSize(material.tin, sizes));
  const across = packaging?.acrossMm ?? [];
  if (packaging?.sizeMm !== undefined) return sizedName(name, packaging.sizeMm, across, words, and);
  if (across.length === 0) return name;
  return words.shopping.ofSizes(name, listInWords(countedSizes(across, input), and));
}

function buyText(line: ShoppingLine, packs: ShoppingRow['packs'], { words, and }: RowInput): string {
  if (line.missing === 0) return words.shopping.nothing;
  if (line.unit === 'pieces' && packs.every(({ size }) => size.value === 1))
    return shelfText(line.missing, line.unit, words);
  if (packs.length === 0) return shelfText(line.missing, line.unit, words);
  return listInWords(
    packs.map(({ count, sizeText }) => words.shopping.packs(count.value, sizeText)),
    and,
  );
}

function shoppingRow(line: ShoppingLine, input: RowInput): ShoppingRow {
  const { currency } = input;
  const packs = (line.packs ?? []).map((pack) => packFigures(pack, line, input));
  return {
    ingredient: { id: line.ingredientId, name: nameOf(line, input) },
    needed: amountFigure(line.needed, line, input),
    onHand: amountFigure(line.onHand, line, input),
    missing: amountFigure(line.missing, line, input),
    buyText: buyText(line, packs, input),
    packs,
    buys: line.missing > 0,
    material: line.material !== undefined || line.packaging !== undefined,
    cost: line.boughtMinor === null ? null : moneyFigure(line.boughtMinor, currency),
    left: amountFigure(line.left, line, input),
    used: line.usedMinor === null ? null : moneyFigure(line.usedMinor, currency),
  };
}

/** The list's view; `id` names its files; `sharesShelf` where other orders take from the same shelf. */
export function shoppingView(
  id: string,
  title: string,
  list: ShoppingList,
  { kitchen, costs, ingredients }: Pick<Content, 'kitchen' | 'costs' | 'ingredients'>,
  sharesShelf = false,
): ShoppingView {
  const words = orderWordsFor(kitchen.locale);
  const sizes = wordsFor(kitchen.locale);
  const { and } = sizes;
  const input = { currency: costs.currency, words, and, sizes };
  const rows = list.lines.map((line) => shoppingRow(line, input));
  const unpriced = list.unpricedIds.map((one) =>
    (ingredients.find((item) => item.id === one)?.name ?? one).toLowerCase(),
  );
  const spare = list.spareYolks + list.spareWhites > 0;
  return {
    id,
    title,
    lead: words.shopping.lead,
    rows: [...rows.filter(({ buys }) => buys), ...rows.filter(({ buys }) => !buys)],
    total: moneyFigure(list.boughtMinor, costs.currency),
    notes: [
      ...(sharesShelf ? [words.shopping.alone] : []),
      ...(spare ? [words.sheet.spare(list.spareYolks, list.spareWhites)] : []),
      ...(unpriced.length === 0 ? [] : [words.shopping.unpriced(listInWords(unpriced, and))]),
      ...(list.uncounted.length === 0 ? [] : [stackWordsFor(kitchen.locale).supportsByHand(list.uncounted)]),
    ],
    cautions: [],
  };
}
