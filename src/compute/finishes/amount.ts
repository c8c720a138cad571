/** One finish for one job: what is on the cake, what is made with the loss, what is bought, and its parts. */
import type { Finish } from '../../domain/finish.ts';
import { quantiseG, quantiseMl } from '../../domain/quantise.ts';
import { finishWeights } from './parts.ts';
import type { RolledSheet } from './rolled.ts';

export type FinishUseName = 'filling' | 'coating' | 'rolled' | 'brushed' | 'dam' | 'topping';

export interface FinishAmount {
  finishId: string;
  use: FinishUseName;
  /** On or in the cake. */
  neededMl: number;
  neededG: number;
  /** With what stays in the bowl. For a rolled sheet: what is rolled out. */
  makeG: number;
  /** To buy, up to whole packets; makeG where none is given. */
  buyG: number;
  partsG: number[];
  sheet: Pick<RolledSheet, 'form' | 'acrossMm' | 'otherAcrossMm'> | null;
}

function packs(finish: Finish, grams: number): number {
  if (finish.packG === undefined) return quantiseG(grams);
  return Math.ceil(quantiseG(grams) / finish.packG) * finish.packG;
}

/** Weights in g for `neededMl` of a finish on the cake. */
export function finishAmount(finish: Finish, use: FinishUseName, neededMl: number): FinishAmount {
  const neededG = neededMl * finish.densityGPerMl;
  const { makeG, partsG } = finishWeights(finish, neededG);
  return {
    finishId: finish.id,
    use,
    neededMl: quantiseMl(neededMl),
    neededG: quantiseG(neededG),
    makeG: quantiseG(makeG),
    buyG: packs(finish, makeG),
    partsG: partsG.map(quantiseG),
    sheet: null,
  };
}
