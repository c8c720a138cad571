/** The back: a code that leads to the site, and a rule of 100 mm that tells whether the print is at its true size. */
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { drawQr, qrCode } from '../qr.ts';
import { paragraph } from '../sheet/lines.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';

const RULER_MM = 100;
const QR_MM = 24;

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

function drawCode(
  surface: Surface,
  url: string,
  words: BookletWords,
  context: SheetContext,
  xMm: number,
  yMm: number,
) {
  const box = { xMm, yMm, widthMm: QR_MM, heightMm: QR_MM };
  surface.link(box, { url }, words.imprint.siteCode, () =>
    surface.within('Figure', { alt: `${words.imprint.siteCode}: ${url}`, box }, () =>
      drawQr(surface, qrCode(url), { xMm, yMm, sideMm: QR_MM }, context.inks.ink),
    ),
  );
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
    surface.within('P', {}, () => drawText(surface, context, name, xMm, top, 'centre'));
    surface.within('P', {}, () => drawText(surface, context, line, xMm, top + name.heightMm + 1, 'centre'));
    if (view.siteUrl !== null) {
      const code = set(words.imprint.siteCode, bookletType.quiet);
      const codeTop = top + name.heightMm + line.heightMm + 12;
      surface.within('P', {}, () =>
        drawCode(surface, view.siteUrl ?? '', words, context, middle - QR_MM / 2, codeTop),
      );
      surface.within('P', {}, () => drawText(surface, context, code, xMm, codeTop + QR_MM + 1, 'centre'));
    }
    surface.artifact(() => drawRuler(surface, context, middle - RULER_MM / 2, foot - rule.heightMm - 1.5));
    surface.within('P', {}, () => drawText(surface, context, rule, xMm, foot - rule.heightMm, 'centre'));
  });
}
