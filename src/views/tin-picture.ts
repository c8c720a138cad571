import type { Outline } from '../domain/outline.ts';

/** What a drawing of a tin needs; plan and elevation to the same scale, mm. */
export interface TinPicture {
  /** Null for a tin known only by the water it holds. */
  plan: Outline | null;
  /** Outline of the base where the wall tapers; null when it is the plan. */
  basePlan: Outline | null;
  /** Bounding box of the plan; 0 when there is no plan. */
  widthMm: number;
  heightMm: number;
  depthMm: number;
  profile: 'straight' | 'tapered' | 'dome';
  /** Alternative text: 'Round tin, 8 in across and 3 in deep'. */
  alt: string;
}
