/** The bowls of a week on paper: what is mixed together for several orders, with boxes to tick; days beside each. */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { WeekView } from '../views/week.types.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import { furnitureOf } from './labels/furniture.ts';
import { labelsFor } from './labels/labels.ts';
import { bowlBlocks, type Sheet } from './order-sheet/bowl-blocks.ts';
import { LOOKS } from './order-sheet/look.ts';
import { caution, heading, list, textParagraph } from './sheet/blocks.ts';
import { paragraph } from './sheet/lines.ts';
import { portraitSheet } from './sheet/paper.ts';
import { sheetPages } from './sheet/sheet.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Block } from './sheet/strip.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { typeScale } from './sheet/type-scale.ts';

function orderLines({ orders }: WeekView): string[] {
  return orders.map(
    ({ reference, title, handOver }) =>
      `${reference}, ${title}. ${handOver.text}, ${handOver.placeText.toLowerCase()}`,
  );
}

function blocks(
  view: WeekView,
  title: string,
  sheet: Sheet,
  labels: Record<'caution' | 'check', string>,
): Block[] {
  const { words, look } = sheet;
  return [
    heading(title, { level: 1, type: typeScale.title, bookmark: title }),
    textParagraph('range', paragraph(view.rangeText, typeScale.lead)),
    list('orders', orderLines(view)),
    textParagraph('lead', paragraph(words.week.sheetLead, typeScale.body), 3),
    ...(view.sharedText === ''
      ? []
      : [textParagraph('shared', paragraph(view.sharedText, typeScale.body), 1)]),
    ...view.refusals.map(({ text, hint }) => caution(labels.caution, `${text} ${hint}`)),
    ...view.warnings.map(({ message }) => caution(labels.check, message)),
    ...view.cautions.map(({ text }) => caution(labels.caution, text)),
    heading(words.week.mixes, { level: 2, type: look.section, bookmark: words.week.mixes }),
    ...view.batters.flatMap((batter) =>
      bowlBlocks(
        [
          {
            ...batter,
            bowlfuls: batter.bowlfuls.map((bowl, at) => ({
              ...bowl,
              name: `${bowl.name}. ${batter.mixedOnTexts[at] ?? ''}`,
            })),
          },
        ],
        sheet,
      ),
    ),
  ];
}

/** The week sheet. */
export function weekSheetPrint(
  view: WeekView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = labelsFor(lang);
  const words = orderWordsFor(lang);
  const title = words.week.sheetTitle(view.id);
  const [look] = LOOKS;
  const sections = [{ key: 'week', blocks: blocks(view, title, { words, look, context }, labels) }];
  return {
    path: `orders/${view.id.toLowerCase()}-week-sheet-${paper.toLowerCase()}`,
    title: `${title} – ${view.kitchenName}`,
    lang,
    subject: words.week.sheetLead,
    pages: sheetPages(sections, portraitSheet(paper), context, furnitureOf({ ...view, title }, labels)),
  };
}
