/**
 * One kind of print in two steps. What a print shows is told first, as plain data; drawing it takes a hundred times
 * as long, and has nothing but that data, a house style and its fonts to go by. So a print that was drawn from the
 * same before need not be drawn again.
 */
import type { HouseStyle } from '../domain/house-style.ts';
import type { WantedSource } from './catalogue.ts';
import type { Metrics, Print } from './sheet/surface.ts';

export interface PrintableOf<Input> {
  /** As `printables:` in kitchen.yaml names it; its prints lie in the folder of the same name, in the plural. */
  kind: string;
  /** What is to be drawn, piece by piece: JSON-safe, everything that the drawing needs and nothing else. */
  inputs(source: WantedSource): Iterable<Input>;
  draw(input: Input, style: HouseStyle, metrics: Metrics): Print[];
}

/** A printable in the catalogue: its drawing gets back what its inputs were written as. */
export type Printable = PrintableOf<unknown>;

/** What one or a few prints are drawn from, as text: it can be handed to a thread, and hashed. */
export interface PrintPiece {
  kind: string;
  /** Folder of an entry of `printables` that has a name; null for the usual place. */
  folder: string | null;
  /** JSON. */
  input: string;
}

/** Enters a printable into the catalogue. */
export const printable = <Input>(one: PrintableOf<Input>): Printable => ({
  ...one,
  draw: (input, style, metrics) => one.draw(input as Input, style, metrics),
});
