/** How a question is put. Null for an answer means that the baker has given up (Ctrl-C, Esc). */
import type { Readable, Writable } from 'node:stream';

export interface Choice<T extends string> {
  value: T;
  label: string;
}

export interface Asking {
  /** `check` says what is wrong with an answer, or null; an empty answer is `usual`. */
  line(question: string, usual: string, check: (text: string) => string | null): Promise<string | null>;
  one<T extends string>(question: string, choices: readonly Choice<T>[], usual: T): Promise<T | null>;
  /** At least one. */
  some<T extends string>(
    question: string,
    choices: readonly Choice<T>[],
    usual: readonly T[],
  ): Promise<T[] | null>;
}

/** Asks in a terminal; the prompt library is loaded only for this. */
export async function terminalAsking(streams: { input?: Readable; output?: Writable } = {}): Promise<Asking> {
  const { isCancel, multiselect, select, text } = await import('@clack/prompts');
  const given = <T>(answer: T | symbol): T | null => (isCancel(answer) ? null : (answer as T));
  const options = <T extends string>(choices: readonly Choice<T>[]) =>
    choices.map(({ value, label }) => ({ value: value as string, label }));
  return {
    async line(message, usual, check) {
      const validate = (answer: string | undefined) => check(answer?.trim() || usual) ?? undefined;
      const answer = given<string>(
        await text({ message, placeholder: usual, defaultValue: usual, validate, ...streams }),
      );
      return answer === null ? null : answer.trim() || usual;
    },
    async one<T extends string>(message: string, choices: readonly Choice<T>[], usual: T) {
      return given(
        await select({ message, options: options(choices), initialValue: usual as string, ...streams }),
      ) as T | null;
    },
    async some<T extends string>(message: string, choices: readonly Choice<T>[], usual: readonly T[]) {
      const initialValues: string[] = [...usual];
      return given(
        await multiselect({ message, options: options(choices), initialValues, required: true, ...streams }),
      ) as T[] | null;
    },
  };
}
