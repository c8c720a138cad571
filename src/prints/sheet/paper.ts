/**
 * Sheet sizes in mm. A4: ISO 216, from memory. Letter: 8½ × 11 in, ANSI/ASME Y14.1 size A, from memory.
 */
import type { PaperName } from '../../domain/kitchen.ts';

export interface SheetSize {
  widthMm: number;
  heightMm: number;
}

const portrait: Record<PaperName, SheetSize> = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
};

export const portraitSheet = (paper: PaperName): SheetSize => portrait[paper];

export const landscapeSheet = (paper: PaperName): SheetSize => ({
  widthMm: portrait[paper].heightMm,
  heightMm: portrait[paper].widthMm,
});
