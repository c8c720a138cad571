/** Finishes as they are used on this cake: one that can be rolled or spread counts for what is done with it here. */
import type { Finish } from '../../domain/finish.ts';
import type { LabelFinish } from './label-input.ts';

export function usedFinishes(finishes: readonly LabelFinish[]): Finish[] {
  return finishes.map(({ finish, use }) => {
    const { rolled, ...spread } = finish.use;
    return { ...finish, use: use === 'rolled' && rolled !== undefined ? { rolled } : spread };
  });
}
