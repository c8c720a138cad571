/**
 * Card sizes in mm, upright or lying as a card is read, and how each is set. A5 and A6: ISO 216, from memory.
 * 3 × 5, 4 × 6 and 5 × 8 in: the usual sizes of American record cards, common practice.
 * Text is 8 pt or more: a card is read in the hand. The method may be set smaller than the front where that saves
 * a whole card, and larger where there is room.
 */
import type { PaperName } from '../../domain/kitchen.ts';
import type { CardSize } from '../../domain/printable.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

export interface CardForm {
  /** As it stands in file names. */
  slug: string;
  /** The paper it belongs with. */
  paper: PaperName;
  widthMm: number;
  heightMm: number;
  marginMm: number;
  /** Tins side by side at most. */
  mostTins: number;
  /** Lying cards: words beside the weights this wide, and the method in columns. Null on upright cards. */
  sideMm: number | null;
  type: CardType;
  /** For the method, largest first. */
  methodTypes: readonly CardType[];
}

export interface CardType {
  title: TypeStyle;
  summary: TypeStyle;
  heading: TypeStyle;
  body: TypeStyle;
  key: TypeStyle;
  figure: TypeStyle;
  small: TypeStyle;
}

/** All sizes of a card follow its body. */
function cardType(bodyPt: number, titlePt: number): CardType {
  const leadingPt = Math.round(bodyPt * 12.4) / 10;
  const body: TypeStyle = { font: 'text', sizePt: bodyPt, leadingPt, colour: 'ink' };
  const figure: TypeStyle = { ...body, tabular: true };
  return {
    title: { font: 'heading', sizePt: titlePt, leadingPt: titlePt * 1.12, colour: 'ink' },
    summary: { ...body, font: 'textItalic', colour: 'quietInk' },
    heading: { font: 'heading', sizePt: bodyPt + 1.5, leadingPt: leadingPt + 1, colour: 'accent' },
    body,
    key: { ...figure, font: 'textBold', sizePt: bodyPt + 4, leadingPt: leadingPt + 3.5 },
    figure: { ...figure, sizePt: bodyPt + 0.5 },
    small: { font: 'text', sizePt: 8, leadingPt: 9.6, colour: 'quietInk' },
  };
}

interface Types {
  titlePt: number;
  bodyPt: number;
  methodPt: readonly number[];
}

const types = ({ titlePt, bodyPt, methodPt }: Types) => ({
  type: cardType(bodyPt, titlePt),
  methodTypes: methodPt.map((sizePt) => cardType(sizePt, titlePt)),
});

const inches = (width: number, height: number) => ({ widthMm: width * 25.4, heightMm: height * 25.4 });

export const cardForms: Record<CardSize, CardForm> = {
  A6: {
    slug: 'a6',
    paper: 'A4',
    widthMm: 105,
    heightMm: 148,
    marginMm: 6.5,
    mostTins: 3,
    sideMm: null,
    ...types({ titlePt: 15, bodyPt: 8.5, methodPt: [9.25, 8.5, 8] }),
  },
  A5: {
    slug: 'a5',
    paper: 'A4',
    widthMm: 148,
    heightMm: 210,
    marginMm: 9,
    mostTins: 4,
    sideMm: null,
    ...types({ titlePt: 21, bodyPt: 10, methodPt: [10, 9, 8.25] }),
  },
  'index 3 x 5 in': {
    slug: '3x5in',
    paper: 'Letter',
    ...inches(5, 3),
    marginMm: 5,
    mostTins: 3,
    sideMm: 32,
    ...types({ titlePt: 12, bodyPt: 8, methodPt: [8.5, 8] }),
  },
  'index 4 x 6 in': {
    slug: '4x6in',
    paper: 'Letter',
    ...inches(6, 4),
    marginMm: 6,
    mostTins: 4,
    sideMm: 42,
    ...types({ titlePt: 15, bodyPt: 8.5, methodPt: [9.25, 8.5, 8] }),
  },
  'index 5 x 8 in': {
    slug: '5x8in',
    paper: 'Letter',
    ...inches(8, 5),
    marginMm: 8,
    mostTins: 5,
    sideMm: 52,
    ...types({ titlePt: 19, bodyPt: 9.5, methodPt: [10, 9.25, 8.5] }),
  },
};

/** Ink runs so far over the edge where a card is cut from a sheet. */
export const BLEED_MM = 3;
