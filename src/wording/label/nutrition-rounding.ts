/**
 * Figures of a nutrition table as each country rounds them.
 * EU and UK: European Commission, Guidance on tolerances for nutrient values (December 2012), table 4, from memory:
 * energy to 1; fat, carbohydrate, sugars, protein, fibre: 10 g and more to 1 g, below to 0.1 g, 0.5 g or less
 * '<0.5'; saturates alike down to 0.1 g; salt 1 g and more to 0.1 g, below to 0.01 g, 0.0125 g or less '<0.01'.
 * US: 21 CFR 101.9(c)(1) to (8), from memory: calories up to 50 to 5, above to 10, below 5 are 0; fat below 5 g to
 * 0.5 g, above to 1 g, below 0.5 g is 0; sodium 5 to 140 mg to 5 mg, above to 10 mg; the rest to 1 g, below 1 g
 * 'less than 1', below 0.5 g is 0.
 */
import { formatFixed, formatNumber } from '../number.ts';

export type RoundedAs = 'energy' | 'major' | 'saturates' | 'salt';

/** A share of a step under a half goes down: 2.45 to 0.1 is 2.5, told from its thousandths. */
const toStep = (value: number, step: number): number =>
  Math.round(Math.round(value * 1000) / (step * 1000)) * step;

/** As printed in the EU and the UK, without the unit; `noughts` is the most that is told as '<'. */
function euGrams(value: number, least: number, fine: number, coarseFrom: number): string {
  if (value === 0) return '0';
  const decimals = fine === 0.01 ? 2 : 1;
  if (value <= least) return `<${formatNumber(fine === 0.01 ? 0.01 : least, 2)}`;
  const rounded = toStep(value, fine);
  if (rounded < coarseFrom) return formatFixed(rounded, decimals);
  return coarseFrom === 1 ? formatFixed(value, 1) : formatFixed(value, 0);
}

/** A figure of 100 g or a portion, by the EU's guidance. */
export function euFigure(value: number, as: RoundedAs): string {
  if (as === 'energy') return formatNumber(value, 0);
  if (as === 'salt') return euGrams(value, 0.0125, 0.01, 1);
  return as === 'saturates' ? euGrams(value, 0.1, 0.1, 10) : euGrams(value, 0.5, 0.1, 10);
}

export type RoundedUs = 'calories' | 'fat' | 'sodium' | 'other';

/** A figure of a serving, by the US rules; sodium in mg, the rest in g. */
export function usFigure(value: number, as: RoundedUs): string {
  if (as === 'calories') return formatNumber(value < 5 ? 0 : toStep(value, value <= 50 ? 5 : 10), 0);
  if (as === 'sodium') return formatNumber(value < 5 ? 0 : toStep(value, value <= 140 ? 5 : 10), 0);
  if (value < 0.5) return '0';
  if (as === 'fat') return formatNumber(toStep(value, value < 5 ? 0.5 : 1), 1);
  return value < 1 ? 'less than 1' : formatNumber(value, 0);
}
