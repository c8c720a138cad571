/**
 * The boxes of a page that is to be cut out (PDF 1.7, section 14.11.2, from memory): the trimmed page is what shows
 * and prints, and the sheet goes on beyond it for whoever prints on larger paper and cuts.
 */
import type { PrintPage } from '../prints/sheet/surface.ts';
import { PT_PER_MM } from './operators.ts';

/** What is added to a page's dictionary; nothing for a page without bleed. Places stay counted from the trim. */
export function pageBoxes({ widthMm, heightMm, bleedMm = 0 }: PrintPage): Record<string, number[]> {
  if (bleedMm === 0) return {};
  const [width, height, bleed] = [widthMm * PT_PER_MM, heightMm * PT_PER_MM, bleedMm * PT_PER_MM];
  const trim = [0, 0, width, height];
  const beyond = [-bleed, -bleed, width + bleed, height + bleed];
  return { MediaBox: beyond, BleedBox: beyond, CropBox: trim, TrimBox: trim };
}
