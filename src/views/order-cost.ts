/** Cost and price of an order for the baker; the quote for the customer is another view, and they share no line. */
import type { CostLine, OrderCost } from '../compute/costs/order-cost.ts';
import type { Effort } from '../compute/costs/order-effort.ts';
import type { Content } from '../domain/content.ts';
import { PLAIN_OVEN } from '../domain/kitchen.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import { bakeWordsFor, formatLoggedMinutes } from '../wording/bake/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatMoney, formatRate } from '../wording/money.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { stackWordsFor } from '../wording/stacks/index.ts';
import { dialTextsOf } from './bake-figures.ts';
import type { Figure } from './figure.ts';
import { countFigure } from './order-batters.ts';
import type { CostRow, OrderCostView } from './order-money.types.ts';
import { moneyFigure, sizedName } from './shopping.ts';

type MoneyContent = Pick<Content, 'kitchen' | 'costs' | 'business'>;

/** What is bought by the piece, under its own name. */
const isCounted = (kind: CostLine['kind']): boolean => kind === 'packaging' || kind === 'materials';

function amountText({ kind, amount }: CostLine, { cost }: OrderWords): string {
  if (amount === null) return '';
  if (isCounted(kind)) return cost.pieces(formatNumber(amount, 0));
  if (kind === 'energy') return cost.kwh(formatNumber(amount, 2));
  const minutes = Math.round(amount * 60);
  return cost.hours(Math.floor(minutes / 60), minutes % 60);
}

function eachText({ kind, eachMinor }: CostLine, { cost }: OrderWords, { costs }: MoneyContent): string {
  if (eachMinor === null) return '';
  if (isCounted(kind)) return formatMoney(eachMinor, costs.currency);
  const rate = formatRate(eachMinor, costs.currency);
  return kind === 'energy' ? cost.perKwh(rate) : cost.perHour(rate);
}

function costName({ kind, name, sized }: CostLine, words: OrderWords, { kitchen }: MoneyContent): string {
  if (!isCounted(kind)) return words.cost.kinds[kind];
  if (sized === undefined) return name;
  return sizedName(name, sized.sizeMm, sized.forMm, words, wordsFor(kitchen.locale).and);
}

function costRow(line: CostLine, words: OrderWords, content: MoneyContent): CostRow {
  return {
    kind: line.kind,
    name: costName(line, words, content),
    amountText: amountText(line, words),
    eachText: eachText(line, words, content),
    cost: moneyFigure(line.minor, content.costs.currency),
  };
}

const minutes = (value: number): Figure => ({ value, unit: 'min', text: formatNumber(value, 0) });

function ovenText(
  { loads, heatings, ovenKwh }: Effort,
  words: OrderWords,
  { kitchen }: MoneyContent,
): string {
  const texts = loads.map(({ tins, ovenC, bakeMin }) =>
    words.cost.load(
      tins,
      dialTextsOf(ovenC, kitchen.oven ?? PLAIN_OVEN, bakeWordsFor(kitchen.locale)).set,
      formatLoggedMinutes(bakeMin),
    ),
  );
  const { and } = wordsFor(kitchen.locale);
  return words.cost.ovenText(listInWords(texts, and), heatings, formatNumber(ovenKwh, 2));
}

/** What the cost does not hold of a drive: fuel and wear, unless they are packaging; an extra may pay for them. */
function driveNotes(
  { prices }: OrderCost,
  { jobs }: Effort,
  { cost }: OrderWords,
  { kitchen, costs }: MoneyContent,
): string[] {
  const isDriven = jobs.some(({ kind }) => kind === 'deliver');
  if (!isDriven || costs.packaging.some(({ per }) => per === 'drive')) return [];
  const paid = prices.filter(({ delivery }) => delivery === true).map(({ name }) => uncapitalised(name));
  if (paid.length === 0) return [cost.driveNote];
  return [cost.driveCharged(listInWords(paid, wordsFor(kitchen.locale).and))];
}

/** What the cost does not hold. */
interface LeftOut {
  /** Names of ingredients without a pack. */
  unpriced: readonly string[];
  /** Tins whose supports nobody can count. */
  uncounted: readonly string[];
}

/** Names of what has no price, or that nothing has; and what is not reckoned of a drive. */
function costNotes(cost: OrderCost, effort: Effort, leftOut: LeftOut, content: MoneyContent): string[] {
  const { kitchen } = content;
  const { unpriced, uncounted } = leftOut;
  const words = orderWordsFor(kitchen.locale);
  if (cost.costMinor === 0) return [words.cost.nothingPriced];
  return [
    ...(unpriced.length === 0
      ? []
      : [words.cost.tooLow(listInWords(unpriced, wordsFor(kitchen.locale).and))]),
    ...(uncounted.length === 0 ? [] : [stackWordsFor(kitchen.locale).supportsByHand(uncounted)]),
    ...driveNotes(cost, effort, words, content),
  ];
}

/** What an order costs: for the baker only. */
export function orderCostView(
  cost: OrderCost,
  effort: Effort,
  leftOut: LeftOut,
  content: MoneyContent,
): OrderCostView {
  const { costs, kitchen } = content;
  const words = orderWordsFor(kitchen.locale);
  const money = (minor: number): Figure => moneyFigure(minor, costs.currency);
  const cake = cost.prices.find(({ kind }) => kind === 'cake');
  const hours = quantiseRatio(effort.handsOnMin / 60);
  return {
    rows: cost.lines.map((line) => costRow(line, words, content)),
    cost: money(cost.costMinor),
    priceText: words.cost.price(
      formatShare(costs.margin, 0),
      formatMoney(costs.roundUpToMinor, costs.currency),
    ),
    price: money(cake?.netMinor ?? 0),
    margin: money(cost.marginMinor),
    notes: costNotes(cost, effort, leftOut, content),
    jobs: effort.jobs.map(({ kind, count, minutes: long }) => ({
      kind,
      name: words.cost.jobs[kind] ?? kind,
      times: countFigure(count),
      minutes: minutes(long),
    })),
    handsOn: {
      value: hours,
      unit: 'h',
      text: words.cost.hours(Math.floor(effort.handsOnMin / 60), effort.handsOnMin % 60),
    },
    ovenText: ovenText(effort, words, content),
    ovenEnergy: { value: effort.ovenKwh, unit: 'kWh', text: formatNumber(effort.ovenKwh, 2) },
  };
}
