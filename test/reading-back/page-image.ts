/** A page as a picture, to look at or to measure ink: PNG bytes. */
import { createCanvas } from '@napi-rs/canvas';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface PageImage {
  widthPx: number;
  heightPx: number;
  /** RGBA, row by row. */
  pixels: Uint8ClampedArray;
  png(): Buffer;
}

/** Page numbers start at 1. With `cornerMm` only a square of that side at the page's upper right. */
export async function pageImage(
  bytes: Uint8Array,
  pageNumber: number,
  dotsPerInch = 72,
  cornerMm = Number.POSITIVE_INFINITY,
): Promise<PageImage> {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 });
  const page = await (await task.promise).getPage(pageNumber);
  const scale = dotsPerInch / 72;
  const whole = page.getViewport({ scale });
  const sidePx = (cornerMm / 25.4) * dotsPerInch;
  const widthPx = Math.round(Math.min(sidePx, whole.width));
  const canvas = createCanvas(widthPx, Math.round(Math.min(sidePx, whole.height)));
  const viewport = page.getViewport({ scale, offsetX: widthPx - Math.round(whole.width) });
  const context = canvas.getContext('2d');
  await page.render({ canvas: canvas as never, canvasContext: context as never, viewport }).promise;
  const { data } = context.getImageData(0, 0, canvas.width, canvas.height);
  await task.destroy();
  return {
    widthPx: canvas.width,
    heightPx: canvas.height,
    pixels: data,
    png: () => canvas.toBuffer('image/png'),
  };
}
