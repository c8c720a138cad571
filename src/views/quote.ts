/**
 * The quote for the customer: prices, never costs; what is due when. What is sold at a stall has no customer to quote
 * to: its paper is a costing, which says what a piece has to bring.
 */
import type { OrderCost, PriceLine } from '../compute/costs/order-cost.ts';
import { type Payment, type QuoteTerms, quoteTerms } from '../compute/costs/quote-terms.ts';
import type { Content } from '../domain/content.ts';
import type { Order } from '../domain/order.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber, formatShare } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import type { Figure } from './figure.ts';
import type { OrderView } from './order.types.ts';
import { countFigure } from './order-batters.ts';
import type { PaymentRow, QuoteRow, QuoteView } from './order-money.types.ts';
import { moneyFigure } from './shopping.ts';

type MoneyContent = Pick<Content, 'kitchen' | 'costs' | 'business'>;

/** What a customer has to know of a line: that it is not food, that it comes back. */
function quoteNote({ inedible, comesBack, backBy }: PriceLine, words: OrderWords): string | null {
  const { quote } = words;
  const notes = [
    ...(inedible ? [quote.inedible] : []),
    ...(comesBack === true ? [quote.hired(backBy === undefined ? null : words.date(backBy))] : []),
  ];
  return notes.length === 0 ? null : notes.join('; ');
}

function quoteRow(price: PriceLine, words: OrderWords, { costs }: MoneyContent): QuoteRow {
  const money = (minor: number): Figure => moneyFigure(minor, costs.currency);
  return {
    name: price.name,
    count: countFigure(price.count),
    each: money(price.eachMinor),
    net: money(price.netMinor),
    vatText: price.vatShare === 0 ? words.quote.noVat : words.quote.vatAt(formatShare(price.vatShare, 0)),
    vat: money(price.vatMinor),
    note: quoteNote(price, words),
  };
}

/** 'Bottom tier, 10-inch round: vanilla sponge; raspberry jam, vanilla buttercream and sugarpaste'. */
function included(tier: OrderView['tiers'][number], words: OrderWords, and: string): string {
  const finishes = [...new Set(tier.finishes.map(({ finish }) => finish.name.toLowerCase()))];
  const taste = words.quote.taste(tier.batterText, listInWords(finishes, and));
  const named =
    tier.small === null ? words.count(tier.count.value, `${tier.name}, ${tier.sizeText}`) : tier.countedName;
  return `${named}: ${taste}`;
}

/** 'Top tier (dummy), 10.2 × 10.2 cm: polystyrene, not food; sugarpaste'. */
function dummyIncluded(
  { name, sizeText, finishes }: OrderView['dummies'][number],
  words: OrderWords,
  and: string,
): string {
  const cover = [...new Set(finishes.map(({ finish }) => finish.name.toLowerCase()))];
  return `${name}, ${sizeText}: ${words.quote.taste(words.beside.notCake, listInWords(cover, and))}`;
}

type QuoteOrder = Pick<OrderView, 'title' | 'reference' | 'handOver' | 'tiers' | 'dummies' | 'allergens'> & {
  portionsText: string;
  /** Pieces it is cut into. */
  portions: number;
  /** As it was asked for. */
  asked: Pick<Order, 'handOver' | 'quote'>;
};

/** Two people read a quote: who gives it and who gets it. At a stall nobody gets it. */
const kindOf = ({ handOver }: QuoteOrder['asked']): QuoteView['kind'] =>
  handOver.place === 'sold at a stall' ? 'costing' : 'quote';

function termsOf(
  cost: OrderCost,
  dated: string,
  { asked }: QuoteOrder,
  { costs }: MoneyContent,
): QuoteTerms | null {
  const handOverOn = asked.handOver.localTime.slice(0, 10);
  const { dated: _, ...own } = asked.quote ?? {};
  const settings = { ...costs.quote, ...own };
  return kindOf(asked) === 'costing'
    ? null
    : quoteTerms({ totalMinor: cost.totalMinor, dated, handOverOn, settings });
}

