/** The n-th input of a reader: a good text with one to four changes, seldom up to twelve. */
import { diceOf } from './dice.ts';
import type { Reader } from './readers.ts';

/** Always the same text for the same reader and number. */
export function inputOf({ name, good, changes }: Reader, number: number): string {
  const dice = diceOf(name, number);
  let text = dice.pick(good);
  const count = dice.below(20) === 0 ? 12 : 1 + dice.below(4);
  for (let done = 0; done < count; done += 1) text = dice.pick(changes)(text, dice);
  return text;
}
