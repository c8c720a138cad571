/** Title and one sentence, with the code that leads to the sheet's page at the right. */
import { paragraph } from '../sheet/lines.ts';
import { drawPageCode, type PageCode } from '../sheet/page-code.ts';
import type { Block } from '../sheet/strip.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { WallType } from './wall-type.ts';

const QR_MM = 30;
const MOST_QR_MM = 42;
const GAP_MM = 8;
const LABEL_TYPE: TypeStyle = { font: 'text', sizePt: 10, leadingPt: 11.5, colour: 'quietInk' };

export interface WallHeading {
  title: string;
  lead: string;
}

export const wallHead =
  (view: WallHeading, type: WallType, growth: number, link: PageCode | null): Block =>
  (widthMm, context) => {
    const sideMm = Math.min(MOST_QR_MM, QR_MM * growth);
    const wordsMm = link ? widthMm - sideMm - GAP_MM : widthMm;
    const title = setText([paragraph(view.title, type.title)], wordsMm, context);
    const lead = setText([paragraph(view.lead, type.lead)], wordsMm, context);
    const label = link ? setText([paragraph(link.text, LABEL_TYPE)], sideMm, context) : null;
    const leadAtMm = title.heightMm + 1.5;
    return [
      {
        heightMm: Math.max(leadAtMm + lead.heightMm, label ? sideMm + label.heightMm : 0),
        spaceMm: 0,
        keepWithNext: true,
        draw(surface, xMm, yMm) {
          surface.bookmark(view.title, 1, { xMm, yMm });
          surface.within('H1', {}, () => drawText(surface, context, title, xMm, yMm));
          surface.within('P', {}, () => drawText(surface, context, lead, xMm, yMm + leadAtMm));
          if (!link || !label) return;
          const x = xMm + widthMm - sideMm;
          const code = { xMm: x, yMm, widthMm: sideMm, heightMm: sideMm };
          const whole = { ...code, heightMm: sideMm + label.heightMm };
          drawPageCode(surface, context, link, { code, link: whole }, () =>
            drawText(surface, context, label, x, yMm + sideMm),
          );
        },
      },
    ];
  };
