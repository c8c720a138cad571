/** What one cake takes of a finish in one use; the dam is a use of its own, made of the same finish. */
import type { Finish } from '../../domain/finish.ts';
import type { FinishingSettings } from '../../domain/finishing.ts';
import type { FinishAmount, FinishUseName } from './amount.ts';
import { damAmount } from './dam.ts';
import type { Finishing } from './finishing.ts';

/** Null where the finish is not used so, or comes to nothing on this cake. */
export function useAmount(
  { plan, amounts }: Pick<Finishing, 'plan' | 'amounts'>,
  finish: Finish,
  use: FinishUseName,
  settings: FinishingSettings,
): FinishAmount | null {
  if (use === 'dam') return damAmount(plan, finish, settings);
  return amounts.find((amount) => amount.finishId === finish.id && amount.use === use) ?? null;
}
