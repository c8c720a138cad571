/** Written before the search and without it: what a plan of loads must satisfy, and the best one by trying all. */
import type { BatterAsk, LoadPlan } from '../../../src/compute/loads/index.ts';

export interface Objective {
  loads: number;
  surplusMg: number;
  unevenness: number;
}

export interface Rule {
  limitG: number;
  surplusG: (g: number) => number;
  evenStepG: number;
}

/** Everything wrong with a plan, in words; empty when it is sound. */
export function faults(asks: readonly BatterAsk[], limitG: number, plan: LoadPlan): string[] {
  const found: string[] = [];
  for (const load of plan.loads) {
    if (load.batterG > limitG + 5e-4) found.push(`load of ${load.batterG} g over ${limitG} g`);
    const sum = load.shares.reduce((total, share) => total + share.batterG, 0);
    if (Math.abs(sum - load.batterG) > 1e-6) found.push(`shares add up to ${sum}, load says ${load.batterG}`);
    if (load.shares.length === 0) found.push('empty load');
  }
  asks.forEach((ask, index) => {
    const shares = plan.loads.flatMap((load) => load.shares.filter((share) => share.ask === index));
    const splits =
      ask.batterG > limitG ? Math.ceil(Math.round(ask.batterG * 1000) / Math.round(limitG * 1000)) : 1;
    const whole = shares.reduce((sum, share) => sum + share.tins, 0);
    const parts = shares.filter((share) => share.ofParts !== undefined);
    if (splits === 1 && (whole !== ask.count || parts.length > 0))
      found.push(`ask ${index}: ${whole} of ${ask.count} tins`);
    if (splits > 1 && (whole > 0 || parts.length !== splits * ask.count))
      found.push(`ask ${index}: wrong parts`);
    if (parts.some((part) => part.ofParts !== splits)) found.push(`ask ${index}: unequal parts`);
    const batter = shares.reduce((sum, share) => sum + share.batterG, 0);
    if (Math.abs(batter - (Math.round(ask.batterG * 1000) * ask.count) / 1000) > 1e-6)
      found.push(`ask ${index}: ${batter} g`);
  });
  return found;
}

/** The three objectives of some loads, from their masses alone. */
export function objective(massesMg: readonly number[], rule: Rule): Objective {
  const mean = massesMg.reduce((a, b) => a + b, 0) / massesMg.length;
  return {
    loads: massesMg.length,
    surplusMg: massesMg.reduce(
      (sum, mg) => sum + Math.max(0, Math.round(rule.surplusG(mg / 1000) * 1000)),
      0,
    ),
    unevenness: massesMg.reduce(
      (sum, mg) => sum + Math.round(Math.abs(mg - mean) / (rule.evenStepG * 1000)) ** 2,
      0,
    ),
  };
}

/** Best of every way to put up to eight tins (none over the limit) into loads: set partitions, all of them. */
export function bestByTryingAll(tinsMg: readonly number[], rule: Rule): Objective {
  let best: Objective = { loads: Infinity, surplusMg: Infinity, unevenness: Infinity };
  const loads: number[] = [];
  const place = (index: number): void => {
    const tin = tinsMg[index];
    if (tin === undefined) {
      const found = objective(loads, rule);
      if (comesBefore(found, best)) best = found;
      return;
    }
    for (let load = 0; load < loads.length; load++) {
      loads[load] = (loads[load] ?? 0) + tin;
      if ((loads[load] ?? 0) <= Math.round(rule.limitG * 1000)) place(index + 1);
      loads[load] = (loads[load] ?? 0) - tin;
    }
    loads.push(tin);
    place(index + 1);
    loads.pop();
  };
  place(0);
  return best;
}

function comesBefore(a: Objective, b: Objective): boolean {
  if (a.loads !== b.loads) return a.loads < b.loads;
  if (a.surplusMg !== b.surplusMg) return a.surplusMg < b.surplusMg;
  return a.unevenness < b.unevenness;
}
