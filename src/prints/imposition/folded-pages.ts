/**
 * Pages two to a sheet, to print on both sides, fold and staple. In the fold every sheet pushes the next one out by
 * a leaf's thickness, so its pages are moved toward the fold by as much: nothing for the outermost sheet, then one
 * thickness more for each. Common practice, no source.
 */
import type { SheetSize } from '../sheet/paper.ts';
import type { PrintPage, Surface } from '../sheet/surface.ts';
import { type FoldedSheet, foldOrder, type SheetSide } from './fold-order.ts';
import { asOneParagraph } from './plain-surface.ts';

/** More than a long-armed stapler takes: a thicker booklet is folded in parts. */
export const MOST_SHEETS = 24;

export interface FoldForm {
  /** Lying. */
  sheet: SheetSize;
  /** One leaf, mm. */
  thicknessMm: number;
}

function drawPage(surface: Surface, page: PrintPage | undefined, number: number, xMm: number): void {
  if (page === undefined) throw new Error(`there is no page ${number}`);
  asOneParagraph(surface, `page ${number}`, (plain) => page.draw(plain, { xMm, yMm: 0 }));
}

function sidePage(
  pages: readonly PrintPage[],
  { left, right }: SheetSide,
  creepMm: number,
  { sheet }: FoldForm,
): PrintPage {
  const [leftPage, rightPage] = [pages[left - 1], pages[right - 1]];
  const foldMm = sheet.widthMm / 2;
  return {
    ...sheet,
    draw(surface, { xMm, yMm }) {
      if (yMm !== 0) throw new Error('a folded sheet is not drawn inside another');
      drawPage(surface, leftPage, left, xMm + foldMm - (leftPage?.widthMm ?? 0) + creepMm);
      drawPage(surface, rightPage, right, xMm + foldMm - creepMm);
    },
  };
}

function gathering(pages: readonly PrintPage[], form: FoldForm): PrintPage[] {
  return foldOrder(pages.length).flatMap(({ front, back }: FoldedSheet, sheet) =>
    [front, back].map((side) => sidePage(pages, side, sheet * form.thicknessMm, form)),
  );
}

/** Gatherings of a booklet with so many pages: one, while a stapler takes it. */
export const gatheringsOf = (pages: number): number => Math.ceil(pages / (4 * MOST_SHEETS));

/** Fronts and backs in turn, outermost sheet of each gathering first. Throws unless pages come in fours. */
export function foldedPages(pages: readonly PrintPage[], form: FoldForm): PrintPage[] {
  const count = gatheringsOf(pages.length);
  const each = 4 * Math.ceil(pages.length / 4 / count);
  return Array.from({ length: count }, (_, index) =>
    gathering(pages.slice(index * each, (index + 1) * each), form),
  ).flat();
}
