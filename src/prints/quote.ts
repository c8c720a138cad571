/** A quote for the customer: what it is, when, and what it costs. No cost, margin or working time stands on it. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { OrderView } from '../views/order.types.ts';
import type { QuoteView } from '../views/order-money.types.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import { type Paragraph, paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import type { Cell, Row, TableSpec } from './sheet/table/types.ts';
import { type TypeStyle, typeScale } from './sheet/type-scale.ts';

const TOTAL: TypeStyle = { ...typeScale.key, sizePt: 14, leadingPt: 18 };

const head = (text: string): Paragraph[] => [paragraph(text, typeScale.columnHead)];
const money = (text: string, type: TypeStyle = typeScale.figure): Cell => ({ number: { text, type } });

function priceRow(row: QuoteView['rows'][number], hasVat: boolean): Row {
  const name: Cell = {
    heading: true,
    paragraphs: [
      paragraph(row.name, typeScale.bodyStrong),
      ...(row.note === null ? [] : [paragraph(row.note, typeScale.rowNote)]),
    ],
  };
  const vat: Cell = {
    number: { text: row.vat.text, type: typeScale.figure },
    paragraphs: [paragraph(row.vatText, typeScale.figureNote)],
  };
  return {
    cells: [name, money(row.count.text), money(row.each.text), money(row.net.text), ...(hasVat ? [vat] : [])],
  };
}

function sumRows(view: QuoteView, { quote }: OrderWords): Row[] {
  const row = (label: string, cells: Cell[], type: TypeStyle): Row => ({
    cells: [{ heading: true, paragraphs: [paragraph(label, type)] }, {}, {}, ...cells],
  });
  const last = (label: string, text: string, type: TypeStyle): Row =>
    row(label, [...(view.hasVat ? [{}] : []), money(text, type)], type);
  return [
    ...(view.hasVat
      ? [row(quote.subtotal, [money(view.net.text), money(view.vat.text)], typeScale.body)]
      : []),
    last(quote.total, view.total.text, TOTAL),
    ...view.payments.map(({ name, dueText, sum }) =>
      last(`${name}, ${dueText}`, sum.text, typeScale.bodyStrong),
    ),
  ];
}

/** The drive has its line, whether or not it has its price. */
function deliveryRows({ delivery }: QuoteView): Row[] {
  if (delivery === null) return [];
  const name = [paragraph(delivery.name, typeScale.bodyStrong), paragraph(delivery.text, typeScale.rowNote)];
  return [{ cells: [{ heading: true, paragraphs: name }] }];
}

function priceTable(view: QuoteView, words: OrderWords): TableSpec {
  const { table: t } = words;
  return {
    key: 'prices',
    whole: true,
    paddingMm: 1.2,
    columns: [
      { heading: head(t.item), align: 'left', narrowestMm: 60 },
      { heading: head(t.amount), align: 'right' },
      { heading: head(t.each), align: 'right' },
      { heading: head(view.hasVat ? t.net : t.price), align: 'right' },
      ...(view.hasVat ? [{ heading: head(t.vat), align: 'right' as const }] : []),
    ],
    rows: [
      ...view.rows.map((row) => priceRow(row, view.hasVat)),
      ...deliveryRows(view),
      ...sumRows(view, words),
    ],
  };
}

function blocks(view: QuoteView, words: OrderWords, cautionWord: string): Block[] {
  const body = (key: string, text: string, type: TypeStyle = typeScale.body): Block =>
    textParagraph(key, paragraph(text, type), 1);
  const { business } = view;
  return [
    heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title }),
    body(
      'for',
      [
        `${words.quote.forReference(view.reference)}.`,
        view.datedText,
        ...(view.validText === null ? [] : [view.validText]),
      ].join(' '),
      typeScale.lead,
    ),
    ...(business === null ? [] : [body('from', `${business.name}, ${business.lines.join(', ')}`)]),
    body('when', `${words.facts.handOver}: ${view.handOverText}. ${view.placeText}.`, typeScale.bodyStrong),
    heading(words.quote.includes, { level: 2, type: typeScale.section, bookmark: words.quote.includes }),
    list('includes', [...view.includes, view.portionsText]),
    table(priceTable(view, words)),
    ...view.notes.map((note, at) => body(`note-${at}`, note)),
    caution(words.allergens.title, view.allergens.join(' ')),
    ...view.cautions.map((one) => caution(cautionWord, one.text)),
  ];
}

/** The quote of an order. */
export function quotePrint(
  order: Pick<OrderView, 'id' | 'kitchenName' | 'edition' | 'quote'>,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = orderWordsFor(lang);
  const title = `${words.quote.title}: ${order.quote.title}`;
  const sections = [{ key: 'quote', blocks: blocks({ ...order.quote, title }, words, labels.caution) }];
  const furniture = furnitureOf({ ...order, title }, labels);
  return {
    path: `orders/${order.id}-quote-${paper.toLowerCase()}`,
    title: `${title} – ${order.kitchenName}`,
    lang,
    subject: order.quote.lead,
    pages: sheetPages(sections, portraitSheet(paper), context, furniture),
  };
}
