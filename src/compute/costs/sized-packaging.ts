/**
 * What does a board or a box cost by its width? Each takes the narrowest size sold that is as wide or wider. What is
 * wider than all sizes, or of a width that nobody knows, is reckoned at the line's own price; lines without sizes are
 * one price for every width.
 */
import type { PackagingCost } from '../../domain/costs.ts';
import type { OrderPieces } from './order-pieces.ts';

export interface SizedPackaging {
  eachMinor: number;
  count: number;
  /** The size that is taken; null at the line's own price. */
  sizeMm: number | null;
  /** Widths that are asked for, widest first, mm. */
  forMm: number[];
}

/** A board is as wide as its size says, give or take: half a millimetre is no size smaller. */
const SLACK_MM = 0.5;

/** Everything one line comes to, widest first; nothing where none of it is taken. */
export function sizedPackaging(
  { per, eachMinor, sizes = [] }: PackagingCost,
  { counts, widthsMm }: Pick<OrderPieces, 'counts'> & Partial<Pick<OrderPieces, 'widthsMm'>>,
): SizedPackaging[] {
  const count = counts[per];
  if (count === 0) return [];
  const known = per === 'drum' || per === 'card' || per === 'cake box' ? (widthsMm?.[per] ?? []) : [];
  const asked = [...known].sort((a, b) => b - a);
  const sizeFor = (wideMm: number) => sizes.find(({ acrossMm }) => acrossMm >= wideMm - SLACK_MM);
  const taken = [...sizes].reverse().flatMap((size): SizedPackaging[] => {
    const forMm = asked.filter((wideMm) => sizeFor(wideMm) === size);
    if (forMm.length === 0) return [];
    return [{ eachMinor: size.eachMinor, count: forMm.length, sizeMm: size.acrossMm, forMm }];
  });
  const left = count - taken.reduce((sum, one) => sum + one.count, 0);
  if (left === 0) return taken;
  const forMm = asked.filter((wideMm) => sizeFor(wideMm) === undefined);
  return [{ eachMinor, count: left, sizeMm: null, forMm }, ...taken];
}
