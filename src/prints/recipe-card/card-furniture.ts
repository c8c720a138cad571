/** Around each face: a band along the top edge, whose card it is, which edition, which card of how many. */

import type { RecipeCardView } from '../../views/recipe-card.types.ts';
import { rectangle } from '../sheet/rules.ts';
import type { Surface } from '../sheet/surface.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import type { CardParts } from './card-parts.ts';
import { BLEED_MM } from './card-size.ts';

const BAND_MM = 2.2;

/** What the furniture of any card is set from. */
export interface FurnitureParts extends Pick<CardParts, 'form' | 'words' | 'context'> {
  view: Pick<RecipeCardView, 'title' | 'kitchenName' | 'edition'>;
}

interface End {
  /** The first of these that has room. */
  texts: string[];
  strong: boolean;
  side: 'left' | 'right';
  yMm: number;
  widthMm: number;
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

const BESIDE_MM = 3;

/** The first text that fits; when none does, as many words of the last as fit. */
function roomFor(texts: readonly string[], widthMm: number, measure: (text: string) => number): string {
  const fits = (text: string): boolean => measure(text) <= widthMm;
  const found = texts.find(fits);
  if (found !== undefined) return found;
  const words = (texts.at(-1) ?? '').split(' ');
  while (words.length > 1 && !fits(`${words.join(' ')} …`)) words.pop();
  return `${words.join(' ')} …`;
}

function endsOf({ view, form, words, context }: FurnitureParts, at: FaceAt): End[] {
  const { small } = form.type;
  const wholeMm = form.widthMm - 2 * form.marginMm;
  const headMm = at.yMm + form.marginMm + baselineInLeadingMm(small, context) - 0.6;
  const footMm = at.yMm + form.heightMm - form.marginMm - context.metrics.descentMm(small.font, small.sizePt);
  const number = words.card(Math.floor(at.face / 2) + 1, at.cards);
  const numberMm = context.metrics.widthMm(number, small.font, small.sizePt);
  const edition = words.edition(words.date(view.edition));
  const foot = (texts: string[]): End[] => [
    { texts, strong: false, side: 'left', yMm: footMm, widthMm: wholeMm - numberMm - BESIDE_MM },
    { texts: [number], strong: false, side: 'right', yMm: footMm, widthMm: wholeMm },
  ];
  if (at.headless) return foot([`${view.kitchenName} · ${edition}`, edition]);
  const head = at.face === 0 ? [view.kitchenName] : [words.continued(view.title), view.title];
  const strong = at.face === 0;
  return [{ texts: head, strong, side: 'left', yMm: headMm, widthMm: wholeMm }, ...foot([edition])];
}

/** Drawn with the corner of the trimmed card at (x, y). */
export function drawFurniture(surface: Surface, parts: FurnitureParts, at: FaceAt): void {
  const { form, context } = parts;
  const { marginMm, widthMm, type } = form;
  const { xMm, yMm } = at;
  const band = rectangle(xMm - BLEED_MM, yMm - BLEED_MM, widthMm + 2 * BLEED_MM, BLEED_MM + BAND_MM);
  surface.path(band, { fill: context.inks.accent });
  for (const { texts, strong, side, yMm: baselineMm, widthMm: roomMm } of endsOf(parts, at)) {
    const font = strong ? 'textBold' : type.small.font;
    const measure = (part: string) => context.metrics.widthMm(part, font, type.small.sizePt);
    const text = roomFor(texts, roomMm, measure);
    const inkMm = measure(text);
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
