/** How one recipe bakes, on paper: how long in which tin, how it warms, and the bakes that say so. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { BakeGuideView } from '../views/bake-guide.types.ts';
import { bakePath } from '../views/nav.ts';
import type { Plot } from '../views/plot/plot.types.ts';
import { type BakeWords, bakeWordsFor } from '../wording/bake/index.ts';
import { logTable, plotTable } from './bake-guide/guide-tables.ts';
import { plotBlock } from './bake-guide/plot-block.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, type PageCode, pageCode } from './sheet/page-code.ts';
import { landscapeSheet, portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table, tableFits } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';

const body = (key: string, text: string): Block => textParagraph(key, paragraph(text, typeScale.body), 2.5);

const headed = (text: string, anchor: string): Block =>
  heading(text, { level: 2, type: typeScale.section, bookmark: text, anchor });

function opening(view: BakeGuideView, words: BakeWords, cautionWord: string, code: PageCode | null): Section {
  const { ask } = view;
  return {
    key: 'opening',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title, anchor: 'guide' }),
        code,
      ),
      textParagraph('answer', paragraph(view.answerText ?? view.basisText, typeScale.lead)),
      ...(view.answerText === null ? [] : [body('basis', view.basisText)]),
      body('factor', `${view.factorText} ${view.settingText}`),
      body('lead', `${view.lead} ${view.doneTests}`),
      ...view.cautions.map(({ text }) => caution(cautionWord, text)),
      ...(ask === null
        ? []
        : [
            headed(words.guide.ask, 'ask'),
            body('ask-lead', ask.lead),
            list('ask', ask.bakes),
            body('promise', ask.promise),
          ]),
      headed(words.guide.fromLog, 'from-log'),
      list('from-log', view.fromLog),
    ],
  };
}

const pictured = (plot: Plot): Section => ({
  key: `plot-${plot.id}`,
  blocks: [
    headed(plot.title, plot.id),
    plotBlock(plot),
    body(`about-${plot.id}`, plot.description),
    table(plotTable(plot)),
  ],
});

function logSection(view: BakeGuideView, words: BakeWords): Section {
  const { guide } = words;
  const logged = [
    table(logTable(view, words)),
    heading(guide.odd, { level: 3, type: typeScale.entry }),
    ...(view.odd.length === 0
      ? [body('odd', guide.noOdd)]
      : [list('odd', view.odd), body('odd-hint', view.oddHint)]),
  ];
  return {
    key: 'log',
    blocks: [
      body('pictures', view.pictureNote),
      headed(guide.log, 'log'),
      ...(view.log.length === 0 ? [body('empty', view.logEmpty)] : logged),
      headed(guide.makeUp, 'make-up'),
      body('make-up', view.makeUp.sentences.join(' ')),
    ],
  };
}

export interface GuideOptions {
  /** Address of the site's root; the sheet then carries a code that leads to its page. */
  siteUrl?: string;
}

/** Draws nothing yet: gives the pages for a renderer. */
export function bakeGuidePrint(
  view: BakeGuideView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  { siteUrl }: GuideOptions = {},
): Print {
  const sheet = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = bakeWordsFor(lang);
  const tables = [...view.plots.map(plotTable), logTable(view, words)];
  const upright = portraitSheet(paper);
  const { widthMm } = frameOf(upright, sheet);
  // Wide margins or wide letters may not leave room for the log upright.
  const size = tables.every((spec) => tableFits(spec, widthMm, sheet)) ? upright : landscapeSheet(paper);
  const sections = [
    opening(view, words, labels.caution, pageCode(siteUrl, bakePath(view.id), labels.allWorking)),
    ...view.plots.map(pictured),
    logSection(view, words),
  ];
  return {
    path: `bake-guides/${view.id}-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.basisText,
    pages: sheetPages(sections, size, sheet, furnitureOf(view, labels)),
  };
}
