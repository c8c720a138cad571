/** Head room and foot of a wall sheet: the foot is read close up, and states the type sizes and their reason. */
import { formatNumber } from '../../wording/number.ts';
import type { WallWords } from '../../wording/wall/index.ts';
import { drawLogo, logoWidthMm } from '../sheet/logo.ts';
import type { SheetSize } from '../sheet/paper.ts';
import { hairline } from '../sheet/rules.ts';
import { drawScaleBar, type ScaleBar } from '../sheet/scale-bar.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Surface } from '../sheet/surface.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { WallType } from './wall-type.ts';

const FOOT_MM = 15;
const LINE_MM = 5;
const LOGO_MM = 10;
const LOGO_GAP_MM = 3;
const SCALE_BAR_AT = 0.5;
const FOOT_TYPE: TypeStyle = { font: 'text', sizePt: 10, leadingPt: 13, colour: 'quietInk' };

export const wallFrame = (size: SheetSize, { marginMm }: SheetContext) => ({
  xMm: marginMm.left,
  yMm: marginMm.top,
  widthMm: size.widthMm - marginMm.left - marginMm.right,
  heightMm: size.heightMm - marginMm.top - marginMm.bottom - FOOT_MM,
});

export interface WallFoot {
  kitchenName: string;
  edition: string;
  type: WallType;
  words: WallWords;
  sheet: number;
  sheets: number;
  scaleBar: ScaleBar | null;
}

function typesText({ key, word, note }: WallType, words: WallWords): string {
  const points = ({ sizePt }: TypeStyle) => formatNumber(sizePt, 1);
  const notes = note.sizePt < word.sizePt ? points(note) : null;
  return words.types(points(key), points(word), notes);
}

/** Two lines: whose and when, and which sheet; then how large the type is and why. */
export function drawWallFoot(
  surface: Surface,
  size: SheetSize,
  context: SheetContext,
  { kitchenName, edition, type, words, sheet, sheets, scaleBar }: WallFoot,
): void {
  const { inks, metrics, marginMm } = context;
  const { font, sizePt, colour } = FOOT_TYPE;
  const left = marginMm.left;
  const right = size.widthMm - marginMm.right;
  const lastMm = size.heightMm - marginMm.bottom - metrics.descentMm(font, sizePt);
  const firstMm = lastMm - LINE_MM;
  const put = (text: string, xMm: number, yMm: number) =>
    surface.text({ text, xMm, yMm, font, sizePt, colour: inks[colour] });
  const end = (text: string, yMm: number) => put(text, right - metrics.widthMm(text, font, sizePt), yMm);
  const ruleMm = firstMm - LINE_MM - 1;
  hairline(surface, context, left, ruleMm, right - left);
  const logoMm = logoWidthMm(context, LOGO_MM);
  drawLogo(surface, context, left, size.heightMm - marginMm.bottom - LOGO_MM, LOGO_MM);
  const textMm = left + (logoMm === 0 ? 0 : logoMm + LOGO_GAP_MM);
  put(`${kitchenName}. ${words.edition(words.date(edition))}`, textMm, firstMm);
  if (sheets > 1) end(words.sheet(sheet, sheets), firstMm);
  put(typesText(type, words), textMm, lastMm);
  if (scaleBar) drawScaleBar(surface, context, scaleBar, left + (right - left) * SCALE_BAR_AT, firstMm);
}
