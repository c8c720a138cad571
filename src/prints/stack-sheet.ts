/**
 * The stack on paper: the drawing to scale with its lengths, what each tier weighs, stands on and carries, where
 * each support goes, how it is put together, and what to mind. The template at true size is a print of its own.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { orderPath } from '../views/nav.ts';
import type { OrderView } from '../views/order.types.ts';
import type { Elevation } from '../views/stack-elevation.ts';
import type { StackView, SupportSet } from '../views/stack-sheet.types.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { scaleBarMm } from '../wording/scale-bar.ts';
import type { PrintLabels } from '../wording/sheets/index.ts';
import { type StackCaution, type StackWords, stackWordsFor } from '../wording/stacks/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { LOOKS, type SheetLook } from './order-sheet/look.ts';
import { beside, caution, heading, list, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, type PageCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';
import { elevationBlock, fittingElevation } from './stack-sheet/elevation-block.ts';
import { placeTable, tierTable } from './stack-sheet/stack-tables.ts';

/** Two pages that lie side by side, where some look fits them. */
const SPREAD = 2;
/** The drawing takes at most so much of the page's height; less before the words grow smaller. */
const TRIED = LOOKS.flatMap((look) => [0.45, 0.39, 0.32].map((share) => ({ look, share })));

/** What the sheets show of an order whose tiers stand on one another. */
export interface StackedOrder
  extends Pick<OrderView, 'id' | 'title' | 'reference' | 'kitchenName' | 'edition'> {
  stack: StackView;
}

export const isStacked = (view: OrderView): view is OrderView & StackedOrder => view.stack !== null;

interface Sheet {
  words: StackWords;
  labels: PrintLabels;
  look: SheetLook;
}

const headed = (text: string, anchor: string, { look }: Sheet): Block =>
  heading(text, { level: 2, type: look.section, spaceMm: look.gapMm, bookmark: text, anchor });

const PAIR_GAP_MM = 3;

/** Columns with air above them. */
const lower =
  (columns: Block): Block =>
  (widthMm, context) =>
    columns(widthMm, context).map((strip) => ({ ...strip, spaceMm: PAIR_GAP_MM }));

function factBlocks({ facts }: StackView, { look }: Sheet): Block {
  const half = Math.ceil(facts.length / 2);
  const lines = (some: StackView['facts']): Block[] =>
    some.map(({ id, label, text }) =>
      textParagraph(
        `fact-${id}`,
        { spans: [{ text: `${label}: `, font: 'textBold' }, { text }], type: look.body },
        0.8,
      ),
    );
  return lower(beside(lines(facts.slice(0, half)), lines(facts.slice(half))));
}

/** Where each caution stands: a code without a place does not compile, so none can be lost on paper. */
const CAUTION_PLACES: Record<StackCaution, { section: 'stack' | 'supports'; side: 'left' | 'right' }> = {
  'dummy-tier': { section: 'stack', side: 'left' },
  'tell-the-cutter': { section: 'stack', side: 'left' },
  'two-people-lift': { section: 'stack', side: 'left' },
  'keep-level': { section: 'stack', side: 'right' },
  'warm-and-cold': { section: 'stack', side: 'right' },
  'warm-under-sheet': { section: 'stack', side: 'right' },
  'warm-and-mixed': { section: 'stack', side: 'right' },
  'supports-not-food': { section: 'supports', side: 'left' },
  'practice-first': { section: 'supports', side: 'right' },
};

/** Cautions side by side, each where it concerns what stands around it. */
function cautionPair({ cautions }: StackView, section: 'stack' | 'supports', { labels, look }: Sheet): Block {
  const blocks = (side: 'left' | 'right'): Block[] =>
    cautions
      .filter(({ code }) => CAUTION_PLACES[code].section === section && CAUTION_PLACES[code].side === side)
      .map(({ text }) => caution(labels.caution, text, look.body));
  return lower(beside(blocks('left'), blocks('right')));
}

function setBlock(set: SupportSet, { words, look }: Sheet): Block {
  const { id, title, setText, ledgeText, spots } = set;
  const said = [setText, ...(ledgeText === null ? [] : [ledgeText])].join(' ');
  return together(
    heading(title, { level: 3, type: typeScale.entry, spaceMm: look.gapMm, anchor: id }),
    textParagraph(`set-${id}`, paragraph(said, look.body), 0.5),
    ...(spots.length === 0 ? [] : [table(placeTable(set, words, look))]),
  );
}

function stackSection(
  view: StackedOrder,
  elevation: Elevation,
  code: PageCode | null,
  sheet: Sheet,
): Section {
  const { stack } = view;
  const { words, look, labels } = sheet;
  return {
    key: 'stack',
    blocks: [
      besideCode(heading(stack.sheetTitle, { level: 1, type: look.title, bookmark: stack.sheetTitle }), code),
      textParagraph('summary', paragraph(`${view.reference}. ${stack.summary}`, typeScale.lead)),
      elevationBlock(elevation, stack.picture.alt),
      textParagraph('key', paragraph(stack.picture.keyText, typeScale.rowNote), 1),
      ...stack.warnings.map(({ message }) => caution(labels.caution, message, look.body)),
      table(tierTable(stack, words, look)),
      factBlocks(stack, sheet),
      cautionPair(stack, 'stack', sheet),
    ],
  };
}

function supportSection(stack: StackView, sheet: Sheet): Section {
  const { words, look } = sheet;
  return {
    key: 'supports',
    startsPage: true,
    blocks: [
      headed(words.supportsTitle, 'supports', sheet),
      textParagraph('places-about', paragraph(stack.placesAbout, look.body), 0.5),
      cautionPair(stack, 'supports', sheet),
      ...stack.sets.map((set) => setBlock(set, sheet)),
      headed(words.stepsTitle, 'steps', sheet),
      list('steps', stack.steps, look.body),
    ],
  };
}

export interface StackSheetOptions {
  /** Address of the site's root where orders are published; the sheet then carries a code that leads there. */
  siteUrl?: string;
}

/** Draws nothing yet: gives the pages for a renderer. */
export function stackSheetPrint(
  view: StackedOrder,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  { siteUrl }: StackSheetOptions = {},
): Print {
  const { stack } = view;
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = stackWordsFor(lang);
  const size = portraitSheet(paper);
  const frame = frameOf(size, context);
  const code = pageCode(siteUrl, orderPath(view.id), orderWordsFor(lang).sheet.code);
  let pages: PrintPage[] = [];
  for (const { look, share } of TRIED) {
    const room = { widthMm: frame.widthMm, heightMm: frame.heightMm * share };
    const { scale, elevation } = fittingElevation(stack, room, context);
    const sheet = { words, labels, look };
    const sections = [stackSection(view, elevation, code, sheet), supportSection(stack, sheet)];
    pages = sheetPages(sections, size, context, {
      ...furnitureOf({ ...view, title: stack.sheetTitle }, labels),
      scaleBar: { scale, lengthMm: scaleBarMm(lang, 'short'), text: words.picture.scale(scale) },
    });
    if (pages.length <= SPREAD) break;
  }
  return {
    path: `orders/${view.id}-stack-sheet-${paper.toLowerCase()}`,
    title: `${stack.sheetTitle} – ${view.kitchenName}`,
    lang,
    subject: stack.summary,
    pages,
  };
}
