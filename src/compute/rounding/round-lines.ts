/**
 * From exact grams to grams one can weigh. Ingredients weighed to the same step are rounded together, so that
 * each group keeps its total; what is left over or short goes to the mix's surplus, never out of sight.
 */
import type { ScaleSetting } from '../../domain/kitchen.ts';
import { scaleStepG } from './scale-step.ts';
import { roundTogether } from './shared-rounding.ts';

export interface ToWeigh {
  exactG: number;
  fine: boolean;
}

export interface Weighed {
  grams: number;
  stepG: number;
}

/** Rounded grams and the step used, one per input, same order. */
export function roundLines(lines: readonly ToWeigh[], scale: ScaleSetting): Weighed[] {
  const steps = lines.map((line) => scaleStepG(line.exactG, line.fine, scale));
  const grams: number[] = lines.map(() => 0);
  for (const stepG of new Set(steps)) {
    const members = lines.flatMap((line, index) =>
      steps[index] === stepG ? [{ index, exactG: line.exactG }] : [],
    );
    const rounded = roundTogether(
      members.map(({ exactG }) => exactG),
      stepG,
    );
    members.forEach(({ index }, position) => {
      grams[index] = rounded[position] ?? 0;
    });
  }
  return steps.map((stepG, index) => ({ stepG, grams: grams[index] ?? 0 }));
}
