/**
 * The order on one spread, for floury hands: on the left what is settled and every bowlful with boxes to tick, on
 * the right bakes, fillings and coats, boards, and the hand-over with what must be told and signed.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { TOO_LATE } from '../views/age-warnings.ts';
import { orderPath } from '../views/nav.ts';
import type { OrderView } from '../views/order.types.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { bowlBlocks, type Sheet } from './order-sheet/bowl-blocks.ts';
import { bakeTable, boxTable, cakeTable, finishBlocks } from './order-sheet/cake-blocks.ts';
import { handOverBlocks } from './order-sheet/hand-over-blocks.ts';
import { LOOKS } from './order-sheet/look.ts';
import { paperBlocks } from './order-sheet/paper-blocks.ts';
import { writeLine } from './order-sheet/write-line.ts';
import { beside, caution, heading, textParagraph } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, type PageCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print, PrintPage } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';

/** Cautions stand beside what they concern; those of neither mixing nor baking belong to the hand-over. */
const OF_MIXING: readonly string[] = ['raw-batter'];
const OF_BAKING: readonly string[] = ['hot-tins', 'cool'];
const EARLY: readonly string[] = [...OF_MIXING, ...OF_BAKING];

/** Where the page is turned: as the order's parts divide best. */
const TURNS = ['bake', 'finish', 'where the page ends'] as const;

/** A spread: two pages that lie side by side. */
const SPREAD = 2;

type Step = 'mix' | 'bake' | 'finish' | 'pack' | 'handOver';

/** The sheet's own steps, in their turn: what comes before them is not done at the worktop. */
const stepsOf = ({ finishes }: OrderView): Step[] => [
  'mix',
  'bake',
  ...(finishes.length > 0 ? (['finish'] as const) : []),
  'pack',
  'handOver',
];

function headed(step: Step, anchor: string, view: OrderView, { words, look }: Sheet): Block {
  const text = words.steps.numbered(stepsOf(view).indexOf(step) + 1, words.steps[step]);
  return heading(text, { level: 2, type: look.section, spaceMm: look.gapMm, bookmark: text, anchor });
}

function factBlocks({ facts }: OrderView, { look }: Sheet): Block {
  const half = Math.ceil(facts.length / 2);
  const lines = (some: OrderView['facts']): Block[] =>
    some.map(({ id, label, text }) =>
      textParagraph(
        `fact-${id}`,
        { spans: [{ text: `${label}: `, font: 'textBold' }, { text }], type: look.body },
        0.8,
      ),
    );
  return beside(lines(facts.slice(0, half)), lines(facts.slice(half)));
}

/** Side by side where there are both, one under the other's room where there is one. */
const sideBySide = (left: readonly Block[], right: readonly Block[]): Block[] =>
  left.length === 0 || right.length === 0 ? [...left, ...right] : [beside([...left], [...right])];

/** Notes beside what is settled, then lines for what is still open. */
function decisionBlocks({ decisions, notes }: OrderView, { words, look }: Sheet): Block[] {
  const settled = decisions.flatMap(({ question, answer }) =>
    answer === null ? [] : [`${question}: ${answer}`],
  );
  const open = decisions.filter(({ answer }) => answer === null);
  const text = (key: string, said: string): Block[] =>
    said === '' ? [] : [textParagraph(key, paragraph(said, look.body), 1.5)];
  const settledText = settled.length === 0 ? '' : `${settled.join('. ')}.`;
  return [
    ...sideBySide(text('settled', settledText), text('notes', notes)),
    ...open.map(({ question, byText }) =>
      writeLine(byText === null ? question : words.sheet.openBy(question, byText), look.body, look.writeMm),
    ),
  ];
}

/** Those of the view's cautions as one; nothing where there are none. */
function cautionOf(
  codes: readonly string[],
  { cautions }: OrderView,
  word: string,
  { look }: Sheet,
): Block[] {
  const texts = cautions.filter(({ code }) => codes.includes(code)).map(({ text }) => text);
  return texts.length === 0 ? [] : [caution(word, texts.join(' '), look.body)];
}

/** What would be past its keeping stands before all work on it. */
const tooLateBlocks = ({ warnings }: OrderView, word: string, { look }: Sheet): Block[] =>
  warnings
    .filter(({ code }) => TOO_LATE.includes(code))
    .map(({ message }) => caution(word, message, look.body));

