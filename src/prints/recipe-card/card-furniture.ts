/** Around each face: a band along the top edge, whose card it is, which edition, which card of how many. */
import { formatDate } from '../../wording/date.ts';
import { rectangle } from '../sheet/rules.ts';
import type { Surface } from '../sheet/surface.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import type { CardParts } from './card-parts.ts';
import { BLEED_MM } from './card-size.ts';

const BAND_MM = 2.2;

interface End {
  text: string;
  strong: boolean;
  side: 'left' | 'right';
  yMm: number;
}

interface FaceAt {
  xMm: number;
  yMm: number;
  /** From 0; backs are odd. */
  face: number;
  cards: number;
  /** The front of a lying card has its title where others have their running head. */
  headless: boolean;
}

function endsOf({ view, form, words, context }: CardParts, at: FaceAt): End[] {
  const { small } = form.type;
  const headMm = at.yMm + form.marginMm + baselineInLeadingMm(small, context) - 0.6;
  const descentMm = context.metrics.descentMm(small.font, small.sizePt);
  const footMm = at.yMm + form.heightMm - form.marginMm - descentMm;
  const edition = words.edition(formatDate(view.edition));
  const number = words.card(Math.floor(at.face / 2) + 1, at.cards);
  const foot = (text: string, side: End['side']): End => ({ text, strong: false, side, yMm: footMm });
  const head: End =
    at.face === 0
      ? { text: view.kitchenName, strong: true, side: 'left', yMm: headMm }
      : { text: words.continued(view.title), strong: false, side: 'left', yMm: headMm };
  return at.headless
    ? [foot(`${view.kitchenName} · ${edition}`, 'left'), foot(number, 'right')]
    : [head, foot(edition, 'left'), foot(number, 'right')];
}

/** Drawn with the corner of the trimmed card at (x, y). */
export function drawFurniture(surface: Surface, parts: CardParts, at: FaceAt): void {
  const { form, context } = parts;
  const { marginMm, widthMm, type } = form;
  const { xMm, yMm } = at;
  const band = rectangle(xMm - BLEED_MM, yMm - BLEED_MM, widthMm + 2 * BLEED_MM, BLEED_MM + BAND_MM);
  surface.path(band, { fill: context.inks.accent });
  for (const { text, strong, side, yMm: baselineMm } of endsOf(parts, at)) {
    const font = strong ? 'textBold' : type.small.font;
    const inkMm = context.metrics.widthMm(text, font, type.small.sizePt);
    surface.text({
      text,
      xMm: side === 'left' ? xMm + marginMm : xMm + widthMm - marginMm - inkMm,
      yMm: baselineMm,
      font,
      sizePt: type.small.sizePt,
      colour: strong ? context.inks.accent : context.inks[type.small.colour],
    });
  }
}
