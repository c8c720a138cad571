/**
 * What a page is filled with: strips that are never split, one under the other. A block (heading, paragraph, table)
 * gives strips for a width; the flow puts them on pages.
 */
import type { SheetContext } from './sheet-context.ts';
import type { Surface } from './surface.ts';

export interface Strip {
  heightMm: number;
  /** Space above, dropped at the top of a page. */
  spaceMm: number;
  /** Never the last strip on a page when another follows. */
  keepWithNext: boolean;
  draw(surface: Surface, xMm: number, yMm: number): void;
  /** Drawn above the strip where a page begins with it: a table's repeated header. */
  repeated?: { heightMm: number; draw(surface: Surface, xMm: number, yMm: number): void };
}

export type Block = (widthMm: number, context: SheetContext) => Strip[];

/** Marks all strips but the last as belonging together. */
export const keptTogether = (strips: Strip[]): Strip[] =>
  strips.map((strip, index) => (index < strips.length - 1 ? { ...strip, keepWithNext: true } : strip));

/** No single line or row alone at the foot or the head of a page. */
export const withoutLonely = (strips: Strip[]): Strip[] =>
  strips.map((strip, index) =>
    index === 0 || index === strips.length - 2
      ? { ...strip, keepWithNext: strips.length > 1 || strip.keepWithNext }
      : strip,
  );