/** '25 %', '12.5 %'. */
const shareText = (share: number): string => formatShare(share, Math.round(share * 1000) % 10 === 0 ? 0 : 1);

function paymentRow(
  { kind, minor, share, on }: Payment,
  handOverOn: string,
  words: OrderWords,
  { costs }: MoneyContent,
): PaymentRow {
  const { payment, due } = words.quote;
  const dueText = on === null ? due.accepted : on === handOverOn ? due.handOver : due.by(words.date(on));
  return {
    kind,
    name: kind === 'deposit' ? payment.deposit(shareText(share ?? 0)) : payment[kind],
    dueText,
    sum: moneyFigure(minor, costs.currency),
  };
}

/** The drive where no line of its own pays for it; null where there is none. */
function deliveryRow(
  { prices }: OrderCost,
  { asked }: QuoteOrder,
  { quote }: OrderWords,
): QuoteView['delivery'] {
  const name = quote.delivery[asked.handOver.place];
  if (name === null || prices.some(({ delivery }) => delivery === true)) return null;
  return { name, text: quote.included };
}

/** What each piece has to bring, up to the smallest coin. */
function perPieceOf(
  cost: OrderCost,
  { asked, portions }: QuoteOrder,
  words: OrderWords,
  { costs }: MoneyContent,
): QuoteView['perPiece'] {
  if (kindOf(asked) !== 'costing' || portions === 0) return null;
  const each = moneyFigure(Math.ceil(cost.totalMinor / portions), costs.currency);
  return { each, text: words.quote.perPiece(formatNumber(portions, 0), each.text) };
}

/** What the customer is shown: prices, never costs. */
export function quoteView(cost: OrderCost, order: QuoteOrder, content: MoneyContent): QuoteView {
  const { costs, kitchen, business } = content;
  const words = orderWordsFor(kitchen.locale);
  const { and } = wordsFor(kitchen.locale);
  const money = (minor: number): Figure => moneyFigure(minor, costs.currency);
  const { contact } = business ?? {};
  const { asked } = order;
  const kind = kindOf(asked);
  const dated = asked.quote?.dated ?? kitchen.edition;
  const terms = termsOf(cost, dated, order, content);
  const handOverOn = asked.handOver.localTime.slice(0, 10);
  return {
    kind,
    title: order.title,
    reference: order.reference,
    lead: kind === 'costing' ? words.quote.costingLead : words.quote.lead,
    business:
      business === null
        ? null
        : { name: business.name, lines: [...business.address, ...(contact === undefined ? [] : [contact])] },
    handOverText: order.handOver.text,
    placeText: order.handOver.placeText,
    portionsText: order.portionsText,
    includes: [
      ...order.tiers.map((tier) => included(tier, words, and)),
      ...order.dummies.map((dummy) => dummyIncluded(dummy, words, and)),
    ],
    rows: cost.prices.map((price) => quoteRow(price, words, content)),
    net: money(cost.netMinor),
    vat: money(cost.vatMinor),
    total: money(cost.totalMinor),
    hasVat: cost.vatMinor > 0,
    datedText: words.quote.dated(words.date(dated)),
    validText:
      terms === null || terms.validUntil === null
        ? null
        : words.quote.validUntil(words.date(terms.validUntil)),
    payments: (terms?.payments ?? []).map((one) => paymentRow(one, handOverOn, words, content)),
    delivery: deliveryRow(cost, order, words),
    perPiece: perPieceOf(cost, order, words, content),
    allergens: [
      order.allergens.sentence,
      ...[order.allergens.unknown, order.allergens.mayContain].flatMap((text) => text ?? []),
      words.quote.allergenNote,
    ],
    notes: cost.vatMinor > 0 ? [words.quote.vatNote] : [],
    cautions: [],
  };
}
