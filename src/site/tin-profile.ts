/** A tin seen from the side: rim at y = 0, base at y = depth, mm, y down, with the rolled rim turned out. */
import { outlineBounds } from '../compute/outline/index.ts';
import type { Outline } from '../domain/outline.ts';
import type { TinPicture } from '../views/tin-picture.ts';

const RIM_MM = 3;

/** To a tenth of a millimetre: finer than any screen draws. */
export const tenth = (mm: number): number => Math.round(mm * 10) / 10;

/** Half the width of the side view; a tin without a plan is drawn as wide as it is deep. */
export function halfWidthMm(picture: TinPicture): number {
  return picture.plan ? picture.widthMm / 2 : picture.depthMm * 0.6;
}

function halfBaseMm(picture: TinPicture): number {
  if (!picture.basePlan) return halfWidthMm(picture);
  const { minX, maxX } = outlineBounds(picture.basePlan);
  return (maxX - minX) / 2;
}

/** The wall, cut through the middle: the `d` of an SVG path. */
export function profilePath(picture: TinPicture): string {
  const half = tenth(halfWidthMm(picture));
  const depth = tenth(picture.depthMm);
  const start = `M${-half - RIM_MM} 0H${-half}`;
  if (picture.profile === 'dome') {
    const radius = tenth((half * half + depth * depth) / (2 * depth));
    return `${start}A${radius} ${radius} 0 0 0 ${half} 0H${half + RIM_MM}`;
  }
  const base = tenth(halfBaseMm(picture));
  return `${start}L${-base} ${depth}H${base}L${half} 0H${half + RIM_MM}`;
}

function holeEdges(plan: Outline): number[] {
  const outer = outlineBounds(plan);
  return plan.rings
    .map((ring) => outlineBounds({ rings: [ring] }))
    .filter((box) => box.minX > outer.minX || box.maxX < outer.maxX)
    .flatMap((box) => [box.minX, box.maxX]);
}

/** Edges of a tube or a hole, hidden behind the wall: drawn dashed; '' when there are none. */
export function hiddenPath(picture: TinPicture): string {
  const depth = tenth(picture.depthMm);
  return picture.plan
    ? holeEdges(picture.plan)
        .map((x) => `M${tenth(x)} 0V${depth}`)
        .join('')
    : '';
}
