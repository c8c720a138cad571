/** Counts in running text: words to twelve, figures above. */
import { numberInWords } from '../locales/english-numbers.ts';

const MOST_IN_WORDS = 12;

/** @example countOf(3, 'bake', 'bakes') // 'three bakes' */
export const countOf = (count: number, one: string, many: string): string =>
  `${numberInWords(count, MOST_IN_WORDS)} ${count === 1 ? one : many}`;
