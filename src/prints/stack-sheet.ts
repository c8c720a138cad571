/**
 * The stack on paper: the drawing to scale with its lengths, what each tier weighs, stands on and carries, where
 * each support goes, how it is put together, and what to mind. The template at true size is a print of its own.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { orderPath } from '../views/nav.ts';
import type { OrderView } from '../views/order.types.ts';
import type { StackView, SupportSet } from '../views/stack-sheet.types.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { type StackWords, stackWordsFor } from '../wording/stacks/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { beside, caution, heading, list, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';
import { elevationBlock, fittingElevation } from './stack-sheet/elevation-block.ts';
import { placeTable, tierTable } from './stack-sheet/stack-tables.ts';

const BAR_MM = 100;
/** The drawing takes at most this much of the page's height. */
const DRAWING_SHARE = 0.45;

/** An order whose tiers stand on one another. */
export type StackedOrder = OrderView & { stack: StackView };

export const isStacked = (view: OrderView): view is StackedOrder => view.stack !== null;

const headed = (text: string, anchor: string): Block =>
  heading(text, { level: 2, type: typeScale.section, spaceMm: 5, bookmark: text, anchor });

function factBlocks({ facts }: StackView): Block {
  const half = Math.ceil(facts.length / 2);
  const lines = (some: StackView['facts']): Block[] =>
    some.map(({ id, label, text }) =>
      textParagraph(
        `fact-${id}`,
        { spans: [{ text: `${label}: `, font: 'textBold' }, { text }], type: typeScale.body },
        0.8,
      ),
    );
  return beside(lines(facts.slice(0, half)), lines(facts.slice(half)));
}

function setBlock(set: SupportSet, words: StackWords): Block {
  const { id, title, setText, ledgeText, spots } = set;
  const said = [setText, ...(ledgeText === null ? [] : [ledgeText])].join(' ');
  return together(
    heading(title, { level: 3, type: typeScale.entry, spaceMm: 4, anchor: id }),
    textParagraph(`set-${id}`, paragraph(said, typeScale.body), 0.5),
    ...(spots.length === 0 ? [] : [table(placeTable(set, words))]),
  );
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
  const room = { widthMm: frame.widthMm, heightMm: frame.heightMm * DRAWING_SHARE };
  const { scale, elevation } = fittingElevation(stack, room, context);
  const code = pageCode(siteUrl, orderPath(view.id), orderWordsFor(lang).sheet.code);
  const cautions = stack.cautions.map(({ text }) => caution(labels.caution, text));
  const half = Math.ceil(cautions.length / 2);
  const first: Section = {
    key: 'stack',
    blocks: [
      besideCode(
        heading(stack.sheetTitle, { level: 1, type: typeScale.title, bookmark: stack.sheetTitle }),
        code,
      ),
      textParagraph('summary', paragraph(`${view.reference}. ${stack.summary}`, typeScale.lead)),
      elevationBlock(elevation, stack.picture.alt),
      textParagraph('key', paragraph(stack.picture.keyText, typeScale.rowNote), 1),
      ...stack.warnings.map(({ message }) => caution(labels.caution, message)),
      table(tierTable(stack, words)),
      factBlocks(stack),
    ],
  };
  const places: Section = {
    key: 'supports',
    startsPage: true,
    blocks: [
      headed(words.supportsTitle, 'supports'),
      textParagraph('places-about', paragraph(stack.placesAbout, typeScale.body), 0.5),
      ...stack.sets.map((set) => setBlock(set, words)),
      headed(words.stepsTitle, 'steps'),
      list('steps', stack.steps),
      beside(cautions.slice(0, half), cautions.slice(half)),
    ],
  };
  return {
    path: `orders/${view.id}-stack-sheet-${paper.toLowerCase()}`,
    title: `${stack.sheetTitle} – ${view.kitchenName}`,
    lang,
    subject: stack.summary,
    pages: sheetPages([first, places], size, context, {
      ...furnitureOf({ ...view, title: stack.sheetTitle }, labels),
      scaleBar: { scale, lengthMm: BAR_MM, text: words.picture.scale(scale) },
    }),
  };
}
