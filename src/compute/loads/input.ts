/** Refuses numbers that no load can be made of: all of them at once, never adjusted in silence. */
import type { Problem } from '../../domain/problem.ts';
import type { LoadInput } from './index.ts';

const isMass = (g: number): boolean => Number.isFinite(g) && g >= 0.001;
const isShare = (g: number): boolean => Number.isFinite(g) && g >= 0;

function problem(code: string, message: string, hint: string): Problem {
  return { code, severity: 'error', message, hint };
}

/** One problem per wrong number; none when the input can be worked with. */
export function checkLoadInput(input: LoadInput): Problem[] {
  const problems: Problem[] = [];
  if (!isMass(input.limitG)) {
    const hint = 'Give the bowl’s volume × largest fill × batter density, for example 2244 g.';
    problems.push(
      problem('load-limit', `The most for one load is ${input.limitG} g; expected more than 0.`, hint),
    );
  }
  if (!isShare(input.minimumG ?? 0)) {
    problems.push(
      problem(
        'load-minimum',
        `The least for one load is ${input.minimumG} g; expected 0 or more.`,
        'Leave it out for none.',
      ),
    );
  }
  if (!isMass(input.evenStepG ?? 5)) {
    problems.push(
      problem(
        'load-even-step',
        `The step for evenness is ${input.evenStepG} g; expected more than 0.`,
        'Leave it out for 5 g.',
      ),
    );
  }
  input.asks.forEach((ask, index) => {
    if (!isMass(ask.batterG)) {
      problems.push(
        problem(
          'load-batter',
          `Tin ${index + 1} asks for ${ask.batterG} g; expected more than 0.`,
          'Leave out tins that take no batter.',
        ),
      );
    }
    if (!Number.isSafeInteger(ask.count) || ask.count < 1) {
      problems.push(
        problem(
          'load-count',
          `Tin ${index + 1} is asked for ${ask.count} times; expected 1, 2, 3 …`,
          'Leave out tins that are not filled.',
        ),
      );
    }
  });
  return problems;
}
