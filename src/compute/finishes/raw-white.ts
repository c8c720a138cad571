/** Egg that no heat reaches: in royal icing. Meringue for buttercream is made over hot water. */
import type { Finish } from '../../domain/finish.ts';

/** Whether a finish holds egg that stays raw. */
export const hasRawWhite = ({ finish }: { finish: Pick<Finish, 'kind' | 'parts'> }): boolean =>
  finish.kind === 'royal icing' && finish.parts.some(({ eggPart }) => eggPart !== undefined);
