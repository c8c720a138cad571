/**
 * Type sizes by reading distance: cap height about distance ÷ 170 for comfort, ÷ 215 at least (ISO 9241-303, from
 * memory). In hand 8 pt and more, on the worktop 14 pt for the numbers one bakes from. Nothing below 8 pt.
 */
import type { FontRole, Palette } from '../../domain/house-style.ts';

export interface TypeStyle {
  font: FontRole;
  sizePt: number;
  /** Baseline to baseline. */
  leadingPt: number;
  colour: keyof Palette;
  tabular?: boolean;
}

const type = (
  font: FontRole,
  sizePt: number,
  leadingPt: number,
  colour: keyof Palette = 'ink',
): TypeStyle => ({ font, sizePt, leadingPt, colour });

export const typeScale = {
  title: type('heading', 27, 31),
  section: type('heading', 16, 20),
  entry: type('heading', 13, 16),
  lead: type('text', 12.5, 17),
  body: type('text', 10.5, 14.5),
  bodyStrong: type('textBold', 10.5, 14.5),
  columnHead: type('textBold', 10, 12),
  columnUnit: type('text', 8.5, 11, 'quietInk'),
  key: { ...type('textBold', 15, 18), tabular: true },
  figure: { ...type('text', 11.5, 15), tabular: true },
  figureNote: { ...type('text', 8.5, 11, 'quietInk'), tabular: true },
  ingredient: type('text', 10.5, 14),
  rowName: type('textBold', 11, 14),
  rowDetail: type('text', 9, 11.5, 'quietInk'),
  rowNote: type('text', 9.5, 12),
  furniture: type('text', 8.5, 11, 'quietInk'),
  furnitureStrong: type('textBold', 8.5, 11, 'accent'),
} satisfies Record<string, TypeStyle>;
