/** The bead piped round every joint to hold a soft filling; made of a buttercream. */
import type { Finish } from '../../domain/finish.ts';
import type { FinishingSettings } from '../../domain/finishing.ts';
import { type FinishAmount, finishAmount } from './amount.ts';
import { fillingAmounts } from './filling.ts';
import type { CakePlan } from './plan.ts';

/** Weights in g for the dams of a cake; null where none is piped. */
export function damAmount(
  plan: CakePlan,
  finish: Finish,
  { layers, damMm }: Pick<FinishingSettings, 'layers' | 'damMm'>,
): FinishAmount | null {
  if (damMm === 0 || layers < 2) return null;
  return finishAmount(finish, 'dam', fillingAmounts(plan, layers, 0, damMm).damMl);
}
