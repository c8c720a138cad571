/** A ruler in the frame of a set of drawings: inches above the line, centimetres below. */
import { MM_PER } from '../domain/units.ts';
import { tenth } from './tin-profile.ts';

const TYPE_MM = 15;

function ticks(count: number, stepMm: number, lengthMm: number): string {
  return Array.from({ length: count + 1 }, (_, index) => `M${tenth(index * stepMm)} 0v${lengthMm}`).join('');
}

/** A scale bar as wide as the frame allows; the same scale as every drawing in that frame. */
export function scaleBar(frameWidthMm: number): string {
  const inches = Math.floor((frameWidthMm - 70) / MM_PER.in / 2) * 2;
  const centimetres = Math.floor((inches * MM_PER.in) / 50) * 5;
  const long = inches * MM_PER.in;
  const words = (x: number, y: number, text: string): string =>
    `<text x="${tenth(x)}" y="${y}" font-size="${TYPE_MM}">${text}</text>`;
  return [
    `<svg viewBox="-5 -26 ${tenth(frameWidthMm)} 54" role="img" aria-label="Scale: ${inches} inches, ${centimetres} centimetres">`,
    `<path class="line" d="M0 0H${tenth(long)}${ticks(inches, MM_PER.in, -8)}${ticks(centimetres, 10, 6)}"/>`,
    words(0, -12, '0'),
    words(long + 4, -2, `${inches} in`),
    words(0, 22, '0'),
    words(centimetres * 10 - 10, 22, `${centimetres} cm`),
    '</svg>',
  ].join('');
}
