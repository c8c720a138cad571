/** Eggs in words: 'Three eggs and two yolks'. */

import type { EggPart } from '../domain/egg.ts';
import { capitalised } from './sentence-case.ts';
import type { Words } from './words.ts';

export interface CountedPart {
  part: EggPart;
  whole: number;
}

/** 'three', or '21' where words would be clumsy. */
export function countInWords(count: number, words: Words): string {
  return words.numbers[count] ?? String(count);
}

function partInWords({ part, whole }: CountedPart, words: Words): string {
  const noun = words.eggParts[part];
  return `${countInWords(whole, words)} ${whole === 1 ? noun.one : noun.many}`;
}

/**
 * Counted eggs, yolks and whites as a phrase with a capital.
 * @example eggsInWords([{ part: 'egg', whole: 3 }, { part: 'yolk', whole: 2 }], enGB) // 'Three eggs and two yolks'
 */
export function eggsInWords(parts: readonly CountedPart[], words: Words): string {
  const phrases = parts.map((part) => partInWords(part, words));
  const last = phrases.pop() ?? words.noEggs;
  return capitalised(phrases.length === 0 ? last : `${phrases.join(', ')} ${words.and} ${last}`);
}
