/**
 * The everyday question: this recipe in these tins together, how much of everything and how many eggs?
 *
 *   batter for each tin = yield density × its volume to the finished height
 *   scale = Σ batter ÷ the formula's total; eggs whole, load by load; grams to the scale's step
 *
 * Rounding is done on the mix (on each bowlful of it), never tin by tin, and whatever it makes over or leaves
 * short is declared: Σ count × batter each + surplus = Σ grams, to the last thousandth.
 */
import type { Problem, Warning } from '../../domain/problem.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { type YieldDensity, yieldDensity } from '../batter/yield-density.ts';
import { partsOff } from '../eggs/whole-eggs.ts';
import type { Mix, MixInput, MixLoad, MixTin } from './mix.types.ts';
import { formulaG, mixLoad, sumG } from './mix-load.ts';
import { mixTin } from './mix-tins.ts';
import { shareLoads } from './share-loads.ts';
import { servedTins, summedEggs, summedLines } from './sum-loads.ts';

export type * from './mix.types.ts';

/** Proven bakes that disagree by more than this are worth a word: common practice, no source. */
const SPREAD_WORTH_SAYING = 0.1;

function wrong(code: string, message: string, hint: string): Problem {
  return { code, severity: 'error', message, hint };
}

function inputProblems({ recipe, formula, asks }: MixInput): Problem[] {
  const problems: Problem[] = [];
  if (recipe.provenBakes.length === 0) {
    const hint =
      'Add one to proven_bakes: the tins, the finished height and the batter that filled them well.';
    problems.push(wrong('no-proven-bake', `${recipe.name} has no proven bake to go by.`, hint));
  }
  if (!(formulaG(formula) > 0)) {
    const hint = 'Give at least one ingredient with a weight.';
    problems.push(wrong('formula-empty', `${recipe.name} weighs nothing in all.`, hint));
  }
  if (asks.length === 0) {
    problems.push(
      wrong('no-tins', 'No tins were asked for.', 'Name at least one, such as 2 x round 6in x 3in.'),
    );
  }
  return problems;
}

function planTins(input: MixInput, gPerMl: number): Result<MixTin[]> {
  const planned = input.asks.map((ask) => mixTin(input.recipe, gPerMl, ask));
  const problems = planned.flatMap((tin) => (tin.ok ? [] : tin.problems));
  if (problems.length > 0) return fail(...problems);
  return succeed(planned.flatMap((tin) => (tin.ok ? [tin.value] : [])));
}

function spreadWarnings(density: YieldDensity): Warning[] {
  if (density.spread <= SPREAD_WORTH_SAYING) return [];
  const message = `The proven bakes disagree by up to ${Math.round(density.spread * 100)} %: weigh the batter at the next bake and note it.`;
  return [{ code: 'bakes-disagree', message }];
}

function eggWarnings(loads: MixLoad[], input: MixInput): Warning[] {
  const off = loads.flatMap((load) => (load.eggs === null ? [] : partsOff(load.eggs, input.kitchen.egg)));
  return [...new Set(off.map((part) => part.name))].map((name) => ({
    code: 'eggs-uneven',
    message: `${name}: the whole number differs from the exact one by more than the kitchen's tolerance; the eggs set the amount of everything else.`,
  }));
}

function assembled(input: MixInput, density: YieldDensity, gPerMl: number, tins: MixTin[]): Result<Mix> {
  const shared = shareLoads(tins, input.formula, input.recipe.rawDensityGPerMl, input.kitchen);
  if (!shared.ok) return shared;
  const loads = shared.value.loads.map((load) => mixLoad(input.formula, load, input.kitchen));
  const lines = summedLines(loads);
  const batterG = sumG(lines.map((line) => line.grams));
  const askedG = sumG(loads.map((load) => load.askedG));
  return succeed({
    recipeId: input.recipe.id,
    flavourIds: input.flavours?.flavourIds ?? [],
    density,
    gPerMl,
    formulaG: formulaG(input.formula),
    tins: servedTins(tins, loads),
    askedG,
    scale: quantiseRatio(loads.reduce((sum, load) => sum + load.scale, 0)),
    eggs: summedEggs(loads),
    lines,
    batterG,
    surplusG: quantiseG(batterG - askedG),
    loads,
    warnings: [
      ...tins.flatMap((tin) => tin.warnings),
      ...eggWarnings(loads, input),
      ...shared.value.warnings,
      ...spreadWarnings(density),
      ...(input.flavours?.warnings ?? []),
    ],
  });
}

/**
 * Plans a mix. Fails with every problem at once: `height-over-rim`, `height-not-positive`, `tin-count`,
 * `no-proven-bake`, `formula-empty`, `no-tins`, or a mixer that holds nothing.
 * @example planMix({ recipe, formula: recipe.formula, asks: [{ tin: round6, count: 2 }], kitchen })
 */
export function planMix(input: MixInput): Result<Mix> {
  const problems = inputProblems(input);
  const density = yieldDensity(input.recipe);
  if (problems.length > 0 || density === null) return fail(...problems);
  const gPerMl = quantiseRatio(density.gPerMl * (input.flavours?.growth ?? 1));
  const tins = planTins(input, gPerMl);
  return tins.ok ? assembled(input, density, gPerMl, tins.value) : tins;
}
