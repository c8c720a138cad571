/** One step of the working behind fillings and coatings, with the words of its locale. */
import type { FinishingLabel, FinishingStepKind, FinishingWorkingWords } from '../wording/finishing/index.ts';
import type { WorkingStep } from './working.types.ts';
import { type Parts, workingStep } from './working-numbers.ts';

export interface FinishingParts extends Omit<Parts<FinishingStepKind, FinishingLabel>, 'id'> {
  /** Sets steps of one kind apart within a tin: a thickness, a column. */
  about?: string;
}

/** Puts a step together. */
export const finishingStep = (words: FinishingWorkingWords, parts: FinishingParts): WorkingStep =>
  workingStep(words, {
    ...parts,
    id: parts.about === undefined ? parts.kind : `${parts.kind}-${parts.about}`,
  });
