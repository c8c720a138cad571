/** A whole recipe for a finish: what to weigh for a wanted amount, with what stays in the bowl added. */
import type { Finish } from '../../domain/finish.ts';

export interface FinishWeights {
  /** What must be made, g. */
  makeG: number;
  /** g of each part, in the finish's own order. */
  partsG: number[];
}

/**
 * g of every part for `neededG` on the cake: needed × (1 + loss), then back through any weight lost in cooking.
 * @example 1 224.8 g of 2 : 1 ganache and 5 % on top → 857.4 g chocolate, 428.7 g cream
 */
export function finishWeights(
  finish: Pick<Finish, 'parts' | 'lossShare' | 'cookingLossShare'>,
  neededG: number,
): FinishWeights {
  const makeG = neededG * (1 + finish.lossShare);
  const inG = makeG / (1 - finish.cookingLossShare);
  const whole = finish.parts.reduce((sum, part) => sum + part.parts, 0);
  return { makeG, partsG: finish.parts.map((part) => (inG * part.parts) / whole) };
}
