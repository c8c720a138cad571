/** What the ingredients of a plan cost: the batter and all that goes round it, as an order's own cost reckons them. */
import { usesOf } from '../compute/orders/ingredient-uses.ts';
import { finishesOf } from '../compute/orders/order-finishes.ts';
import { type ShoppingLine, shoppingList } from '../compute/shopping/shopping-list.ts';
import type { Currency } from '../domain/money.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatMoney } from '../wording/money.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import type { Figure } from './figure.ts';
import { countFigure, totalFigure } from './figures.ts';
import type { PlanContent, Planned } from './plan.ts';

export interface PlanCostLine {
  id: string;
  name: string;
  /** g, or eggs by count. */
  amount: Figure;
  cost: Figure;
}

export interface PlanCost {
  /** What has a price, by name. */
  lines: PlanCostLine[];
  total: Figure;
  /** 'butter and vanilla extract': what nobody has priced; null for nothing. */
  unpricedText: string | null;
}

const money = (minor: number, currency: Currency): Figure => ({
  value: minor,
  unit: 'minor',
  text: formatMoney(minor, currency),
});

function costLine({ ingredientId, name, unit, needed, usedMinor }: ShoppingLine, currency: Currency) {
  const amount = unit === 'g' ? totalFigure(needed) : countFigure(needed);
  return usedMinor === null ? [] : [{ id: ingredientId, name, amount, cost: money(usedMinor, currency) }];
}

/** Null where nothing has a price. Each line is a whole minor unit, so that the sum adds up on paper. */
export function planCost(
  { mix, finished }: Pick<Planned, 'mix' | 'finished'>,
  { kitchen, ingredients }: Pick<PlanContent, 'kitchen' | 'ingredients'>,
  currency: Currency,
): PlanCost | null {
  const finishes = finishesOf(
    finished.flatMap((cakes) => cakes.finishes),
    kitchen,
  );
  const { lines, usedMinor } = shoppingList(usesOf([{ mix }], finishes), [], ingredients);
  const unpriced = lines.filter((line) => line.usedMinor === null).map(({ name }) => uncapitalised(name));
  if (unpriced.length === lines.length) return null;
  return {
    lines: lines.flatMap((line) => costLine(line, currency)),
    total: money(usedMinor, currency),
    unpricedText: unpriced.length === 0 ? null : listInWords(unpriced, wordsFor(kitchen.locale).and),
  };
}
