/** Problems on the terminal: every one with its place and what to write instead, then how many. */
import type { Problem } from '../domain/problem.ts';
import { formatProblem } from '../read/format-problem.ts';
import { EXIT, type ExitCode } from './exit-codes.ts';
import type { Terminal } from './terminal.ts';

/** Prints them to standard error. */
export function tellProblems(problems: readonly Problem[], terminal: Terminal): void {
  for (const problem of problems) terminal.tell(formatProblem(problem));
}

/** Prints errors found in content files, and the exit code for them. */
export function refuseContent(problems: readonly Problem[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  terminal.tell(countText(problems));
  return EXIT.badContent;
}

/** Prints what is wrong with the command line itself, and the exit code for it. */
export function refuseUsage(problems: readonly Problem[], terminal: Terminal): ExitCode {
  tellProblems(problems, terminal);
  return EXIT.usage;
}

/** A mistake on the command line. */
export function usageProblem(code: string, message: string, hint: string): Problem {
  return { code, severity: 'error', message, hint };
}

/** '2 errors, 1 warning'. */
export function countText(problems: readonly Problem[]): string {
  const errors = problems.filter((problem) => problem.severity === 'error').length;
  const warnings = problems.length - errors;
  return `${counted(errors, 'error')}, ${counted(warnings, 'warning')}`;
}

/** '1 file', '2 files'. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
