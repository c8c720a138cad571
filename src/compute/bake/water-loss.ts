/**
 * How much of the batter leaves the oven as steam? 1 − baked mass ÷ batter, a running mean of the log's weighings
 * that starts from the trade's figure: 10 % (7 to 13) for sponge, 6 % (4 to 10) for fruit (common practice); one
 * weighing scatters by about 1.5 % (house rule).
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import type { ClassId } from './recipe-class.ts';

export interface WaterLoss {
  share: number;
  /** One standard deviation. */
  sd: number;
  /** Rows that carry the baked mass. */
  bakes: number;
  /** What they say, in order: batter and baked mass of one tin, g. */
  weighed: { batterG: number; massOutG: number }[];
  /** The trade's figure that it starts from. */
  prior: { share: number; sd: number };
}

export const WEIGHING_SD = 0.015;

/** Share of the batter that leaves as steam, from the trade's figure and the log together. */
export function waterLoss(rows: readonly BakeLogRow[], classId: ClassId): WaterLoss {
  const weighed = rows.flatMap(({ batterG, massOutG }) =>
    massOutG === undefined ? [] : [{ batterG, massOutG }],
  );
  const prior = classId === 'rich fruit' ? { share: 0.06, sd: 0.018 } : { share: 0.1, sd: 0.018 };
  const priorWeight = 1 / (prior.sd * prior.sd);
  const weight = 1 / (WEIGHING_SD * WEIGHING_SD);
  const total = priorWeight + weighed.length * weight;
  const sum = weighed.reduce(
    (all, { batterG, massOutG }) => all + (1 - massOutG / batterG) * weight,
    prior.share * priorWeight,
  );
  return {
    share: quantiseRatio(sum / total),
    sd: quantiseRatio(1 / Math.sqrt(total)),
    bakes: weighed.length,
    weighed,
    prior,
  };
}
