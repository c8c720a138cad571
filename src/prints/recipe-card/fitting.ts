/** What of several things goes into a given height: the most pressing first, then set in their own order. */
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block, Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import type { CardParts, Frame } from './card-parts.ts';

/** One thing that a card says. */
export interface Item {
  /** 0 is most pressing. */
  rank: number;
  /** Where it goes when the front has no room: before the method, after it, or nowhere. */
  otherwise: 'before' | 'after' | 'left out';
  /** In the type of the card or, on the back, in the method's. */
  blocks(parts: CardParts): Block[];
}

/** An item set in the type of the front. */
export interface SetItem {
  item: Item;
  block: Block;
}

export interface Fitted {
  taken: Block[];
  left: SetItem[];
  /** Height that stays free. */
  spareMm: number;
}

/** Height of strips one under the other, with the space above the first. */
const strippedMm = (strips: readonly Strip[]): number =>
  strips.reduce((sum, { heightMm, spaceMm }) => sum + spaceMm + heightMm, 0);

/** The same without the space above the first: what they take at the top of a column. */
export const stackedMm = (strips: readonly Strip[]): number => strippedMm(strips) - (strips[0]?.spaceMm ?? 0);

/** Draws strips one under the other. */
export function drawDown(strips: readonly Strip[], surface: Surface, xMm: number, yMm: number): void {
  let y = yMm;
  for (const [index, strip] of strips.entries()) {
    if (index > 0) y += strip.spaceMm;
    strip.draw(surface, xMm, y);
    y += strip.heightMm;
  }
}

/** Several blocks as one, set once for each width. */
export function setOnce(...blocks: Block[]): Block {
  const known = new Map<number, Strip[]>();
  return (widthMm, context) => {
    const found = known.get(widthMm);
    if (found !== undefined) return found;
    const strips = blocks.flatMap((block) => block(widthMm, context));
    known.set(widthMm, strips);
    return strips;
  };
}

export const setItems = (items: readonly Item[], parts: CardParts): SetItem[] =>
  items.map((item) => ({ item, block: setOnce(...item.blocks(parts)) }));

/** Sums of heights that should be equal may differ so much. */
const SLACK_MM = 1e-6;

/** Items that fit the frame together; what does not is left, in order. */
export function fitted(items: readonly SetItem[], frame: Frame, context: SheetContext): Fitted {
  const taken = new Set<SetItem>();
  let used = 0;
  for (const one of [...items].sort((a, b) => a.item.rank - b.item.rank)) {
    const height = strippedMm(one.block(frame.widthMm, context));
    if (used + height > frame.heightMm + SLACK_MM) continue;
    taken.add(one);
    used += height;
  }
  return {
    taken: items.filter((one) => taken.has(one)).map(({ block }) => block),
    left: items.filter((one) => !taken.has(one)),
    spareMm: frame.heightMm - used,
  };
}

/** What found no room and is to stand before or after the method. */
export const otherwise = (left: readonly SetItem[], place: Item['otherwise']): Item[] =>
  left.map(({ item }) => item).filter((item) => item.otherwise === place);
