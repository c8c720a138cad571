/**
 * How is a mix shared out over bowlfuls when it is too much for the mixer?
 *
 *   partitionLoads({ asks, limitG, surplusG, minimumG }) → loads, each with its tins and its batter
 *
 * In this order: the fewest loads of at most `limitG`; then the least batter made beyond what is asked once
 * each load's eggs are whole; then the most even loads. Tins stay whole unless one alone is more than the
 * bowl takes: that one goes in equal parts over as few loads as hold it. Exact up to about twenty tins
 * (`proof` says so, or gives the bound that was proven before the search's fixed cap on steps was reached).
 */

import type { Warning } from '../../domain/problem.ts';
import { quantiseG } from '../../domain/quantise.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { findFewest } from './fewest.ts';
import { improveLoads } from './improve.ts';
import { checkLoadInput } from './input.ts';
import { type BatterAsk, type LoadItems, loadItems } from './items.ts';
import { type MixerLoad, mixerLoads } from './mixer-load.ts';

export { bowlLimitG } from './bowl.ts';
export type { BatterAsk } from './items.ts';
export type { MixerLoad } from './mixer-load.ts';

export interface LoadInput {
  /** Batter for one tin, g, and how many such tins; their order is the index that loads refer to. */
  asks: readonly BatterAsk[];
  /** Most batter that the bowl takes in one load, g (see `bowlLimitG`). */
  limitG: number;
  /** Least that it mixes well, g: lighter loads are warned about. Default 0. */
  minimumG?: number;
  /**
   * Batter made beyond what is asked when a load of this mass gets whole eggs, g. Must be pure and cheap. A
   * negative answer (a few grams short, within tolerance) counts as 0: short is no saving. Default: none.
   */
  surplusG?: (loadBatterG: number) => number;
  /** Loads that differ by less than this are as good as even, g. Default 5, a scale's usual step. */
  evenStepG?: number;
  /** Steps that the search may take before it settles for the best found. Default 400,000. */
  stepCap?: number;
}

export interface LoadProof {
  /** No arrangement has fewer loads than this. */
  leastLoads: number;
  /** Whether the number of loads is the least possible. */
  fewest: boolean;
  /** Whether surplus and evenness are the best for that number of loads. */
  best: boolean;
  /** Surplus of the loads as planned, g (shortfalls count as 0). */
  surplusG: number;
  /** No arrangement in so many loads has less surplus than this, g. */
  leastSurplusG: number;
  /** Search steps taken. */
  steps: number;
}

export interface LoadPlan {
  /** Heaviest first. Their batter adds up to the asks', to the milligram. */
  loads: MixerLoad[];
  proof: LoadProof;
  warnings: Warning[];
}

/**
 * Shares tins out over mixer loads; masses in g. Fails with one problem per wrong number in the input.
 * @example two tins of 900 g and one of 400 g, at most 1,400 g a load → 1,300 g and 900 g
 */
export function partitionLoads(input: LoadInput): Result<LoadPlan> {
  const problems = checkLoadInput(input);
  if (problems.length > 0) return { ok: false, problems };
  const { minimumG = 0, surplusG = () => 0, evenStepG = 5, stepCap = 400_000 } = input;
  const items: LoadItems = loadItems(input.asks, input.limitG);
  const fewest = findFewest(items, stepCap);
  const best = improveLoads(items, fewest.packing, { surplusG, evenStepG, stepCap });
  const loads = mixerLoads(items, best.packing);
  return succeed({
    loads,
    proof: {
      leastLoads: fewest.leastLoads,
      fewest: fewest.proven,
      best: fewest.proven && best.proven,
      surplusG: quantiseG(best.cost.surplusMg / 1000),
      leastSurplusG: quantiseG(best.leastSurplusMg / 1000),
      steps: fewest.steps + best.steps,
    },
    warnings: lightLoads(loads, minimumG),
  });
}

function lightLoads(loads: MixerLoad[], minimumG: number): Warning[] {
  return loads
    .filter((load) => load.batterG < minimumG)
    .map((load) => ({
      code: 'load-below-minimum',
      message: `A load of ${load.batterG} g is less than the ${quantiseG(minimumG)} g that the bowl mixes well.`,
    }));
}
