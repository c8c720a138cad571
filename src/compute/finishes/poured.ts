/** What is poured over a coat that is on already, in one go: told, timed and reckoned apart from what is spread. */
import type { Finish } from '../../domain/finish.ts';

export const isPoured = ({ kind }: Pick<Finish, 'kind'>): boolean => kind === 'poured glaze';
