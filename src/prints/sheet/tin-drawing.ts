/**
 * A tin to scale: plan and elevation, from the same outline that the sums use. The plan's rim is 0.5 pt and
 * its base 0.25 pt; the elevation's wall, cut through, is 0.75 pt.
 */
import { outlineBounds, outlinePath } from '../../compute/outline/index.ts';
import type { Palette } from '../../domain/house-style.ts';
import type { Outline } from '../../domain/outline.ts';
import type { TinPicture } from '../../views/tin-picture.ts';
import { lineWeightPt } from './rules.ts';
import type { SheetContext } from './sheet-context.ts';
import type { PathStep, Surface } from './surface.ts';
import type { Drawing } from './table/types.ts';

/** Elevation right of the plan, or below it where a column is narrow. */
export type Arrangement = 'beside' | 'below';

/** For drawings that are seen from further away than the hand. */
export interface DrawingLook {
  /** All lines heavier by this factor. */
  weight: number;
  fill: keyof Palette;
}

const IN_HAND: DrawingLook = { weight: 1, fill: 'paper' };

const GAP_MM = { beside: 2.2, below: 1.3 };
const DASH_MM = [0.6, 0.6];

/** Scales that a ruler's reader can work with. */
const scales = [5, 8, 10, 12, 15, 16, 20, 25, 30, 40, 50];

export interface DrawingField {
  widthMm: number;
  heightMm: number;
}

/** What a picture takes at a scale, mm. */
function extent(picture: TinPicture, scale: number, arrangement: Arrangement): DrawingField {
  const { widthMm, heightMm, depthMm } = picture;
  return arrangement === 'beside'
    ? { widthMm: (2 * widthMm) / scale + GAP_MM.beside, heightMm: Math.max(heightMm, depthMm) / scale }
    : { widthMm: widthMm / scale, heightMm: (heightMm + depthMm) / scale + GAP_MM.below };
}

/** Scale (1 : n) at which every picture fits the field; the coarsest when none does. */
export function commonScale(pictures: TinPicture[], field: DrawingField, arrangement: Arrangement): number {
  const fits = (scale: number) =>
    pictures.every((picture) => {
      const taken = extent(picture, scale, arrangement);
      return taken.widthMm <= field.widthMm && taken.heightMm <= field.heightMm;
    });
  return scales.find(fits) ?? scales.at(-1) ?? 1;
}

export function placed(steps: PathStep[], scale: number, xMm: number, yMm: number): PathStep[] {
  const x = (value: number) => xMm + value / scale;
  const y = (value: number) => yMm + value / scale;
  return steps.map((step) => {
    if (step.op === 'close') return step;
    if (step.op !== 'cubic') return { op: step.op, x: x(step.x), y: y(step.y) };
    return {
      op: 'cubic',
      x1: x(step.x1),
      y1: y(step.y1),
      x2: x(step.x2),
      y2: y(step.y2),
      x: x(step.x),
      y: y(step.y),
    };
  });
}

/** Half a dome from rim to bottom and up again: an arc of the sphere through rim and bottom, as two cubics. */
function domeProfile(halfMm: number, depthMm: number): PathStep[] {
  const radius = (halfMm * halfMm + depthMm * depthMm) / (2 * depthMm);
  const angle = Math.atan2(halfMm, radius - depthMm);
  const reach = (4 / 3) * Math.tan(angle / 4) * radius;
  const alongX = reach * Math.cos(angle);
  const alongY = reach * Math.sin(angle);
  return [
    { op: 'move', x: -halfMm, y: 0 },
    { op: 'cubic', x1: alongX - halfMm, y1: alongY, x2: -reach, y2: depthMm, x: 0, y: depthMm },
    { op: 'cubic', x1: reach, y1: depthMm, x2: halfMm - alongX, y2: alongY, x: halfMm, y: 0 },
  ];
}

function wallProfile(halfMm: number, baseHalfMm: number, depthMm: number): PathStep[] {
  return [
    { op: 'move', x: -halfMm, y: 0 },
    { op: 'line', x: -baseHalfMm, y: depthMm },
    { op: 'line', x: baseHalfMm, y: depthMm },
    { op: 'line', x: halfMm, y: 0 },
  ];
}

function profileSteps(picture: TinPicture): PathStep[] {
  const half = picture.widthMm / 2;
  if (picture.profile === 'dome') return domeProfile(half, picture.depthMm);
  const base = picture.basePlan ? outlineBounds(picture.basePlan) : null;
  return wallProfile(half, base ? (base.maxX - base.minX) / 2 : half, picture.depthMm);
}

function drawPlan(
  surface: Surface,
  context: SheetContext,
  plan: Outline,
  base: Outline | null,
  at: { scale: number; xMm: number; yMm: number },
  { weight, fill }: DrawingLook,
) {
  const path = (outline: Outline) => placed(outlinePath(outline), at.scale, at.xMm, at.yMm);
  surface.path(path(plan), {
    fill: context.inks[fill],
    stroke: context.inks.ink,
    lineWidthPt: lineWeightPt.outline * weight,
    evenOdd: true,
  });
  const lineWidthPt = lineWeightPt.thin * weight;
  if (base) surface.path(path(base), { stroke: context.inks.ink, lineWidthPt });
}

function drawElevation(
  surface: Surface,
  context: SheetContext,
  picture: TinPicture,
  at: { scale: number; xMm: number; yMm: number },
  weight: number,
) {
  const rim: PathStep[] = [
    { op: 'move', x: -picture.widthMm / 2, y: 0 },
    { op: 'line', x: picture.widthMm / 2, y: 0 },
  ];
  const path = (steps: PathStep[]) => placed(steps, at.scale, at.xMm, at.yMm);
  surface.path(path(profileSteps(picture)), {
    stroke: context.inks.ink,
    lineWidthPt: lineWeightPt.cut * weight,
  });
  const dashMm = DASH_MM.map((mm) => mm * weight);
  surface.path(path(rim), { stroke: context.inks.ink, lineWidthPt: lineWeightPt.thin * weight, dashMm });
}

/** Null for a tin known only by the water it holds: there is no plan to draw. */
export function tinDrawing(
  picture: TinPicture,
  scale: number,
  arrangement: Arrangement,
  context: SheetContext,
  look: DrawingLook = IN_HAND,
): Drawing | null {
  const { plan } = picture;
  if (plan === null) return null;
  const bounds = outlineBounds(plan);
  const size = extent(picture, scale, arrangement);
  const halfMm = picture.widthMm / 2 / scale;
  const elevationMm = picture.depthMm / scale;
  const planMm = picture.heightMm / scale;
  return {
    ...size,
    alt: picture.alt,
    draw(surface, xMm, yMm) {
      const foot = yMm + size.heightMm;
      const planTop = arrangement === 'beside' ? foot - planMm : yMm;
      const shiftX = (bounds.minX + bounds.maxX) / 2 / scale;
      const shiftY = (bounds.minY + bounds.maxY) / 2 / scale;
      const planAt = { scale, xMm: xMm + halfMm - shiftX, yMm: planTop + planMm / 2 + shiftY };
      drawPlan(surface, context, plan, picture.basePlan, planAt, look);
      const centre = arrangement === 'beside' ? xMm + size.widthMm - halfMm : xMm + halfMm;
      drawElevation(surface, context, picture, { scale, xMm: centre, yMm: foot - elevationMm }, look.weight);
    },
  };
}
