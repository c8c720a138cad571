/** A print rendered with the sample fonts, as bytes. */

import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { type PdfInfo, renderPdf } from '../../src/pdf/render-pdf.ts';
import type { Print, Surface } from '../../src/prints/sheet/surface.ts';

export const sampleInfo: PdfInfo = {
  dated: new Date('2026-11-01T00:00:00Z'),
  author: 'The Sample Kitchen',
  producer: 'Tinwright',
};

/** Throws when a sign is missing from the fonts. */
export function printed(print: Print, fonts: LoadedFonts): Uint8Array {
  const pdf = renderPdf(print, fonts, sampleInfo);
  if (!pdf.ok) throw new Error(JSON.stringify(pdf.problems));
  return pdf.value;
}

/** A small print whose pages draw what is given. */
export const smallPrint = (...pages: ((surface: Surface) => void)[]): Print => ({
  path: 'small',
  title: 'Flour & <water> – “café”',
  lang: 'en-GB',
  subject: 'A print for tests',
  pages: pages.map((draw) => ({ widthMm: 100, heightMm: 80, draw })),
});

export const words = (text: string, xMm = 10, yMm = 20) => ({
  text,
  xMm,
  yMm,
  font: 'text' as const,
  sizePt: 10,
  colour: '#000000',
});
