/** PDF content operators from our own values. Page space has y down, in points, as the library sets it up. */
import type { Box, Paint, PathStep } from '../prints/sheet/surface.ts';
import type { ShapedGlyph } from './pair-setter.ts';
import type { ShapedText } from './shaped-text.ts';

export const PT_PER_MM = 72 / 25.4;

/** At most three decimals: a thousandth of a point is far below what any printer can place. */
export function pdfNumber(value: number): string {
  const thousandths = Math.round(value * 1000);
  const size = Math.abs(thousandths);
  // Whole numbers are written many times faster than fractions; a sheet holds ten thousand of them.
  if (!(size < 1e12)) return String(thousandths / 1000);
  const whole = Math.floor(size / 1000);
  return `${thousandths < 0 ? '-' : ''}${whole}${FRACTIONS[size - whole * 1000] ?? ''}`;
}

/** '' for 0, '.001', '.01' for 10, … '.999'. */
const FRACTIONS = Array.from({ length: 1000 }, (_, thousandths) => String(thousandths / 1000).slice(1));

const point = (mm: number): string => pdfNumber(mm * PT_PER_MM);

const points = (...mm: number[]): string => mm.map(point).join(' ');

/** '0.2 0.4 1' from '#3366ff'. Throws on anything else: colours come from a checked house style. */
export function colourOperands(colour: string): string {
  const known = operandsByColour.get(colour);
  if (known !== undefined) return known;
  const channels = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (!channels) throw new Error(`'${colour}' is not a colour such as '#3366ff'`);
  const operands = channels
    .slice(1)
    .map((channel) => pdfNumber(Number.parseInt(channel, 16) / 255))
    .join(' ');
  operandsByColour.set(colour, operands);
  return operands;
}

/** A house style has few colours, and every text asks for one. */
const operandsByColour = new Map<string, string>();

function stepOperator(step: PathStep): string {
  switch (step.op) {
    case 'move':
      return `${point(step.x)} ${point(step.y)} m`;
    case 'line':
      return `${point(step.x)} ${point(step.y)} l`;
    case 'cubic':
      return `${point(step.x1)} ${point(step.y1)} ${point(step.x2)} ${point(step.y2)} ${point(step.x)} ${point(step.y)} c`;
    case 'close':
      return 'h';
  }
}

function paintOperator(paint: Paint): string {
  const rule = paint.evenOdd ? '*' : '';
  if (paint.fill && paint.stroke) return `B${rule}`;
  if (paint.fill) return `f${rule}`;
  return paint.stroke ? 'S' : 'n';
}

/** A whole path, its graphics state kept to itself. */
export function pathOperators(steps: PathStep[], paint: Paint): string {
  const lines = ['q'];
  if (paint.fill) lines.push(`${colourOperands(paint.fill)} rg`);
  if (paint.stroke) {
    lines.push(`${colourOperands(paint.stroke)} RG`, `${pdfNumber(paint.lineWidthPt ?? 0.5)} w`, '1 j');
    if (paint.dashMm) lines.push(`[${points(...paint.dashMm)}] 0 d`);
  }
  for (const step of steps) lines.push(stepOperator(step));
  lines.push(paintOperator(paint), 'Q');
  return lines.join('\n');
}

/** Keeps to a box what follows, until the graphics state is restored. */
export const clipOperators = ({ xMm, yMm, widthMm, heightMm }: Box): string =>
  `${points(xMm, yMm, widthMm, heightMm)} re W n`;

const HEX: string[] = [];

function hex(glyph: number): string {
  HEX[glyph] ??= glyph.toString(16).padStart(4, '0');
  return HEX[glyph];
}

function glyphArray(glyphs: ShapedGlyph[], embed: (glyph: ShapedGlyph) => number): string {
  let array = '[<';
  for (const glyph of glyphs) {
    array += hex(embed(glyph));
    if (glyph.kern !== 0) array += `> ${pdfNumber(-glyph.kern)} <`;
  }
  return `${array}>] TJ`.replaceAll('<>', '');
}

/** Glyphs with marks set above or below get a place each. */
function placedGlyphs(text: ShapedText, sizePt: number, embed: (glyph: ShapedGlyph) => number): string {
  let x = 0;
  const placed: string[] = [];
  for (const glyph of text.glyphs) {
    const shift = ((x + glyph.dx) / 1000) * sizePt;
    placed.push(
      `${pdfNumber((glyph.dy / 1000) * sizePt)} Ts`,
      `[${pdfNumber((-shift * 1000) / sizePt)} <${hex(embed(glyph))}> ${pdfNumber((shift * 1000) / sizePt + glyph.width)}] TJ`,
    );
    x += glyph.width + glyph.kern;
  }
  return [...placed, '0 Ts'].join('\n');
}

/** Whether the type size matters for how the text is shown: not unless marks are set above or below. */
export const isPlaced = (text: ShapedText): boolean =>
  text.glyphs.some((glyph) => glyph.dx !== 0 || glyph.dy !== 0);

/** Shows shaped text at the text matrix's place. */
export function showText(text: ShapedText, sizePt: number, embed: (glyph: ShapedGlyph) => number): string {
  return isPlaced(text) ? placedGlyphs(text, sizePt, embed) : glyphArray(text.glyphs, embed);
}

const quarterTurns: Record<number, [number, number]> = { 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] };

/** Text matrix at a place in mm, upright in a page whose y runs down. */
export function textMatrix(xMm: number, yMm: number, turnDeg: number): string {
  if (turnDeg === 0) return `1 0 0 -1 ${point(xMm)} ${point(yMm)} Tm`;
  const radians = (turnDeg * Math.PI) / 180;
  const [cos, sin] = quarterTurns[((turnDeg % 360) + 360) % 360] ?? [Math.cos(radians), Math.sin(radians)];
  return `${[cos, -sin, -sin, -cos].map(pdfNumber).join(' ')} ${points(xMm, yMm)} Tm`;
}
