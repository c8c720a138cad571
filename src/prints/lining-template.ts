/**
 * A tin's patterns at true size: a sheet of words, then the lining papers, the levelling strip and the board, each
 * part within 8 mm of the sheet's edges, larger pieces in parts that lap by 12 mm.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale, PaperName } from '../domain/kitchen.ts';
import type { LiningTemplateView } from '../views/lining-template.types.ts';
import { templateLabelsFor } from '../wording/lining-template/sheet-words.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import { shiftedSurface } from './sheet/shifted-surface.ts';
import type { Metrics, Print, PrintPage, Surface } from './sheet/surface.ts';
import { type PatternSheet, type PlacedItem, templateLayout } from './templates/lay-out.ts';
import { overviewPages } from './templates/overview.ts';
import { drawTemplateFurniture, templateFrame } from './templates/template-sheet.ts';

function drawItem(surface: Surface, { item, xMm, yMm }: PlacedItem): void {
  const { drawing, widthMm, heightMm } = item;
  const box = { xMm, yMm, widthMm, heightMm };
  surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, xMm, yMm));
}

function isFirstOfGroup(sheets: readonly PatternSheet[], sheet: PatternSheet): boolean {
  return sheets.find(({ group }) => group === sheet.group) === sheet;
}

/** Draws nothing yet: gives the pages for a renderer. */
export function liningTemplatePrint(
  view: LiningTemplateView,
  style: HouseStyle,
  metrics: Metrics,
  paper: PaperName,
  lang: Locale,
): Print {
  const context = sheetContext(style, metrics);
  const labels = templateLabelsFor(lang);
  const { size, ...frame } = templateFrame(paper);
  const layout = templateLayout(view, paper, labels, context);
  const words = overviewPages(view, layout, frame, labels, context);
  const sheets = words.length + layout.sheets.length;
  const page = (sheet: number, draw: (surface: Surface) => void): PrintPage => ({
    ...size,
    draw(surface, origin) {
      const shifted = shiftedSurface(surface, origin);
      shifted.artifact(() => drawTemplateFurniture(shifted, context, size, { view, labels, sheet, sheets }));
      draw(shifted);
    },
  });
  return {
    path: `templates/${view.id}-${paper.toLowerCase()}`,
    title: labels.printTitle(view.title),
    lang,
    subject: view.summary,
    pages: [
      ...words.map((flowed, index) =>
        page(index + 1, (surface) => flowed.draw(surface, frame.xMm, frame.yMm)),
      ),
      ...layout.sheets.map((sheet, index) =>
        page(words.length + index + 1, (surface) => {
          if (isFirstOfGroup(layout.sheets, sheet))
            surface.bookmark(labels.bookmarks[sheet.group], 2, { xMm: frame.xMm, yMm: frame.yMm });
          surface.within('Sect', { key: sheet.group }, () => {
            for (const item of sheet.items) drawItem(surface, item);
          });
        }),
      ),
    ],
  };
}
