/** From bowlfuls back to the mix: eggs, grams and what every tin gets are sums over its loads. */
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import type { CountedEgg, EggRule } from '../eggs/whole-eggs.ts';
import type { MixEggs, MixLine, MixLoad, MixTin } from './mix.types.ts';
import { sumG } from './mix-load.ts';

/** The rule that asked most of the baker names the mix's. */
const STRENGTH: Record<EggRule, number> = { nearest: 0, 'step-up': 1, weigh: 2 };

function stronger(a: EggRule, b: EggRule): EggRule {
  return STRENGTH[b] > STRENGTH[a] ? b : a;
}

function addedPart(parts: CountedEgg[]): MixEggs['parts'] {
  const [first] = parts;
  if (first === undefined) return [];
  const { ingredientId, part } = first;
  const exact = quantiseRatio(parts.reduce((sum, each) => sum + each.exact, 0));
  const whole = parts.reduce((sum, each) => sum + each.whole, 0);
  return [{ ingredientId, part, exact, whole, grams: sumG(parts.map((each) => each.grams)) }];
}

/** Eggs of all loads together; null when the formula has none. */
export function summedEggs(loads: MixLoad[]): MixEggs | null {
  const plans = loads.flatMap((load) => (load.eggs === null ? [] : [load.eggs]));
  const [first] = plans;
  if (first === undefined) return null;
  const exact = quantiseRatio(plans.reduce((sum, plan) => sum + plan.exact, 0));
  const whole = plans.reduce((sum, plan) => sum + plan.whole, 0);
  const rule = plans.map((plan) => plan.rule).reduce(stronger);
  const parts = first.parts.flatMap(({ ingredientId }) =>
    addedPart(plans.flatMap((plan) => plan.parts.filter((part) => part.ingredientId === ingredientId))),
  );
  return { rule, exact, whole, deviation: quantiseRatio(whole / exact - 1), parts };
}

/** Ingredients of all loads together, in the formula's order. */
export function summedLines(loads: MixLoad[]): MixLine[] {
  const [first] = loads;
  return (first?.lines ?? []).map((line) => {
    const same = loads.flatMap((load) =>
      load.lines.filter((each) => each.ingredientId === line.ingredientId),
    );
    const stepG = same.every((each) => each.stepG === line.stepG) ? line.stepG : null;
    return {
      ...line,
      exactG: sumG(same.map((each) => each.exactG)),
      grams: sumG(same.map((each) => each.grams)),
      stepG,
    };
  });
}

/** Tins with what each of them gets, g. */
export function servedTins(tins: MixTin[], loads: MixLoad[]): MixTin[] {
  return tins.map((tin, index) => {
    const shares = loads.flatMap((load) => load.tins.filter((share) => share.tin === index));
    return { ...tin, receivesG: quantiseG(sumG(shares.map((share) => share.receivesG)) / tin.count) };
  });
}
