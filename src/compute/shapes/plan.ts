/** The plan of a tin: its outline at the rim and at the base, floor area, wall length and bounding box. */
import type { Outline } from '../../domain/outline.ts';
import { quantiseMm, quantiseMm2 } from '../../domain/quantise.ts';
import type { TinForm } from '../../domain/tin.ts';
import { outlineBounds } from '../outline/bounds.ts';
import { settleOutline } from '../outline/settle.ts';
import { ruleFor } from './shape-rules.ts';

/** Outline at the rim, mm, centred, y up; null for a tin known only by the water it holds. */
export function tinOutline({ shape }: TinForm): Outline | null {
  const outline = ruleFor(shape).outline(shape);
  return outline === null ? null : settleOutline(outline);
}

/** Outline at the base where the wall tapers; null when it is the rim's, a point (dome) or unknown. */
export function tinBaseOutline({ shape }: TinForm): Outline | null {
  const outline = ruleFor(shape).baseOutline(shape);
  return outline === null ? null : settleOutline(outline);
}

/** Inside area at the rim, mm²; null when unknown. An 8 in round: 32 429.28. */
export function planAreaMm2({ shape }: TinForm): number | null {
  const area = ruleFor(shape).areaMm2(shape);
  return area === null ? null : quantiseMm2(area);
}

/** Wall length at the rim, mm; a ring's counts outer wall and tube; null when unknown. An 8 in round: 638.372. */
export function perimeterMm({ shape }: TinForm): number | null {
  const perimeter = ruleFor(shape).perimeterMm(shape);
  return perimeter === null ? null : quantiseMm(perimeter);
}

/** Bounding box of the plan at the rim, mm (height is the plan's, not the tin's depth); null when unknown. */
export function tinBoundsMm({ shape }: TinForm): { widthMm: number; heightMm: number } | null {
  const outline = ruleFor(shape).outline(shape);
  if (outline === null) return null;
  const { minX, minY, maxX, maxY } = outlineBounds(outline);
  return { widthMm: quantiseMm(maxX - minX), heightMm: quantiseMm(maxY - minY) };
}