/** What is settled, then every bowlful. */
function mixSection(
  view: OrderView,
  sheet: Sheet,
  code: PageCode | null,
  labels: Record<'caution' | 'check', string>,
): Section {
  const { look } = sheet;
  const ofMixing = cautionOf(OF_MIXING, view, labels.caution, sheet);
  const papers = paperBlocks(view.papers, sheet, view.sharedText === null ? ofMixing : []);
  const shared: Block[] =
    view.sharedText === null
      ? []
      : [
          textParagraph(
            'shared',
            { spans: [{ text: view.sharedText, font: 'textBold' }], type: look.body },
            1,
          ),
        ];
  return {
    key: 'mix',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: look.title, bookmark: view.title, anchor: 'order' }),
        code,
      ),
      factBlocks(view, sheet),
      ...decisionBlocks(view, sheet),
      ...papers.blocks,
      ...tooLateBlocks(view, labels.check, sheet),
      headed('mix', 'mix', view, sheet),
      ...(papers.tookBelow && view.sharedText === null ? [] : sideBySide(shared, ofMixing)),
      ...bowlBlocks(view.batters, sheet),
    ],
  };
}

/** Finishes in two columns, the one with more lines to the right. */
function finishSection(view: OrderView, sheet: Sheet): Block[] {
  if (view.finishes.length === 0) return [];
  const longest = view.finishes.reduce((most, one) => (one.lines.length > most.lines.length ? one : most));
  const others = view.finishes.filter((one) => one !== longest);
  const blocks = (some: OrderView['finishes']): Block[] => some.flatMap((one) => finishBlocks(one, sheet));
  return [
    headed('finish', 'finish', view, sheet),
    others.length === 0 ? beside(blocks([longest]), []) : beside(blocks(others), blocks([longest])),
    table(cakeTable([...view.tiers, ...view.dummies], sheet)),
  ];
}

/** Below the table the caution may stand on the next page, above it on the one before. */
function bakeSection(view: OrderView, sheet: Sheet, cautionWord: string, hotFirst: boolean): Section {
  const baked = table(bakeTable(view.tiers, sheet));
  const hot = cautionOf(OF_BAKING, view, cautionWord, sheet);
  return {
    key: 'bake',
    blocks: [headed('bake', 'bake', view, sheet), ...(hotFirst ? [...hot, baked] : [baked, ...hot])],
  };
}

function handOverSection(view: OrderView, sheet: Sheet, cautionWord: string): Section {
  return {
    key: 'hand-over',
    blocks: [
      ...finishSection(view, sheet),
      headed('pack', 'pack', view, sheet),
      table(boxTable([...view.tiers, ...view.dummies], sheet)),
      headed('handOver', 'hand-over', view, sheet),
      ...handOverBlocks(view, sheet, cautionWord, (code) => EARLY.includes(code)),
    ],
  };
}

export interface OrderSheetOptions {
  /** Address of the site's root where orders are published; the sheet then carries a code that leads there. */
  siteUrl?: string;
}

/** The spread of an order; an order that no look fits on two pages runs on to more. */
export function orderSheetPrint(
  view: OrderView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  { siteUrl }: OrderSheetOptions = {},
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = orderWordsFor(lang);
  const code = pageCode(siteUrl, orderPath(view.id), words.sheet.code);
  const furniture = furnitureOf({ ...view, title: `${words.sheet.title}: ${view.title}` }, labels);
  const tried = LOOKS.flatMap((look) =>
    TURNS.flatMap((turn) => [false, true].map((hotFirst) => ({ look, turn, hotFirst }))),
  );
  let pages: PrintPage[] = [];
  for (const { look, turn, hotFirst } of tried) {
    const sheet = { words, look, context };
    const sections = [
      mixSection(view, sheet, code, labels),
      { ...bakeSection(view, sheet, labels.caution, hotFirst), startsPage: turn === 'bake' },
      { ...handOverSection(view, sheet, labels.caution), startsPage: turn === 'finish' },
    ];
    pages = sheetPages(sections, portraitSheet(paper), context, furniture);
    if (pages.length <= SPREAD) break;
  }
  return {
    path: `orders/${view.id}-order-sheet-${paper.toLowerCase()}`,
    title: `${words.sheet.title}: ${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.summary,
    pages,
  };
}
