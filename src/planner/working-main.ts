/** The script that is fetched when somebody asks how the figures came about: most visits never do. */
import type { Mix } from '../compute/mixes/mix.types.ts';
import type { ChartInput } from '../views/chart-mixes.ts';
import type { WorkingView } from '../views/working.types.ts';
import { planWorking } from '../views/working-plan.ts';
import { writtenSteps } from '../views/written-steps.ts';

declare global {
  interface Window {
    tinwrightWorking?: typeof workingOf;
  }
}

/** The working of a plan, with squares and cubes as they are written by hand. */
export function workingOf(input: ChartInput, mix: Mix, title: string, chartId: string): WorkingView {
  const working = planWorking(input, mix, title, chartId);
  return {
    ...working,
    shared: writtenSteps(working.shared),
    rows: working.rows.map((row) => ({ ...row, steps: writtenSteps(row.steps) })),
  };
}

if (typeof window !== 'undefined') window.tinwrightWorking = workingOf;
