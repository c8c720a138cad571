/**
 * What the log says of a recipe's own yield and water loss. Yield density is batter ÷ finished volume, least
 * squares through the origin, as for proven bakes. Water loss is 1 − baked mass ÷ batter, a running mean that
 * starts from the trade's figure: 10 % (7 to 13) for sponge, 6 % (4 to 10) for fruit (common practice); one
 * weighing scatters by about 1.5 %.
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { volumeToHeightMl } from '../shapes/index.ts';
import type { ClassId } from './recipe-class.ts';

export interface LogYield {
  gPerMl: number;
  /** Rows that carry a finished height. */
  bakes: number;
  /** Largest departure of a row from it, as a share. */
  spread: number;
}

export interface WaterLoss {
  share: number;
  /** One standard deviation. */
  sd: number;
  /** Rows that carry the baked mass. */
  bakes: number;
}

const WEIGHING_SD = 0.015;

/** Yield density from the log, g/mL; null when no row tells the finished height. */
export function yieldFromLog(rows: readonly BakeLogRow[]): LogYield | null {
  const seen = rows.flatMap(({ tin, batterG, count, finishedHeightMm: heightMm }) =>
    heightMm === undefined ? [] : [{ batterG: batterG * count, ml: volumeToHeightMl(tin, heightMm) * count }],
  );
  if (seen.length === 0) return null;
  const crossed = seen.reduce((sum, { batterG, ml }) => sum + batterG * ml, 0);
  const squared = seen.reduce((sum, { ml }) => sum + ml * ml, 0);
  const gPerMl = crossed / squared;
  const departures = seen.map(({ batterG, ml }) => Math.abs(batterG / (gPerMl * ml) - 1));
  return {
    gPerMl: quantiseRatio(gPerMl),
    bakes: seen.length,
    spread: quantiseRatio(Math.max(...departures)),
  };
}

/** Share of the batter that leaves as steam, from the trade's figure and the log together. */
export function waterLoss(rows: readonly BakeLogRow[], classId: ClassId): WaterLoss {
  const losses = rows.flatMap(({ batterG, massOutG }) =>
    massOutG === undefined ? [] : [1 - massOutG / batterG],
  );
  const prior = classId === 'rich fruit' ? { share: 0.06, sd: 0.018 } : { share: 0.1, sd: 0.018 };
  const priorWeight = 1 / (prior.sd * prior.sd);
  const weight = 1 / (WEIGHING_SD * WEIGHING_SD);
  const total = priorWeight + losses.length * weight;
  const sum = losses.reduce((all, loss) => all + loss * weight, prior.share * priorWeight);
  return { share: quantiseRatio(sum / total), sd: quantiseRatio(1 / Math.sqrt(total)), bakes: losses.length };
}
