/**
 * A rolled sheet draped over a coated cake: across + 2·height + trim on every side, round or rectangular,
 * whichever wastes less. What stays on the cake is the top and the wall; the rest is offcut, to use again.
 * Common practice, no source.
 */
import { MM3_PER_ML } from '../../domain/units.ts';
import type { CakePlan } from './plan.ts';

export interface RolledSheet {
  form: 'round' | 'rectangle';
  acrossMm: number;
  otherAcrossMm: number;
  rollMl: number;
  onCakeMl: number;
}

/** mL and mm, for a sheet `thicknessMm` thick over a cake coated to this plan and `heightMm` high. */
export function rolledSheet(
  plan: CakePlan,
  heightMm: number,
  thicknessMm: number,
  trimMm: number,
): RolledSheet {
  const drop = 2 * heightMm + 2 * trimMm;
  const round = plan.aroundMm + drop;
  const wide = plan.widthMm + drop;
  const long = plan.heightMm + drop;
  const roundArea = (Math.PI * round * round) / 4;
  const isRound = roundArea <= wide * long;
  return {
    form: isRound ? 'round' : 'rectangle',
    acrossMm: isRound ? round : wide,
    otherAcrossMm: isRound ? round : long,
    rollMl: ((isRound ? roundArea : wide * long) * thicknessMm) / MM3_PER_ML,
    onCakeMl: ((plan.areaMm2 + plan.perimeterMm * heightMm) * thicknessMm) / MM3_PER_ML,
  };
}
