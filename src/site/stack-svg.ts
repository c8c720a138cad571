/** The stack's drawing on a page, from the very strokes that the print draws: one unit is a millimetre of paper. */

import { type ElevationStroke, type ElevationWord, stackElevation } from '../views/stack-elevation.ts';
import type { StackView } from '../views/stack-sheet.types.ts';
import { escapeHtml } from './escape-html.ts';
import { outlineStepsPath } from './outline-steps-path.ts';
import { tenth } from './tin-profile.ts';

/** 1 : 4 keeps the words of a drawing readable on a telephone's width. */
const LOOK = { scale: 4, textMm: 4.2 };
const LETTER_EM = 0.56;

const CLASSES: Record<ElevationStroke['kind'], string> = {
  drum: 'stack-board',
  card: 'stack-board',
  cake: 'stack-cake',
  dome: 'stack-cake',
  dummy: 'stack-dummy',
  support: 'stack-hidden',
  dowel: 'stack-dowel',
  ground: 'line',
  measure: 'thin',
};

const strokeMarkup = ({ kind, steps }: ElevationStroke): string =>
  `<path class="${CLASSES[kind]}" d="${outlineStepsPath(steps)}"/>`;

const wordMarkup = ({ text, xMm, yMm, anchor, strong }: ElevationWord): string =>
  `<text x="${tenth(xMm)}" y="${tenth(yMm)}" text-anchor="${anchor}"${strong ? ' font-weight="600"' : ''}>${escapeHtml(text)}</text>`;

/** One image a page, with its title and description. */
export function stackSvg(view: StackView): string {
  const { title, alt } = view.picture;
  const longest = Math.max(
    ...view.tiers.flatMap(({ name, weight }) => [name.length, weight.text.length + 2]),
  );
  const look = { ...LOOK, nameMm: longest * LETTER_EM * LOOK.textMm };
  const { widthMm, heightMm, strokes, words } = stackElevation(view, look);
  const size = `width="${tenth(widthMm * 4)}" height="${tenth(heightMm * 4)}"`;
  return [
    `<svg ${size} viewBox="0 0 ${tenth(widthMm)} ${tenth(heightMm)}" font-size="${LOOK.textMm}" role="img" aria-labelledby="stack-title stack-words">`,
    `<title id="stack-title">${escapeHtml(title)}</title><desc id="stack-words">${escapeHtml(alt)}</desc>`,
    ...strokes.map(strokeMarkup),
    ...words.map(wordMarkup),
    '</svg>',
  ].join('');
}
