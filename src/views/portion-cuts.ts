/** How the cake from one tin is cut in one size of portion: counts, and the lines for the knife. */

import { gridLines, ringLines } from '../compute/portions/knife-lines.ts';
import { type TinPortions, tinPortions } from '../compute/portions/tin-portions.ts';
import type { PortionSize } from '../domain/portion.ts';
import type { Tin } from '../domain/tin.ts';
import type { LengthUnit } from '../domain/units.ts';
import { formatLength, formatLengthValue } from '../wording/length.ts';
import { formatNumber } from '../wording/number.ts';
import type { PortionsWords } from '../wording/portions/index.ts';
import { countFigure } from './figures.ts';
import type { RingsGuide, TinCut } from './portions.types.ts';

/** 'Dessert, 1 × 2 in' */
export function portionText(size: PortionSize, unit: LengthUnit, words: PortionsWords): string {
  const long = formatLength(size.longMm, unit);
  return words.size(words.sizeNames[size.id], formatLengthValue(size.shortMm, unit), long);
}

function ringsGuide({ rings }: TinPortions, tin: Tin, words: PortionsWords): RingsGuide | null {
  if (rings === null) return null;
  const { circlesMm, spokes } = ringLines(rings);
  const total = countFigure(rings.total);
  const radii = circlesMm.map((radius) => formatLength(radius, tin.unit));
  const slices = rings.rings.map((ring) => formatNumber(ring.slices, 0));
  return {
    count: total,
    detail: words.ringDetail(slices, rings.core === 1),
    circlesMm,
    circlesText: radii.length === 0 ? '' : words.circles(radii),
    spokes,
    alt: words.ringAlt(tin.name, total.text, radii),
  };
}

/** Null for a tin whose cake is not cut in pieces. */
export function tinCut(tin: Tin, size: PortionSize, words: PortionsWords): TinCut | null {
  const portions = tinPortions(tin, size);
  if (portions === null) return null;
  const { rows, outline } = portions;
  const good = countFigure(rows.good);
  return {
    sizeId: size.id,
    rows: {
      count: good,
      whole: countFigure(rows.whole),
      lines: gridLines(outline, rows),
      alt: words.guideAlt(tin.name, good.text, portionText(size, tin.unit, words)),
    },
    rings: ringsGuide(portions, tin, words),
  };
}
