/** The arithmetic of a step as one writes it by hand. */
import type { WorkingStep } from './working.types.ts';

const written = (operation: string): string =>
  operation.replace(/\^2(?![\d.])/g, '²').replace(/\^3(?![\d.])/g, '³');

/** Steps with squares and cubes written as such. */
export const writtenSteps = (steps: readonly WorkingStep[]): WorkingStep[] =>
  steps.map((step) => ({ ...step, operation: written(step.operation) }));
