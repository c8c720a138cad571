/**
 * A plan on paper, for the worktop: eggs, every bowl's weights with boxes to tick, what each tin gets and its window
 * in the oven, what goes round the cakes, and the cautions. Made on the device from the planner's own view.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { PlanView } from '../views/plan.types.ts';
import { type PlanWords, planWordsFor } from '../wording/plan/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { finishesTable, type PlanSheet, tinsTable, weightsTable } from './plan-sheet/plan-tables.ts';
import { beside, caution, heading, textParagraph, together } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';

export interface PlanSheetOptions {
  kitchenName: string;
  /** ISO date of the content's edition. */
  edition: string;
  mass: 'g' | 'oz';
  /** Of the site's root, where there is one: the sheet then carries a code that opens the plan. */
  siteUrl?: string;
  /** The plan as it stands behind the # of the planner's address. */
  address: string;
}

/** A longer address makes a code too fine for paper and crumbs. */
const LONGEST_ADDRESS = 220;

const body = (key: string, text: string, spaceMm = 1.2): Block =>
  textParagraph(key, paragraph(text, typeScale.body), spaceMm);

const section = (text: string, anchor: string): Block =>
  heading(text, { level: 2, type: typeScale.section, spaceMm: 5, bookmark: text, anchor });

function opening(view: PlanView, sheet: PlanSheet, options: PlanSheetOptions): Section {
  const { words, unit } = sheet;
  const path = `planner.html#${options.address}`;
  const code = path.length > LONGEST_ADDRESS ? null : pageCode(options.siteUrl, path, words.code);
  const { eggs, eggSizeText } = view;
  const first = [...(eggs === null ? [] : [eggs.text]), words.batter(view.batter.text, unit)];
  const lead = { ...typeScale.lead, font: 'textBold' as const, sizePt: 16, leadingPt: 20 };
  return {
    key: 'plan',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title, anchor: 'plan' }),
        code,
      ),
      textParagraph('first', paragraph(first.join(', '), lead)),
      ...(eggs === null ? [] : [body('egg-size', words.exactly(eggSizeText, eggs.exact.text))]),
      ...view.warnings.map(({ message }) => caution(words.check, message)),
    ],
  };
}

/** Bowls stand in pairs, so that one looks from one to the other. */
function bowls(view: PlanView, sheet: PlanSheet): Section {
  const { words } = sheet;
  const all = view.loads.map((load, at): Block[] => [
    ...(view.loads.length === 1
      ? []
      : [
          heading(load.name, { level: 3, type: typeScale.entry, spaceMm: 3 }),
          body(`fills-${at}`, words.fills(load.fillsText)),
        ]),
    table(weightsTable(load, view, at, sheet)),
  ]);
  const [only] = view.loads;
  const pairs = Array.from({ length: Math.ceil(all.length / 2) }, (_, at) =>
    beside(
      all[2 * at] ?? [],
      all[2 * at + 1] ??
        (all.length === 1 && only !== undefined ? [body('fills', words.fills(only.fillsText))] : []),
    ),
  );
  const [first, ...others] = pairs;
  return {
    key: 'weigh',
    blocks: [
      ...(first === undefined ? [] : [together(section(words.weigh, 'weigh'), first)]),
      ...others,
      body('left', words.left(view.surplusText), 2),
    ],
  };
}

function tins(view: PlanView, sheet: PlanSheet): Section {
  const { words } = sheet;
  return {
    key: 'tins',
    blocks: [
      section(words.tins, 'tins'),
      table(tinsTable(view.tins, sheet)),
      ...(view.portions === null ? [] : [body('portions', words.portions(view.portions.text, false), 2)]),
      ...(view.bake === null ? [] : [body('basis', view.bake.basisText, 2)]),
    ],
  };
}

function finishes(view: PlanView, sheet: PlanSheet): Section[] {
  if (view.finishes.length === 0 && view.unfinished.length === 0) return [];
  const { words } = sheet;
  return [
    {
      key: 'finishes',
      blocks: [
        section(words.finishes, 'finishes'),
        ...(view.finishes.length === 0 ? [] : [table(finishesTable(view.finishes, sheet))]),
        ...view.unfinished.map((text, at) => body(`unfinished-${at}`, text)),
      ],
    },
  ];
}

function cautions({ cautions: all }: PlanView, word: string): Section {
  const half = Math.ceil(all.length / 2);
  const blocks = (some: PlanView['cautions']): Block[] => some.map(({ text }) => caution(word, text));
  return { key: 'cautions', blocks: [beside(blocks(all.slice(0, half)), blocks(all.slice(half)))] };
}

const fileName = (view: PlanView): string => `plans/${view.chartId}-plan`;

/** Draws nothing yet: gives the pages for a renderer. */
export function planSheetPrint(
  view: PlanView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  options: PlanSheetOptions,
): Print {
  const context = sheetContext(style, metrics);
  const words: PlanWords['sheet'] = planWordsFor(lang).sheet;
  const labels = labelsFor(lang);
  const sheet: PlanSheet = { words, context, unit: options.mass };
  const title = words.title(view.title);
  const sections = [
    opening(view, sheet, options),
    bowls(view, sheet),
    tins(view, sheet),
    ...finishes(view, sheet),
    cautions(view, labels.caution),
  ];
  return {
    path: `${fileName(view)}-${paper.toLowerCase()}`,
    title: `${title} – ${options.kitchenName}`,
    lang,
    subject: words.batter(view.batter.text, options.mass),
    pages: sheetPages(sections, portraitSheet(paper), context, furnitureOf({ ...options, title }, labels)),
  };
}
