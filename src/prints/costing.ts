/** What goes to a stall has nobody to quote to: what it costs to make, and what it has to bring, for the baker. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { OrderView } from '../views/order.types.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import { paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import type { Row, TableSpec } from './sheet/table/types.ts';
import { type TypeStyle, typeScale } from './sheet/type-scale.ts';

/** Above and below a row: the airiest that leaves one page. */
const PADDINGS_MM = [1.2, 0.7, 0.3] as const;

const TOTAL: TypeStyle = { ...typeScale.key, sizePt: 14, leadingPt: 18 };

type CostedOrder = Pick<OrderView, 'id' | 'kitchenName' | 'edition' | 'cost' | 'quote'>;

function row(texts: readonly string[], type: TypeStyle): Row {
  const [name = '', ...figures] = texts;
  return {
    cells: [
      { heading: true, paragraphs: [paragraph(name, type)] },
      ...figures.map((text) =>
        text === '' ? {} : { number: { text, type: type === TOTAL ? TOTAL : typeScale.figure } },
      ),
    ],
  };
}

/** Cost line by line, then the price of the baking, then what is sold beside it and VAT. */
function costTable(
  paddingMm: number,
  { cost, quote }: CostedOrder,
  { table: t, cost: words, quote: quoteWords }: OrderWords,
): TableSpec {
  const head = (text: string) => [paragraph(text, typeScale.columnHead)];
  const [, ...beside] = quote.rows;
  return {
    key: 'costs',
    whole: true,
    paddingMm,
    columns: [
      { heading: head(t.item), align: 'left', narrowestMm: 60 },
      { heading: head(t.amount), align: 'right' },
      { heading: head(t.each), align: 'right' },
      { heading: head(t.cost), align: 'right' },
    ],
    rows: [
      ...cost.rows.map((one) => row([one.name, one.amountText, one.eachText, one.cost.text], typeScale.body)),
      row([words.total, '', '', cost.cost.text], typeScale.bodyStrong),
      row([cost.priceText, '', '', cost.price.text], typeScale.bodyStrong),
      row([words.margin, '', '', cost.margin.text], typeScale.body),
      ...beside.map((one) => row([one.name, one.count.text, one.each.text, one.net.text], typeScale.body)),
      ...(quote.hasVat ? [row([t.vat, '', '', quote.vat.text], typeScale.body)] : []),
      row([quoteWords.toBring, '', '', quote.total.text], TOTAL),
    ],
  };
}

function blocks(
  paddingMm: number,
  order: CostedOrder,
  words: OrderWords,
  { title, cautionWord }: { title: string; cautionWord: string },
): Block[] {
  const { cost, quote } = order;
  const body = (key: string, text: string, type: TypeStyle = typeScale.body): Block =>
    textParagraph(key, paragraph(text, type), 1);
  return [
    heading(title, { level: 1, type: typeScale.title, bookmark: title }),
    body('dated', `${quote.lead} ${quote.datedText}`, typeScale.lead),
    body('when', `${words.facts.handOver}: ${quote.handOverText}. ${quote.placeText}.`, typeScale.bodyStrong),
    caution(cautionWord, words.quote.costingPrivate),
    heading(words.quote.made, { level: 2, type: typeScale.section, bookmark: words.quote.made }),
    list('made', [...quote.includes, quote.portionsText]),
    table(costTable(paddingMm, order, words)),
    ...(quote.perPiece === null ? [] : [body('piece', quote.perPiece.text, typeScale.bodyStrong)]),
    ...[...cost.notes, cost.ovenText, words.cost.shopNote].map((note, at) => body(`note-${at}`, note)),
    caution(words.allergens.title, quote.allergens.join(' ')),
  ];
}

/** The costing of what is baked for a stall. */
export function costingPrint(
  order: CostedOrder,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const labels = labelsFor(lang);
  const words = orderWordsFor(lang);
  const title = `${words.quote.costing}: ${order.quote.title}`;
  const context = sheetContext(style, metrics);
  const furniture = furnitureOf({ ...order, title }, labels);
  let pages: PrintPage[] = [];
  for (const paddingMm of PADDINGS_MM) {
    const own = blocks(paddingMm, order, words, { title, cautionWord: labels.caution });
    pages = sheetPages([{ key: 'costing', blocks: own }], portraitSheet(paper), context, furniture);
    if (pages.length === 1) break;
  }
  return {
    path: `orders/${order.id}-costing-${paper.toLowerCase()}`,
    title: `${title} – ${order.kitchenName}`,
    lang,
    subject: order.quote.lead,
    pages,
  };
}
