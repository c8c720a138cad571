import type { Shape } from './shape.ts';
import type { LengthUnit } from './units.ts';

/** A shape with a depth: all that volume, lining and drawing need. */
export interface TinForm {
  shape: Shape;
  depthMm: number;
  /** Water the tin was seen to hold, level with the rim, mL. Overrides the formula's volume by scaling it. */
  measuredVolumeMl?: number;
}

export type TinMaterial = 'bright aluminium' | 'dark' | 'glass or ceramic' | 'silicone' | 'tinned steel';
export const TIN_MATERIALS: readonly TinMaterial[] = [
  'bright aluminium',
  'dark',
  'glass or ceramic',
  'silicone',
  'tinned steel',
];

/** A baking vessel. */
export interface Tin extends TinForm {
  id: string;
  name: string;
  /** How many of it are on the shelf; 0 for a tin described on the spot. */
  owned: number;
  /** The unit the baker named it in: printed first. */
  unit: LengthUnit;
  material?: TinMaterial;
  note?: string;
}

/** Some tins of one kind, filled together. */
export interface TinCount {
  tin: Tin;
  count: number;
}
