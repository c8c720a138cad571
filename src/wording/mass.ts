/** Weights as people say them: whole grams, with decimals only where the scale's step is finer. */
import { formatNumber } from './number.ts';

/** A line to weigh, exactly as rounded: 250 → '250', 12.5 → '12.5'. */
export const formatGrams = (massG: number): string => formatNumber(massG, 3);

/** A total or a tin's share, to the gram; below 10 g to the tenth. */
export const formatWholeGrams = (massG: number): string => formatNumber(massG, Math.abs(massG) < 10 ? 1 : 0);
