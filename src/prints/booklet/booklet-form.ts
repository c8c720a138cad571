/**
 * The booklet's page: half of a country's sheet, with margins in proportion and room for the fold.
 * A5: ISO 216, from memory. Half Letter: 5½ × 8½ in, half of ANSI/ASME Y14.1 size A, from memory.
 */
import type { HouseStyle } from '../../domain/house-style.ts';
import type { PaperName } from '../../domain/kitchen.ts';
import { landscapeSheet, portraitSheet, type SheetSize } from '../sheet/paper.ts';

export interface BookletForm {
  page: SheetSize;
  /** Two pages side by side. */
  sheet: SheetSize;
  paper: PaperName;
  /** What the page is called in file names. */
  slug: string;
  /** Outer edge, and the edge in the fold. */
  outerMm: number;
  innerMm: number;
  topMm: number;
  bottomMm: number;
}

const pages: Record<PaperName, { widthMm: number; heightMm: number; slug: string }> = {
  A4: { widthMm: 148, heightMm: 210, slug: 'a5' },
  Letter: { widthMm: 139.7, heightMm: 215.9, slug: 'half-letter' },
};

/** Home printers leave about 5 mm white all round. */
const LEAST_MARGIN_MM = 8;
/** What a fold takes of the inner margin. */
const FOLD_MM = 3;

/** The form of a paper in a house style. */
export function bookletForm(paper: PaperName, { marginMm }: HouseStyle): BookletForm {
  const { slug, ...page } = pages[paper];
  const share = page.widthMm / portraitSheet(paper).widthMm;
  const scaled = (mm: number): number => Math.max(LEAST_MARGIN_MM, mm * share);
  const outerMm = scaled(Math.min(marginMm.left, marginMm.right));
  return {
    page,
    sheet: landscapeSheet(paper),
    paper,
    slug,
    outerMm,
    innerMm: scaled(Math.max(marginMm.left, marginMm.right)) + FOLD_MM,
    topMm: scaled(marginMm.top),
    bottomMm: scaled(marginMm.bottom),
  };
}

const HEAD_MM = 6;
const FOOT_MM = 6;

export interface PageFrame {
  widthMm: number;
  heightMm: number;
  yMm: number;
}

/** Room between running head and page number; the same on left and right pages. */
export const bodyFrame = ({ page, outerMm, innerMm, topMm, bottomMm }: BookletForm): PageFrame => ({
  widthMm: page.widthMm - outerMm - innerMm,
  heightMm: page.heightMm - topMm - bottomMm - HEAD_MM - FOOT_MM,
  yMm: topMm + HEAD_MM,
});

/** Left edge of the text on a page: odd pages lie right of the fold. */
export const leftEdgeMm = ({ innerMm, outerMm }: BookletForm, pageNumber: number): number =>
  pageNumber % 2 === 1 ? innerMm : outerMm;
