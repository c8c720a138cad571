/** Which tins are filled from which bowlful? All from one when the bowl takes it. */
import type { Problem, Warning } from '../../domain/problem.ts';
import { quantiseG } from '../../domain/quantise.ts';
import type { Formula } from '../../domain/recipe.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { eggFactor } from '../eggs/whole-eggs.ts';
import { bowlLimitG, partitionLoads } from '../loads/index.ts';
import type { LoadTin, MixKitchen, MixTin } from './mix.types.ts';
import { formulaG, sumG } from './mix-load.ts';
import { splitByEggs } from './split-eggs.ts';

export type TinsOfLoad = Omit<LoadTin, 'receivesG'>[];

export interface SharedLoads {
  loads: TinsOfLoad[];
  warnings: Warning[];
}

/** Batter beyond what is asked once a load's eggs are whole, g. */
function eggSurplusG(formula: Formula, kitchen: MixKitchen): (loadG: number) => number {
  const totalG = formulaG(formula);
  const factorOf = eggFactor(formula, kitchen.egg);
  return (loadG) => quantiseG(loadG * (factorOf(loadG / totalG) - 1));
}

function underMinimum(askedG: number, minimumG: number): Warning[] {
  if (askedG >= minimumG) return [];
  const message = `A mix under ${Math.round(minimumG)} g is too small for the bowl to mix well: use a hand mixer.`;
  return [{ code: 'bowl-low', message }];
}

function severalLoads(count: number, limitG: number): Warning[] {
  const message = `More than the bowl takes at once (${Math.round(limitG)} g): mix it in ${count} loads.`;
  return [{ code: 'several-loads', message }];
}

/** Shares tins out over loads; fails with the kitchen's mistakes about its mixer. */
export function shareLoads(
  tins: MixTin[],
  formula: Formula,
  rawDensityGPerMl: number,
  kitchen: MixKitchen,
): Result<SharedLoads> {
  const asks = tins.map((tin) => ({ batterG: tin.batterGEach, count: tin.count }));
  const whole = asks.map((ask, tin) => ({
    tin,
    count: ask.count,
    askedG: quantiseG(ask.batterG * ask.count),
  }));
  const askedG = sumG(whole.map((share) => share.askedG));
  const { limitG, minimumG } = bowlLimitG(kitchen.mixer, rawDensityGPerMl);
  if (askedG <= limitG) return succeed({ loads: [whole], warnings: underMinimum(askedG, minimumG) });
  const plan = partitionLoads({ asks, limitG, minimumG, surplusG: eggSurplusG(formula, kitchen) });
  if (!plan.ok) return { ok: false, problems: plan.problems satisfies Problem[] };
  const loads = plan.value.loads.map((load) =>
    load.shares.map((share) => ({
      tin: share.ask,
      count: share.tins,
      ...(share.ofParts === undefined ? {} : { ofParts: share.ofParts }),
      askedG: share.batterG,
    })),
  );
  const dealt = splitByEggs(loads, formula, kitchen, limitG);
  return succeed({ loads: dealt, warnings: [...severalLoads(loads.length, limitG), ...plan.value.warnings] });
}
