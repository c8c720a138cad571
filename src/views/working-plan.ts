/** The working behind a plan: each tin's batter and fill, then the bowlfuls of the one mix that fills them all. */
import type { Mix } from '../compute/mixes/mix.types.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { workingWordsFor } from '../wording/locales/working.ts';
import { planWordsFor } from '../wording/plan/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import { type ChartInput, chartFormula } from './chart-mixes.ts';
import type { WorkingRow, WorkingView } from './working.types.ts';
import { bakeSteps, sharedBakeSteps } from './working-bake.ts';
import { loadSteps } from './working-load.ts';
import { type StepParts, workingStep } from './working-numbers.ts';
import { sharedSteps } from './working-shared.ts';
import { fillSteps, tinSteps } from './working-tin.ts';
import { loadAsksStep, totalSteps } from './working-totals.ts';

/** Steps of every bowlful, each with its own ids where there are several. */
function bowlSteps(mix: Mix, input: ChartInput): StepParts[] {
  const formula = chartFormula(input);
  const words = workingWordsFor(input.kitchen.locale);
  return mix.loads.flatMap((load, at) => {
    const prefix = mix.loads.length > 1 ? `load-${at + 1}-` : '';
    const steps = [loadAsksStep(load, mix, prefix), ...loadSteps(load, mix, formula, prefix)];
    if (mix.loads.length < 2) return steps;
    const name = words.load(at + 1);
    return steps.map((step) => ({ ...step, of: step.of === undefined ? name : `${name}, ${step.of}` }));
  });
}

/** The working of a plan; anchors are the tins' ids, and 'mix'. */
export function planWorking(input: ChartInput, mix: Mix, title: string, chartId: string): WorkingView {
  const { kitchen, recipe, bakes } = input;
  const words = wordsFor(kitchen.locale);
  const own = planWordsFor(kitchen.locale);
  const working = workingWordsFor(kitchen.locale);
  const worked = (steps: readonly StepParts[]) => steps.map((step) => workingStep(working, step));
  const tins = mix.tins.map((filled): WorkingRow => {
    const baked = bakes ? bakeSteps(bakes, filled.tin, filled.finishedHeightMm, kitchen.locale) : [];
    return {
      anchor: filled.tin.id,
      title: working.rowTitle(
        words.chart.countOfTin(filled.count, filled.tin.name),
        tinSize(filled.tin, words),
      ),
      steps: [...worked([...tinSteps(recipe, mix, filled), ...fillSteps(recipe, filled)]), ...baked],
    };
  });
  return {
    chartId,
    title,
    shared: [
      ...worked(sharedSteps(input, mix.density, mix.gPerMl)),
      ...(bakes ? sharedBakeSteps(bakes, kitchen.locale) : []),
    ],
    rows: [
      ...tins,
      { anchor: 'mix', title: own.mixTitle, steps: worked([...bowlSteps(mix, input), ...totalSteps(mix)]) },
    ],
  };
}
