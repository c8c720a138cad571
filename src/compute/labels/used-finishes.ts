/** Finishes as they are used on this cake: what else each might be used for is none of this label's business. */
import type { Finish, FinishUse } from '../../domain/finish.ts';
import type { LabelFinish } from './label-input.ts';

/** A dam and a topping lie beside or on the coat, and are no use that a finish's file gives. */
function onlyUse(uses: FinishUse, use: LabelFinish['use']): FinishUse {
  return use === 'dam' || use === 'topping' || uses[use] === undefined ? {} : { [use]: uses[use] };
}

export function usedFinishes(finishes: readonly LabelFinish[]): Finish[] {
  return finishes.map(({ finish, use }) => ({ ...finish, use: onlyUse(finish.use, use) }));
}
