/** Steps from a bowlful's scale to its whole eggs. */
import type { CountedEgg, EggPlan } from '../compute/eggs/whole-eggs.ts';
import type { MixLoad } from '../compute/mixes/mix.types.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import type { Formula } from '../domain/recipe.ts';
import { computed, given, type StepParts } from './working-numbers.ts';

function exactStep(part: CountedEgg, formula: Formula, load: MixLoad, prefix: string): StepParts {
  const grams = computed(formula.find((line) => line.ingredientId === part.ingredientId)?.grams ?? 0, 'g');
  const [scale, each] = [computed(load.askedScale, 'ratio'), given(part.unitG, 'g')];
  return {
    id: `${prefix}${part.ingredientId}-count`,
    kind: 'eggs-exact',
    of: part.name,
    inputs: [
      ['in-formula', grams],
      ['scale', scale],
      ['egg', each],
    ],
    operation: `${grams.text} × ${scale.text} ÷ ${each.text}`,
    output: ['exact', computed(part.exact, 'eggs')],
  };
}

/** Nearest whole number and how far off it is, for the count that decides. */
function nearestSteps(part: CountedEgg, prefix: string): StepParts[] {
  const [exact, nearest] = [computed(part.exact, 'eggs'), computed(Math.round(part.exact), 'count')];
  const off = computed(quantiseRatio(nearest.value / part.exact - 1), 'share');
  return [
    {
      id: `${prefix}${part.ingredientId}-nearest`,
      kind: 'eggs-nearest',
      of: part.name,
      inputs: [['exact', exact]],
      operation: `round(${exact.text})`,
      output: ['whole', nearest],
    },
    {
      id: `${prefix}${part.ingredientId}-off`,
      kind: 'eggs-off',
      of: part.name,
      inputs: [
        ['whole', nearest],
        ['exact', exact],
      ],
      operation: `${nearest.text} ÷ ${exact.text} − 1`,
      output: ['deviation', off],
    },
  ];
}

/** Up to the next egg and the factor that goes with it; or the eggs to crack for weighing. */
function beyondSteps(plan: EggPlan, part: CountedEgg, prefix: string): StepParts[] {
  if (plan.rule === 'nearest') return [];
  const [exact, whole] = [computed(part.exact, 'eggs'), computed(part.whole, 'count')];
  const up: StepParts = {
    id: `${prefix}${part.ingredientId}-up`,
    kind: plan.rule === 'weigh' ? 'eggs-weighed' : 'eggs-up',
    of: part.name,
    inputs: [['exact', exact]],
    operation: `up(${exact.text})`,
    output: ['whole', whole],
  };
  if (plan.rule === 'weigh') return [up];
  const factor: StepParts = {
    id: `${prefix}factor`,
    kind: 'factor',
    inputs: [
      ['whole', whole],
      ['exact', exact],
    ],
    operation: `${whole.text} ÷ ${exact.text}`,
    output: ['factor', computed(plan.factor, 'ratio')],
  };
  return [up, factor];
}

function followingStep(plan: EggPlan, part: CountedEgg, prefix: string): StepParts {
  const [exact, factor] = [computed(part.exact, 'eggs'), computed(plan.factor, 'ratio')];
  return {
    id: `${prefix}${part.ingredientId}-nearest`,
    kind: 'eggs-following',
    of: part.name,
    inputs: [
      ['exact', exact],
      ['factor', factor],
    ],
    operation: `max(1, round(${exact.text} × ${factor.text}))`,
    output: ['whole', computed(part.whole, 'count')],
  };
}

function gramsStep(part: CountedEgg, prefix: string): StepParts {
  const [whole, each] = [computed(part.whole, 'count'), given(part.unitG, 'g')];
  return {
    id: `${prefix}${part.ingredientId}-grams`,
    kind: 'eggs-grams',
    of: part.name,
    inputs: [
      ['whole', whole],
      ['egg', each],
    ],
    operation: `${whole.text} × ${each.text}`,
    output: ['rounded', given(part.grams, 'g')],
  };
}

/** All egg steps of a bowlful; none for a formula without eggs. */
export function eggSteps(load: MixLoad, formula: Formula, prefix: string): StepParts[] {
  const plan = load.eggs;
  if (plan === null) return [];
  const decides = plan.parts.filter((part) => part.ingredientId === plan.decidedBy);
  const follow =
    plan.rule === 'weigh' ? [] : plan.parts.filter((part) => part.ingredientId !== plan.decidedBy);
  return [
    ...plan.parts.map((part) => exactStep(part, formula, load, prefix)),
    ...decides.flatMap((part) => [...nearestSteps(part, prefix), ...beyondSteps(plan, part, prefix)]),
    ...follow.map((part) => followingStep(plan, part, prefix)),
    ...(plan.rule === 'weigh' ? [] : plan.parts.map((part) => gramsStep(part, prefix))),
  ];
}
