/** Type of the booklet: read in the hand at 40 cm, so 8 pt and more, body 10 pt. */
import type { FontRole, Palette } from '../../domain/house-style.ts';
import type { MethodLook } from '../sheet/method-blocks.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';

const type = (
  font: FontRole,
  sizePt: number,
  leadingPt: number,
  colour: keyof Palette = 'ink',
): TypeStyle => ({ font, sizePt, leadingPt, colour });

export const bookletType = {
  cover: type('heading', 30, 34),
  coverLine: type('text', 11, 14, 'quietInk'),
  part: type('heading', 22, 26, 'accent'),
  title: type('heading', 16, 19),
  heading: type('heading', 11.5, 14),
  lead: type('textItalic', 10.5, 14),
  body: type('text', 10, 12.5),
  strong: type('textBold', 10, 12.5),
  small: type('text', 8.5, 11),
  quiet: type('text', 8.5, 11, 'quietInk'),
  columnHead: type('textBold', 8, 9.6),
  columnUnit: type('text', 8, 9.6, 'quietInk'),
  key: { ...type('textBold', 10, 11), tabular: true },
  figure: { ...type('text', 9, 11), tabular: true },
  figureNote: { ...type('text', 8, 11, 'quietInk'), tabular: true },
  rowName: type('textBold', 9, 11),
  rowWord: type('text', 9, 11),
  furniture: type('text', 8, 10, 'quietInk'),
  folio: type('textBold', 9, 11, 'accent'),
} satisfies Record<string, TypeStyle>;

export const methodLook: MethodLook = {
  heading: bookletType.heading,
  body: bookletType.body,
  gapMm: 1.3,
  headingGapMm: 3,
  level: 3,
};
