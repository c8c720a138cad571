/** A shopping list on paper, for one order or for a week: what to fetch with a box to tick, then what there is. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { ShoppingRow, ShoppingView } from '../views/shopping.types.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { TICK_COLUMN, tickCell } from './order-sheet/tick-box.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import { type Paragraph, paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { type SheetContext, sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import type { Cell, TableSpec } from './sheet/table/types.ts';
import { type TypeStyle, typeScale } from './sheet/type-scale.ts';

interface Look {
  buy: TypeStyle;
  paddingMm: number;
  /** Above a section's heading. */
  gapMm: number;
}

const buyType = (sizePt: number, leadingPt: number): TypeStyle => ({
  ...typeScale.bodyStrong,
  sizePt,
  leadingPt,
});

/** The airiest first: a list is as airy as one page lets it be; its type stays as large. */
const LOOKS: readonly Look[] = [
  { buy: buyType(12, 15), paddingMm: 0.9, gapMm: 7 },
  { buy: buyType(12, 13.5), paddingMm: 0.5, gapMm: 4.5 },
  { buy: buyType(12, 12.5), paddingMm: 0.25, gapMm: 2.5 },
];

const head = (text: string): Paragraph[] => [paragraph(text, typeScale.columnHead)];
const text = (words: string): Cell => ({ paragraphs: [paragraph(words, typeScale.figure)] });

function buyTable(key: string, rows: readonly ShoppingRow[], { words, context, look }: Sheet): TableSpec {
  const { table: t, shopping } = words;
  // Packs of food have long sizes; of boards it is the item that has.
  const [buyMm, itemMm] = key === 'buy' ? [44, 34] : [28, 62];
  return {
    key,
    zebra: true,
    paddingMm: look.paddingMm,
    columns: [
      TICK_COLUMN,
      { heading: head(t.buy), align: 'left', narrowestMm: buyMm },
      { heading: head(key === 'buy' ? t.ingredient : t.item), align: 'left', narrowestMm: itemMm },
      { heading: head(t.needed), align: 'left', narrowestMm: 18 },
      { heading: head(t.onHand), align: 'left', narrowestMm: 18 },
      { heading: head(t.cost), align: 'right' },
    ],
    rows: rows.map(({ ingredient, buyText, needed, onHand, cost }) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        { paragraphs: [paragraph(buyText, look.buy)] },
        { heading: true, paragraphs: [paragraph(ingredient.name, typeScale.ingredient)] },
        text(needed.text),
        text(onHand.text),
        cost === null
          ? { paragraphs: [paragraph(shopping.unpricedRow, typeScale.rowNote)] }
          : { number: { text: cost.text, type: typeScale.figure } },
      ],
    })),
  };
}

interface Sheet {
  words: OrderWords;
  context: SheetContext;
  look: Look;
}

function blocks(view: ShoppingView, sheet: Sheet, cautionWord: string): Block[] {
  const { words } = sheet;
  const food = view.rows.filter(({ buys, material }) => buys && !material);
  const things = view.rows.filter(({ buys, material }) => buys && material);
  const have = view.rows.filter(({ buys }) => !buys);
  const total = { spans: [{ text: `${words.shopping.total}: ${view.total.text}` }], type: sheet.look.buy };
  return [
    heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title }),
    textParagraph('lead', paragraph(view.lead, typeScale.body)),
    ...(food.length === 0 ? [] : [table(buyTable('buy', food, sheet))]),
    ...(things.length === 0
      ? []
      : [
          heading(words.shopping.things, { level: 2, type: typeScale.entry, spaceMm: sheet.look.gapMm }),
          table(buyTable('things', things, sheet)),
        ]),
    textParagraph('total', total, 3),
    ...(have.length === 0
      ? []
      : [
          textParagraph(
            'stocked',
            paragraph(
              `${words.shopping.stocked}: ${have.map(({ ingredient, needed }) => `${ingredient.name} ${needed.text}`).join('; ')}.`,
              typeScale.body,
            ),
            2,
          ),
        ]),
    ...(view.notes.length === 0 ? [] : [list('notes', view.notes)]),
    ...view.cautions.map((one) => caution(cautionWord, one.text)),
  ];
}

/** The airiest of several layouts that is one page; the airiest of all where none is. */
function onOnePage(laidOut: readonly (() => PrintPage[])[]): PrintPage[] {
  let first: PrintPage[] | null = null;
  for (const layOut of laidOut) {
    const pages = layOut();
    if (pages.length === 1) return pages;
    first ??= pages;
  }
  return first ?? [];
}

/** The list; `of` is the order or the week it belongs to. */
export function shoppingListPrint(
  view: ShoppingView,
  of: { kitchenName: string; edition: string },
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = orderWordsFor(lang);
  const furniture = furnitureOf({ ...of, title: view.title }, labels);
  const laidOut = LOOKS.map((look) => () => {
    const own = { words, context, look };
    const sections = [{ key: 'list', blocks: blocks(view, own, labels.caution) }];
    return sheetPages(sections, portraitSheet(paper), context, furniture);
  });
  return {
    path: `orders/${view.id.toLowerCase()}-shopping-list-${paper.toLowerCase()}`,
    title: `${view.title} – ${of.kitchenName}`,
    lang,
    subject: view.lead,
    pages: onOnePage(laidOut),
  };
}
