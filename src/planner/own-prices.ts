/**
 * What ingredients cost whoever holds the phone, as text they typed or an ingredients.yaml they opened: packs and
 * their prices, '500 g 1.05, 1 kg 1.69'. Kept on the device; what they did not say stays as published, if it is.
 */
import type { Ingredient } from '../domain/ingredient.ts';
import type { Currency } from '../domain/money.ts';
import type { Pack } from '../domain/pack.ts';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { amountOnShelf } from '../parse/amount-on-shelf.ts';
import { parseMoney } from '../parse/units/money.ts';

/** '500 g 1.05, 1 kg 1.69'; for eggs '6 1.75, 12 3.05'. */
export function packsText(packs: readonly Pack[], { minorPerMajor }: Currency): string {
  const decimals = Math.round(Math.log10(minorPerMajor));
  return packs
    .map(({ text, priceMinor }) => `${text} ${(priceMinor / minorPerMajor).toFixed(decimals)}`)
    .join(', ');
}

/** The packs of such a text, smallest first; everything wrong with it at once. */
export function packsFrom(text: string, item: Ingredient, currency: Currency): Result<Pack[]> {
  const packs: Pack[] = [];
  const problems: Problem[] = [];
  for (const written of text.split(',')) {
    const words = written.trim().split(/\s+/);
    const sizeText = words.slice(0, -1).join(' ');
    const size = amountOnShelf(sizeText, item);
    const price = parseMoney(words.at(-1) ?? '', currency);
    if (size.ok && price.ok) packs.push({ size: size.value, text: sizeText, priceMinor: price.value });
    else problems.push(...[size, price].flatMap((one) => (one.ok ? [] : one.problems)));
  }
  return problems.length > 0 ? fail(...problems) : succeed(packs.sort((a, b) => a.size - b.size));
}

export interface Priced {
  ingredients: Ingredient[];
  problems: Problem[];
}

/** The ingredients with this device's own prices in place; an empty text says that there is none. */
export function withOwnPrices(
  ingredients: readonly Ingredient[],
  prices: Readonly<Record<string, string>>,
  currency: Currency,
): Priced {
  const problems: Problem[] = [];
  const priced = ingredients.map((item): Ingredient => {
    const text = prices[item.id];
    if (text === undefined) return item;
    const { packs: _published, ...unpriced } = item;
    if (text.trim() === '') return unpriced;
    const packs = packsFrom(text, item, currency);
    if (packs.ok) return { ...unpriced, packs: packs.value };
    problems.push(
      ...packs.problems.map((problem) => ({ ...problem, message: `${item.name}: ${problem.message}` })),
    );
    return unpriced;
  });
  return { ingredients: priced, problems };
}
