/** Line and column of a spot in a drawing's text, both from 1. */
import type { Place, Problem } from '../domain/problem.ts';
import type { ProblemCode } from './codes.ts';
import { error } from './problems.ts';

/** Finds the place of any offset into the text; the lines are counted once, so that large files stay quick. */
export function placeFinder(text: string, file: string): (offset: number) => Place {
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map((end) => end.index + end[0].length)];
  return (offset) => {
    let low = 0;
    let high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= offset) low = middle;
      else high = middle;
    }
    return { file, line: low + 1, column: offset - (starts[low] ?? 0) + 1 };
  };
}

/** An error at a place of the drawing. */
export function errorAt(place: Place, code: ProblemCode, message: string, hint: string): Problem {
  return { ...error(code, message, hint), ...place };
}
