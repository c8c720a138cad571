/** Portions on paper: what every tin serves, which tins to stack for how many, and how each cake is cut, to scale. */

import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { PortionsView } from '../views/portions.types.ts';
import { portionsWordsFor } from '../wording/portions/index.ts';
import { scaleBarMm } from '../wording/scale-bar.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { countTable, drawnTable, stackTable } from './cutting-guide/guide-tables.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { beside, caution, heading, leading, list, textParagraph } from './sheet/blocks.ts';
import type { Section } from './sheet/flow.ts';
import { paragraph } from './sheet/lines.ts';
import { besideCode, pageCode } from './sheet/page-code.ts';
import { portraitSheet } from './sheet/paper.ts';
import { frameOf, sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { table, tableFits } from './sheet/table/table.ts';
import { typeScale } from './sheet/type-scale.ts';

/** The finest at which a drawn table fits the sheet. */
const SCALES: readonly number[] = [5, 6, 8, 10, 12, 15, 20];

export interface CuttingGuideOptions {
  /** Address of the site's root; the sheet then carries a code that leads to its page. */
  siteUrl?: string;
}

/** From the site's root. */
const PAGE = 'portions.html';

/** Draws nothing yet: gives the pages for a renderer. */
export function cuttingGuidePrint(
  view: PortionsView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
  { siteUrl }: CuttingGuideOptions = {},
): Print {
  const sheet = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = portionsWordsFor(lang);
  const size = portraitSheet(paper);
  const { widthMm } = frameOf(size, sheet);
  const scale =
    SCALES.find((one) =>
      view.columns.every((_, at) => tableFits(drawnTable(view, at, one, words, sheet), widthMm, sheet)),
    ) ?? 20;
  const headed = (text: string, anchor: string) =>
    heading(text, { level: 2, type: typeScale.section, bookmark: text, anchor });
  const first: Section = {
    key: 'portions',
    blocks: [
      besideCode(
        heading(view.title, { level: 1, type: typeScale.title, bookmark: view.title }),
        pageCode(siteUrl, PAGE, labels.allWorking),
      ),
      textParagraph('summary', paragraph(view.summary, typeScale.lead)),
      textParagraph(
        'sizes',
        paragraph(`${view.columns.map(({ text }) => text).join('. ')}.`, typeScale.body),
        1,
      ),
      table(countTable(view, words)),
      beside(
        [list('how-to-read', [...view.notes, ...view.leftOut.map(({ text }) => text)])],
        view.cautions.map(({ text }) => caution(labels.caution, text)),
      ),
    ],
  };
  const stacks: Section[] =
    view.stacks.length === 0
      ? []
      : [
          {
            key: 'stacks',
            blocks: [
              headed(view.stacksTitle, 'stacks'),
              leading(textParagraph('about', paragraph(view.stacksAbout, typeScale.body), 1)),
              table(stackTable(view, words)),
            ],
          },
        ];
  const guides = view.columns.map(
    ({ id, text }, at): Section => ({
      key: `guide-${id}`,
      startsPage: true,
      blocks: [
        headed(`${view.guidesTitle}: ${uncapitalised(text)}`, id),
        table(drawnTable(view, at, scale, words, sheet)),
      ],
    }),
  );
  return {
    path: `cutting-guides/${view.id}-${paper.toLowerCase()}`,
    title: `${view.title} – ${view.kitchenName}`,
    lang,
    subject: view.summary,
    pages: sheetPages([first, ...stacks, ...guides], size, sheet, {
      ...furnitureOf(view, labels),
      scaleBar: { scale, lengthMm: scaleBarMm(lang, 'short'), text: words.scale(scale) },
    }),
  };
}
