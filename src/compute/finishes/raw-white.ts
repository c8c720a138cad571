/**
 * Egg that no heat reaches: in royal icing, and in a glaze, which is poured lukewarm (common practice, no source).
 * Meringue for buttercream is made over hot water.
 */

import type { Finish } from '../../domain/finish.ts';
import { isPoured } from './poured.ts';

/** Whether a finish holds egg that stays raw. */
export const hasRawWhite = ({ finish }: { finish: Pick<Finish, 'kind' | 'parts'> }): boolean =>
  finish.kind === 'royal icing' && finish.parts.some(({ eggPart }) => eggPart !== undefined);

/** Whether a poured glaze holds egg of any part. */
export const hasRawEggGlaze = ({ finish }: { finish: Pick<Finish, 'kind' | 'parts'> }): boolean =>
  isPoured(finish) && finish.parts.some(({ eggPart }) => eggPart !== undefined);
