/**
 * A tin of several cups baked at once: bun tins, muffin tins, trays of mini moulds. It stands in the oven by its
 * own length and width; batter goes by the cup. Lengths mm.
 */
import type { TinForm } from './tin.ts';
import type { LengthUnit } from './units.ts';

/** When to look at small cakes first, and by when they are out. Minutes. */
export interface SmallBake {
  firstLookMin: number;
  byMin: number;
  /** Conventional °C; left out: the recipe's. */
  ovenC?: number;
}

export interface BunTin {
  id: string;
  name: string;
  cups: number;
  /** One cup, inside. */
  cup: TinForm;
  /** Outside, rim and handles counted. */
  lengthMm: number;
  widthMm: number;
  owned: number;
  unit: LengthUnit;
  /** How small cakes bake in it, where an order does not say. */
  bake?: SmallBake;
  note?: string;
}
