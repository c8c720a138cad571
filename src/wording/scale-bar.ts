/** How long the bar beside drawings to scale is: whole centimetres, or whole inches where people measure in those. */
import type { Locale } from '../domain/kitchen.ts';
import { MM_PER } from '../domain/units.ts';

/** Short beside cakes and shelves, long beside tins. */
export type BarLength = 'short' | 'long';

const LENGTHS: Record<Locale, Record<BarLength, number>> = {
  'en-GB': { short: 10 * MM_PER.cm, long: 20 * MM_PER.cm },
  'en-US': { short: 4 * MM_PER.in, long: 8 * MM_PER.in },
};

/**
 * The true length that a scale bar stands for.
 * @example scaleBarMm('en-US', 'short') // 101.6
 */
export const scaleBarMm = (locale: Locale, length: BarLength): number => LENGTHS[locale][length];
