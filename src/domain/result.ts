import type { Problem } from './problem.ts';

/** A value or everything that is wrong with what was given. */
export type Result<T> = { ok: true; value: T } | { ok: false; problems: Problem[] };

export const succeed = <T>(value: T): Result<T> => ({ ok: true, value });
export const fail = (...problems: Problem[]): Result<never> => ({ ok: false, problems });
