import type { Problem } from '../domain/problem.ts';

function place({ file, line, column }: Problem): string {
  if (file === undefined) return column === undefined ? '' : `column ${column}: `;
  return `${[file, line, column].filter((part) => part !== undefined).join(':')}: `;
}

/**
 * A problem as it is shown on a terminal: place, severity, code and message, and on the next line what to do.
 * @example 'kitchen.yaml:12:9: error [unit-missing] '6' has no unit\n    Write 6 in, 6 cm or 6 mm.'
 */
export function formatProblem(problem: Problem): string {
  const { severity, code, message, hint } = problem;
  const first = `${place(problem)}${severity} [${code}] ${message}`;
  return hint === undefined ? first : `${first}\n    ${hint}`;
}
