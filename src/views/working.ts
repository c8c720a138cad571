/**
 * How did this number come about? For every row of a tin chart the steps from the tin's measures to the last
 * gram, each with its inputs, the arithmetic in the numbers shown, its result, the rule and the rule's source.
 */

import { wordsFor } from '../wording/locales/index.ts';
import { workingWordsFor } from '../wording/locales/working.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { type ChartInput, type ChartMix, chartFormula, chartMixes } from './chart-mixes.ts';
import { chartId } from './tin-chart.ts';
import type { WorkingRow, WorkingView } from './working.types.ts';
import { bakedStep, bakeSteps, sharedBakeSteps } from './working-bake.ts';
import { loadSteps } from './working-load.ts';
import { type StepParts, workingStep } from './working-numbers.ts';
import { sharedSteps } from './working-shared.ts';
import { fillSteps, tinSteps } from './working-tin.ts';
import { loadAsksStep, receivedSteps, totalSteps } from './working-totals.ts';

function withLoadName(steps: StepParts[], name: string): StepParts[] {
  return steps.map((step) => ({ ...step, of: step.of === undefined ? name : `${name}, ${step.of}` }));
}

function bowlSteps({ mix }: ChartMix, input: ChartInput): StepParts[] {
  const formula = chartFormula(input);
  if (mix.loads.length === 1) return mix.loads.flatMap((load) => loadSteps(load, mix, formula, ''));
  return mix.loads.flatMap((load, at) => {
    const prefix = `load-${at + 1}-`;
    const steps = [loadAsksStep(load, mix, prefix), ...loadSteps(load, mix, formula, prefix)];
    return withLoadName(steps, workingWordsFor(input.kitchen.locale).load(at + 1));
  });
}

function workingRow(row: ChartMix, input: ChartInput, words: Words): WorkingRow[] {
  const { id, tin, count, mix } = row;
  const [filled] = mix.tins;
  if (filled === undefined) return [];
  const steps = [
    ...tinSteps(input.recipe, mix, filled),
    ...bowlSteps(row, input),
    ...totalSteps(mix),
    ...receivedSteps(mix, filled),
    ...fillSteps(input.recipe, filled),
  ];
  const own = workingWordsFor(input.kitchen.locale);
  const title = own.rowTitle(words.chart.countOfTin(count, tin.name), tinSize(tin, words));
  const worked = steps.map((step) => workingStep(own, step));
  const { bakes, kitchen } = input;
  const baked = bakes ? bakeSteps(bakes, tin, filled.finishedHeightMm, kitchen.locale) : [];
  const weight = bakes ? [bakedStep(filled.receivesG, bakes, kitchen.locale)] : [];
  return [{ anchor: id, title, steps: [...worked, ...weight, ...baked] }];
}

/** What the working of a chart is called. */
export function workingTitle({ kitchen, recipe, flavours }: ChartInput): string {
  const named = (flavours?.named ?? []).map(({ name }) => name);
  return workingWordsFor(kitchen.locale).title(wordsFor(kitchen.locale).chart.title(recipe.name, named));
}

/** The working behind a recipe's tin chart; anchors are the chart's row ids. */
export function workingView(input: ChartInput, mixes: readonly ChartMix[] = chartMixes(input)): WorkingView {
  const words = wordsFor(input.kitchen.locale);
  const own = workingWordsFor(input.kitchen.locale);
  const [first] = mixes;
  const shared = first === undefined ? [] : sharedSteps(input, first.mix.density, first.mix.gPerMl);
  return {
    chartId: chartId(input),
    title: workingTitle(input),
    shared: [
      ...shared.map((step) => workingStep(own, step)),
      ...(input.bakes ? sharedBakeSteps(input.bakes, input.kitchen.locale) : []),
    ],
    rows: mixes.flatMap((row) => workingRow(row, input, words)),
  };
}
