import type { Place, Problem } from '../domain/problem.ts';
import type { Result } from '../domain/result.ts';
import type { ProblemCode } from './codes.ts';

/** An error with a known code; the hint says what to write instead. */
export function error(code: ProblemCode, message: string, hint: string): Problem {
  return { code, severity: 'error', message, hint };
}

/** A warning: content is still read. */
export function warning(code: ProblemCode, message: string, hint: string): Problem {
  return { code, severity: 'warning', message, hint };
}

/** A failed result with one error. */
export function refuse(code: ProblemCode, message: string, hint: string): Result<never> {
  return { ok: false, problems: [error(code, message, hint)] };
}

/** Puts a problem in its file; a column that the problem already has counts from the start of that place. */
export function locate(problem: Problem, place: Place): Problem {
  const column = (place.column ?? 1) + (problem.column ?? 1) - 1;
  return { ...problem, ...place, ...(place.column === undefined ? {} : { column }) };
}

/** Moves a problem found in a piece of text to its column in the whole (0 = the piece starts the whole). */
export function shiftColumn(problem: Problem, offset: number): Problem {
  return { ...problem, column: (problem.column ?? 1) + offset };
}

function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Sorted by file, line, column and code, so that the order never depends on how they were found. */
export function sortProblems(problems: readonly Problem[]): Problem[] {
  return [...problems].sort(
    (a, b) =>
      byText(a.file ?? '', b.file ?? '') ||
      (a.line ?? 0) - (b.line ?? 0) ||
      (a.column ?? 0) - (b.column ?? 0) ||
      byText(a.code, b.code) ||
      byText(a.message, b.message),
  );
}
