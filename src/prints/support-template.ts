/**
 * Where to prick, at true size: for every joint the outline of the tier above with a circle for each support, laid
 * out on sheets like the lining papers, with a bar of 100 mm on each to check the printer by.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import { type TemplateLabels, templateLabelsFor } from '../wording/lining-template/sheet-words.ts';
import { stackWordsFor } from '../wording/stacks/index.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import { shiftedSurface } from './sheet/shifted-surface.ts';
import type { Metrics, Print, Surface } from './sheet/surface.ts';
import type { StackedOrder } from './stack-sheet.ts';
import { type PlacedItem, templateLayout } from './templates/lay-out.ts';
import { drawTemplateFurniture, templateFrame } from './templates/template-sheet.ts';

const labelsByLang = new Map<Locale, TemplateLabels>();

/** The words of lining papers, except where a template lies on cake; the same ones whenever they are asked for. */
function supportLabels(lang: Locale): TemplateLabels {
  const { notFood: notFoodSafe } = stackWordsFor(lang).template;
  const labels = labelsByLang.get(lang) ?? { ...templateLabelsFor(lang), notFoodSafe };
  labelsByLang.set(lang, labels);
  return labels;
}

/** What the layout and the head of each sheet need. */
export function supportTemplateView(view: StackedOrder, lang: Locale) {
  const { title, subject } = stackWordsFor(lang).template;
  return {
    title: title(view.title),
    tinName: view.reference,
    sizeText: subject,
    otherSizeText: '',
    edition: view.edition,
    kitchenName: view.kitchenName,
    pieces: view.stack.sets.map(({ picture }) => picture),
  };
}

function drawItem(surface: Surface, { item, xMm, yMm }: PlacedItem): void {
  const { drawing, widthMm, heightMm } = item;
  const box = { xMm, yMm, widthMm, heightMm };
  surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, xMm, yMm));
}

/** Draws nothing yet: gives the pages for a renderer. */
export function supportTemplatePrint(
  view: StackedOrder,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = supportLabels(lang);
  const own = supportTemplateView(view, lang);
  const { size, ...frame } = templateFrame(paper);
  const { sheets } = templateLayout(own, paper, labels, context);
  return {
    path: `orders/${view.id}-support-template-${paper.toLowerCase()}`,
    title: stackWordsFor(lang).template.printTitle(own.title),
    lang,
    subject: view.stack.summary,
    pages: sheets.map((sheet, index) => ({
      ...size,
      draw(surface, origin) {
        const shifted = shiftedSurface(surface, origin);
        const words = { view: own, labels, sheet: index + 1, sheets: sheets.length };
        shifted.artifact(() => drawTemplateFurniture(shifted, context, size, words));
        if (index === 0) shifted.bookmark(own.title, 1, { xMm: frame.xMm, yMm: frame.yMm });
        shifted.within('Sect', { key: sheet.group }, () => {
          for (const item of sheet.items) drawItem(shifted, item);
        });
      },
    })),
  };
}
