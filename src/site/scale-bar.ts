/** A ruler for a set of drawings: inches above the line, centimetres below, in the frame they share. */
import { MM_PER } from '../domain/units.ts';
import { escapeHtml } from './escape-html.ts';
import { PLATE_AIR_MM } from './tin-drawing.ts';
import { tenth } from './tin-profile.ts';

/** Drawn small: a third of a pixel to the millimetre makes this twelve pixels high. */
const TYPE_MM = 36;

function ticks(count: number, stepMm: number, lengthMm: number): string {
  return Array.from({ length: count + 1 }, (_, index) => `M${tenth(index * stepMm)} 0v${lengthMm}`).join('');
}

/** A scale bar to stand in a cell of the plate; the same scale as every drawing there. */
export function scaleBar(frameWidthMm: number, alt: (inches: number, centimetres: number) => string): string {
  const inches = Math.max(2, Math.floor((frameWidthMm - 20) / MM_PER.in / 2) * 2);
  const centimetres = Math.floor((inches * MM_PER.in) / 50) * 5;
  const long = inches * MM_PER.in;
  const words = (x: number, y: number, text: string): string =>
    `<text x="${tenth(x)}" y="${y}" font-size="${TYPE_MM}" text-anchor="end">${text}</text>`;
  return [
    `<svg viewBox="-2 -48 ${tenth(frameWidthMm + PLATE_AIR_MM)} 98" role="img" aria-label="${escapeHtml(alt(inches, centimetres))}">`,
    `<path class="line" d="M0 0H${tenth(long)}${ticks(inches, MM_PER.in, -11)}${ticks(centimetres, 10, 8)}"/>`,
    words(long, -18, `${inches} in`),
    words(centimetres * 10, 42, `${centimetres} cm`),
    '</svg>',
  ].join('');
}
