/** Steps of one bowlful: scale, eggs, every ingredient's rounding, what it makes and what is over. */
import type { Mix, MixLine, MixLoad } from '../compute/mixes/mix.types.ts';
import { quantiseG } from '../domain/quantise.ts';
import type { Formula } from '../domain/recipe.ts';
import type { Figure } from './figure.ts';
import { eggSteps } from './working-eggs.ts';
import { computed, given, type StepParts } from './working-numbers.ts';

function scaleStep(load: MixLoad, mix: Mix, prefix: string): StepParts {
  const [asked, formula] = [computed(load.askedG, 'g'), computed(mix.formulaG, 'g')];
  return {
    id: `${prefix}scale`,
    kind: 'scale',
    inputs: [
      ['asked', asked],
      ['formula', formula],
    ],
    operation: `${asked.text} ÷ ${formula.text}`,
    output: ['scale', computed(load.askedScale, 'ratio')],
  };
}

/** 'round', 'up' or 'down': the way the shared rounding went. */
function roundingWord(line: MixLine, stepG: number): string {
  if (quantiseG(Math.round(line.exactG / stepG) * stepG) === line.grams) return 'round';
  return line.grams > line.exactG ? 'up' : 'down';
}

function exactStep(line: MixLine, load: MixLoad, inFormulaG: number, prefix: string): StepParts {
  const [grams, scale] = [computed(inFormulaG, 'g'), computed(load.askedScale, 'ratio')];
  const factor = load.eggs === null || load.eggs.factor === 1 ? null : computed(load.eggs.factor, 'ratio');
  return {
    id: `${prefix}${line.ingredientId}-exact`,
    kind: 'ingredient-exact',
    of: line.name,
    inputs: [
      ['in-formula', grams],
      ['scale', scale],
      ...(factor === null ? [] : [['factor', factor] as ['factor', Figure]]),
    ],
    operation: [grams, scale, ...(factor === null ? [] : [factor])].map(({ text }) => text).join(' × '),
    output: [{ own: line.name }, given(line.exactG, 'g')],
  };
}

function ingredientSteps(line: MixLine, load: MixLoad, formula: Formula, prefix: string): StepParts[] {
  if (line.stepG === null) return [];
  const inFormulaG = formula.find(({ ingredientId }) => ingredientId === line.ingredientId)?.grams ?? 0;
  const [exact, step] = [given(line.exactG, 'g'), given(line.stepG, 'g')];
  const rounded: StepParts = {
    id: `${prefix}${line.ingredientId}`,
    kind: 'ingredient-rounded',
    of: line.name,
    inputs: [
      [{ own: line.name }, exact],
      ['step', step],
    ],
    operation: `${roundingWord(line, line.stepG)}(${exact.text} ÷ ${step.text}) × ${step.text}`,
    output: ['rounded', given(line.grams, 'g')],
  };
  return [exactStep(line, load, inFormulaG, prefix), rounded];
}

function batterStep(load: MixLoad, prefix: string): StepParts {
  const lines = load.lines.map((line): [{ own: string }, Figure] => [
    { own: line.name },
    given(line.grams, 'g'),
  ]);
  return {
    id: `${prefix}batter`,
    kind: 'batter',
    inputs: lines,
    operation: lines.map(([, { text }]) => text).join(' + '),
    output: ['batter', given(load.batterG, 'g')],
  };
}

function surplusStep(load: MixLoad, prefix: string): StepParts {
  const [batter, asked] = [given(load.batterG, 'g'), computed(load.askedG, 'g')];
  return {
    id: `${prefix}surplus`,
    kind: 'surplus',
    inputs: [
      ['batter', batter],
      ['asked', asked],
    ],
    operation: `${batter.text} − ${asked.text}`,
    output: ['surplus', computed(load.surplusG, 'g')],
  };
}

/** Steps of a bowlful, in the order one would work them. */
export function loadSteps(load: MixLoad, mix: Mix, formula: Formula, prefix: string): StepParts[] {
  return [
    scaleStep(load, mix, prefix),
    ...eggSteps(load, formula, prefix),
    ...load.lines.flatMap((line) => ingredientSteps(line, load, formula, prefix)),
    batterStep(load, prefix),
    surplusStep(load, prefix),
  ];
}
