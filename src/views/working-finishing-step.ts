/** One step of the working behind fillings and coatings, with the words of its locale. */
import type { FinishingLabel, FinishingStepKind, FinishingWorkingWords } from '../wording/finishing/index.ts';
import type { Figure } from './figure.ts';
import type { WorkingStep } from './working.types.ts';
import { labelled } from './working-numbers.ts';

export interface FinishingParts {
  kind: FinishingStepKind;
  /** Sets steps of one kind apart within a tin: a thickness, a column. */
  about?: string;
  /** Before the title: 'Vanilla buttercream', 'At 8 mm'. */
  of?: string;
  inputs: [FinishingLabel | { own: string }, Figure][];
  operation: string;
  output: [FinishingLabel | { own: string }, Figure];
}

/** Puts a step together. */
export function finishingStep({ steps, labels }: FinishingWorkingWords, parts: FinishingParts): WorkingStep {
  const { title, rule, source } = steps[parts.kind];
  const named = ([label, figure]: FinishingParts['output']) =>
    labelled(typeof label === 'string' ? labels[label] : label.own, figure);
  return {
    id: parts.about === undefined ? parts.kind : `${parts.kind}-${parts.about}`,
    title: parts.of === undefined ? title : `${parts.of}: ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
    inputs: parts.inputs.map(named),
    operation: parts.operation,
    output: named(parts.output),
    rule,
    source,
  };
}
