/**
 * Card sizes in mm, upright or lengthwise as a card is read, and how each is set. A5 and A6: ISO 216, from memory.
 * 3 × 5, 4 × 6 and 5 × 8 in: the usual sizes of American record cards, common practice.
 * Text is 8 pt or more: a card is read in the hand.
 */
import type { CardSize } from '../../domain/printable.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

export interface CardForm {
  /** As it stands in file names. */
  slug: string;
  widthMm: number;
  heightMm: number;
  /** Tins side by side at most. */
  mostTins: number;
  marginMm: number;
  type: CardType;
}

export interface CardType {
  title: TypeStyle;
  summary: TypeStyle;
  heading: TypeStyle;
  body: TypeStyle;
  key: TypeStyle;
  figure: TypeStyle;
  label: TypeStyle;
  small: TypeStyle;
}

/** All sizes of a card follow its body: 8.5 pt on small cards, 10 on large ones. */
function cardType(bodyPt: number, titlePt: number): CardType {
  const leadingPt = Math.round(bodyPt * 12.6) / 10;
  const body: TypeStyle = { font: 'text', sizePt: bodyPt, leadingPt, colour: 'ink' };
  const figure: TypeStyle = { ...body, tabular: true };
  return {
    title: { font: 'heading', sizePt: titlePt, leadingPt: titlePt * 1.12, colour: 'ink' },
    summary: { ...body, font: 'textItalic', colour: 'quietInk' },
    heading: { font: 'heading', sizePt: bodyPt + 1.5, leadingPt: leadingPt + 1, colour: 'accent' },
    body,
    key: { ...figure, font: 'textBold', sizePt: bodyPt + 4, leadingPt: leadingPt + 4 },
    figure: { ...figure, sizePt: bodyPt + 0.5 },
    label: body,
    small: { font: 'text', sizePt: 8, leadingPt: 10, colour: 'quietInk' },
  };
}

export const cardForms: Record<CardSize, CardForm> = {
  A6: { slug: 'a6', widthMm: 105, heightMm: 148, mostTins: 3, marginMm: 7, type: cardType(8.5, 15) },
  A5: { slug: 'a5', widthMm: 148, heightMm: 210, mostTins: 4, marginMm: 10, type: cardType(10, 21) },
  'index 3 x 5 in': {
    slug: '3x5in',
    widthMm: 127,
    heightMm: 76.2,
    mostTins: 3,
    marginMm: 6,
    type: cardType(8.5, 13),
  },
  'index 4 x 6 in': {
    slug: '4x6in',
    widthMm: 152.4,
    heightMm: 101.6,
    mostTins: 4,
    marginMm: 7,
    type: cardType(8.5, 15),
  },
  'index 5 x 8 in': {
    slug: '5x8in',
    widthMm: 203.2,
    heightMm: 127,
    mostTins: 5,
    marginMm: 9,
    type: cardType(9.5, 19),
  },
};

/** Ink runs so far over the edge where a card is cut from a sheet. */
export const BLEED_MM = 3;
