/** The back: a code that leads to the site, and a rule of 100 mm that tells whether the print is at its true size. */
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { paragraph } from '../sheet/lines.ts';
import { drawLogo, logoWidthMm } from '../sheet/logo.ts';
import { drawPageCode, type PageCode, pageCode } from '../sheet/page-code.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';

const RULER_MM = 100;
const QR_MM = 24;
const LOGO_MM = 14;

const tickMm = (mm: number): number => (mm % 10 === 0 ? 4 : mm % 5 === 0 ? 2.8 : 1.8);

function drawRuler(surface: Surface, context: SheetContext, xMm: number, yMm: number): void {
  const steps: PathStep[] = [
    { op: 'move', x: xMm, y: yMm },
    { op: 'line', x: xMm + RULER_MM, y: yMm },
  ];
  for (let mm = 0; mm <= RULER_MM; mm += 1)
    steps.push({ op: 'move', x: xMm + mm, y: yMm }, { op: 'line', x: xMm + mm, y: yMm - tickMm(mm) });
  surface.path(steps, { stroke: context.inks.ink, lineWidthPt: lineWeightPt.thin });
}

function drawCode(surface: Surface, context: SheetContext, code: PageCode, xMm: number, yMm: number): void {
  const box = { xMm, yMm, widthMm: QR_MM, heightMm: QR_MM };
  drawPageCode(surface, context, code, { code: box, link: box }, () => undefined);
}

/** Draws the back cover into the body's frame. */
export function drawBackCover(
  surface: Surface,
  view: BookletView,
  words: BookletWords,
  frame: PageFrame,
  context: SheetContext,
  xMm: number,
): void {
  const { widthMm, heightMm, yMm } = frame;
  const middle = xMm + widthMm / 2;
  const set = (text: string, type: typeof bookletType.title) =>
    setText([paragraph(text, type)], widthMm, context);
  const name = set(view.kitchenName, bookletType.title);
  const line = set(words.backLine, bookletType.lead);
  const rule = set(words.ruler, bookletType.furniture);
  const foot = yMm + heightMm;
  surface.within('Sect', { key: 'back' }, () => {
    const top = yMm + heightMm * 0.32;
    const logoMm = logoWidthMm(context, LOGO_MM);
    surface.artifact(() => drawLogo(surface, context, middle - logoMm / 2, top - LOGO_MM - 4, LOGO_MM));
    surface.within('P', {}, () => drawText(surface, context, name, xMm, top, 'centre'));
    surface.within('P', {}, () => drawText(surface, context, line, xMm, top + name.heightMm + 1, 'centre'));
    const code = pageCode(view.siteUrl ?? undefined, '', words.imprint.siteCode);
    if (code !== null) {
      const said = set(words.imprint.siteCode, bookletType.quiet);
      const codeTop = top + name.heightMm + line.heightMm + 12;
      drawCode(surface, context, code, middle - QR_MM / 2, codeTop);
      surface.within('P', {}, () => drawText(surface, context, said, xMm, codeTop + QR_MM + 1, 'centre'));
    }
    surface.artifact(() => drawRuler(surface, context, middle - RULER_MM / 2, foot - rule.heightMm - 1.5));
    surface.within('P', {}, () => drawText(surface, context, rule, xMm, foot - rule.heightMm, 'centre'));
  });
}
