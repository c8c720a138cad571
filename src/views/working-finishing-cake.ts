/** A cake while the amounts that go on it are worked out, and how its lengths and volumes are written. */
import type { Finishing } from '../compute/finishes/finishing.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Tin } from '../domain/tin.ts';
import type { FinishingWorkingWords } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import type { Figure } from './figure.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { computed, given } from './working-numbers.ts';

export interface CakeAtWork {
  tin: Tin;
  finishing: Finishing;
  settings: FinishingSettings;
  words: FinishingWorkingWords;
}

/** Volumes on the cake and of what is made, and the steps to them. */
export interface UseWorking {
  onCake: Figure;
  /** Of a rolled sheet the whole sheet; else as on the cake. */
  made: Figure;
  steps: FinishingParts[];
}

export const mm = (length: number): Figure => given(length, 'mm');
export const ml = (volume: number): Figure => computed(volume, 'mL');
export const at = ({ words }: CakeAtWork, thicknessMm: number): string =>
  words.at(formatLength(thicknessMm, 'mm'));
