/** Which prints a kitchen wants, of what, on which paper and in which unit of weight. */
import type { PaperName } from './kitchen.ts';

export type PrintKind =
  | 'tin-chart'
  | 'finishing-chart'
  | 'bake-guide'
  | 'recipe-card'
  | 'finish-card'
  | 'booklet'
  | 'wall-reference'
  | 'cutting-guide'
  | 'label'
  | 'order-sheet'
  | 'stack-sheet'
  | 'shopping-list'
  | 'quote'
  | 'day-sheet'
  | 'oven-plan'
  | 'lining-template';
export const PRINT_KINDS: readonly PrintKind[] = [
  'tin-chart',
  'finishing-chart',
  'bake-guide',
  'recipe-card',
  'finish-card',
  'booklet',
  'wall-reference',
  'cutting-guide',
  'label',
  'order-sheet',
  'stack-sheet',
  'shopping-list',
  'quote',
  'day-sheet',
  'oven-plan',
  'lining-template',
];

/** A5 and A6: ISO 216. The index sizes are the usual ones of American record cards. */
export type CardSize = 'A5' | 'A6' | 'index 3 x 5 in' | 'index 4 x 6 in' | 'index 5 x 8 in';
export const CARD_SIZES: readonly CardSize[] = [
  'A5',
  'A6',
  'index 3 x 5 in',
  'index 4 x 6 in',
  'index 5 x 8 in',
];

/** A3 and A2: ISO 216. The others are ANSI B and C. */
export type WallSize = 'A3' | 'A2' | '11 x 17 in' | '17 x 22 in';
export const WALL_SIZES: readonly WallSize[] = ['A3', 'A2', '11 x 17 in', '17 x 22 in'];

/** A list that is left out means everything there is. */
export interface Printable {
  print: PrintKind;
  /** Sets the files of this entry apart from the usual ones: 'my-four'. */
  name?: string;
  recipeIds?: string[];
  /** One combination, in order; empty for the plain recipe. Left out: plain, and every flavour that suits. */
  flavourIds?: string[];
  tinIds?: string[];
  finishIds?: string[];
  orderIds?: string[];
  papers?: PaperName[];
  cardSizes?: CardSize[];
  wallSizes?: WallSize[];
  /** Left out: the kitchen's country's. */
  mass?: 'g' | 'oz';
}

/** Office paper of 80 g/m², mm: common practice, no source. */
export const USUAL_PAPER_MM = 0.1;

/** Words for the booklet that only the baker can give, and what it is printed on. */
export interface BookletSettings {
  editionNote?: string;
  licence?: string;
  preparedFor?: string;
  /** One leaf of the paper, mm: how far each folded sheet pushes the next one out. */
  paperThicknessMm?: number;
}
