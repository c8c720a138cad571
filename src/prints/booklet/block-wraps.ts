/** Small changes to blocks: names for links, and tables that break only well inside. */
import type { SheetContext } from '../sheet/sheet-context.ts';
import { type Block, keptTogether, type Strip } from '../sheet/strip.ts';

/** The block, with names at its top. */
export const anchored =
  (block: Block, names: readonly string[]): Block =>
  (widthMm, context) =>
    block(widthMm, context).map((strip, index) =>
      index > 0
        ? strip
        : {
            ...strip,
            draw(surface, xMm, yMm) {
              for (const name of names) surface.anchor(name, { xMm, yMm });
              strip.draw(surface, xMm, yMm);
            },
          },
    );

const FEWEST_ROWS = 4;

/** A table that leaves at least four rows on either side of a page break; a short one is kept whole. */
export const noShortEnds =
  (block: Block): Block =>
  (widthMm, context) => {
    const strips = block(widthMm, context);
    // The head is the first strip, the foot rule the last.
    const lastKept = strips.length - 1 - FEWEST_ROWS;
    return strips.map((strip, index) =>
      index <= FEWEST_ROWS - 1 || (index >= lastKept && index < strips.length - 1)
        ? { ...strip, keepWithNext: true }
        : strip,
    );
  };

/** Blocks as one, kept on a page where a page can hold them. */
export const keptFromStart =
  (blocks: readonly Block[]): Block =>
  (widthMm, context) =>
    keptTogether(blocks.flatMap((block) => block(widthMm, context)));

/** The blocks, none of them left alone before what follows. */
export const keptWithNext =
  (...blocks: Block[]): Block =>
  (widthMm, context) =>
    blocks.flatMap((block) => block(widthMm, context)).map((strip) => ({ ...strip, keepWithNext: true }));

/** The block with so much space above it. */
export const spaced =
  (block: Block, spaceMm: number): Block =>
  (widthMm, context) =>
    block(widthMm, context).map((strip, index) => (index === 0 ? { ...strip, spaceMm } : strip));

/** How high the blocks stand, one under the other, with the space above the first. */
export function heightOfBlocks(blocks: readonly Block[], widthMm: number, context: SheetContext): number {
  return blocks
    .flatMap((block) => block(widthMm, context))
    .reduce((sum, { heightMm, spaceMm }) => sum + heightMm + spaceMm, 0);
}

/** The block, set once for a width however often it is asked. */
export function setOnce(block: Block): Block {
  let known: { widthMm: number; context: SheetContext; strips: Strip[] } | null = null;
  return (widthMm, context) => {
    if (known === null || known.widthMm !== widthMm || known.context !== context)
      known = { widthMm, context, strips: block(widthMm, context) };
    return known.strips;
  };
}
