/**
 * Which font stands in until the house's own are unpacked? One that the device has, drawn as wide as the house's, so
 * that lines break where they will and nothing jumps: size = width of the house's font ÷ width of the other, over the
 * same sentence. Widths of Arial's and Times's kind from the AFM files of Helvetica and Times, DejaVu's from its files.
 */
import { create } from 'fontkit';
import type { FontRole } from '../domain/house-style.ts';
import type { FontBytes } from './house-fonts.ts';

const SENTENCE =
  'Beat the butter and sugar until pale, then add the eggs one at a time. Fold in the flour, pour into two lined tins and bake at 160 for 45 minutes.';

interface StandIn {
  /** Names under which devices have fonts of these widths. */
  names: readonly string[];
  /** Mean width of a sign of the sentence, em. */
  widthEm: number;
}

/** Each list from the commonest: a device takes the first that it has. */
const STAND_INS: Partial<Record<FontRole, readonly StandIn[]>> = {
  text: [
    { names: ['Arial', 'Helvetica', 'Roboto', 'Liberation Sans'], widthEm: 0.428 },
    { names: ['DejaVu Sans'], widthEm: 0.4931 },
  ],
  textBold: [
    { names: ['Arial Bold', 'Helvetica Bold', 'Roboto Bold', 'Liberation Sans Bold'], widthEm: 0.4594 },
    { names: ['DejaVu Sans Bold'], widthEm: 0.5581 },
  ],
  heading: [
    { names: ['Times New Roman', 'Times', 'Liberation Serif'], widthEm: 0.3877 },
    { names: ['DejaVu Serif'], widthEm: 0.4993 },
  ],
};

const FAMILIES: Partial<Record<FontRole, string>> = {
  text: 'meanwhile-text; font-weight: 400',
  textBold: 'meanwhile-text; font-weight: 700',
  heading: 'meanwhile-heading; font-weight: 400',
};

function widthEm(bytes: Uint8Array): number {
  const font = create(bytes as Buffer);
  if (!('glyphForCodePoint' in font)) return 0;
  const signs = [...SENTENCE];
  const widths = signs.map((sign) => font.glyphForCodePoint(sign.codePointAt(0) ?? 32).advanceWidth);
  return widths.reduce((sum, width) => sum + width, 0) / signs.length / font.unitsPerEm;
}

/** Faces 'meanwhile-text', 'meanwhile-text-2' and so on for what devices have; none where a font cannot be measured. */
export function meanwhileCss(fonts: FontBytes): string {
  const roles = Object.entries(STAND_INS) as [FontRole, readonly StandIn[]][];
  return roles
    .flatMap(([role, standIns]) => {
      const own = widthEm(fonts[role]);
      return standIns.map(({ names, widthEm: other }, at) => {
        const family = (FAMILIES[role] ?? '').replace(';', `${at === 0 ? '' : `-${at + 1}`};`);
        const sources = names.map((name) => `local("${name}")`).join(', ');
        const size = own > 0 ? ((100 * own) / other).toFixed(1) : '100.0';
        return `@font-face { font-family: ${family}; src: ${sources}; size-adjust: ${size}%; }\n`;
      });
    })
    .join('');
}
