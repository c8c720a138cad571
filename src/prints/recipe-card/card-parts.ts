/** What a card is set from, and the room it has. */
import type { RecipeCardView } from '../../views/recipe-card.types.ts';
import type { RecipeCardWords } from '../../wording/recipe-card/index.ts';
import type { QrCode } from '../qr.ts';
import type { MethodLook } from '../sheet/method-blocks.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import type { CardForm } from './card-size.ts';

/** What several cards have in common, worked out once. */
export interface CardStore {
  /** Methods set already, by type and text: a recipe's flavours share theirs. */
  methods: Map<string, Block[]>;
  /** Codes by what they say: every size of a card has the same. */
  codes: Map<string, QrCode>;
}

export const cardStore = (): CardStore => ({ methods: new Map(), codes: new Map() });

export interface CardParts {
  view: RecipeCardView;
  form: CardForm;
  words: RecipeCardWords;
  context: SheetContext;
  kept: CardStore;
}

/** Drawn with the corner of the trimmed card at (x, y); ink runs over the edge by the bleed. */
export interface CardFace {
  draw(surface: Surface, xMm: number, yMm: number): void;
}

/** What is said on a face, drawn with the corner of its frame at (x, y). */
export interface FaceContent {
  /** Whether the line above the frame is free: the front of a lying card begins there. */
  fromTop: boolean;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

export interface Frame {
  widthMm: number;
  heightMm: number;
}

/** A line above the frame and one below. */
export const HEAD_MM = 4.6;
const FOOT_MM = 5.4;
export const COLUMN_GAP_MM = 5;

export const frameOf = ({ widthMm, heightMm, marginMm }: CardForm): Frame => ({
  widthMm: widthMm - 2 * marginMm,
  heightMm: heightMm - 2 * marginMm - HEAD_MM - FOOT_MM,
});

export const lookOf = ({ type }: CardForm): MethodLook => ({
  heading: type.heading,
  body: type.body,
  gapMm: type.body.sizePt * 0.1,
  headingGapMm: type.body.sizePt * 0.2,
  level: 3,
  whole: true,
});
