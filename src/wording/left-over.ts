/** What a fill leaves in the bowl, or lacks by a little, in words. */
import { NOTHING_G } from './surplus.ts';

export interface LeftOverWords {
  nothingLeft: string;
  gramsLeft(weight: string): string;
  gramsShort(weight: string): string;
}

/**
 * `value` in g decides, `text` is what is shown of it.
 * @example leftOver({ value: -5.01, text: '−5' }, words) // '5 g short'
 */
export function leftOver({ value, text }: { value: number; text: string }, words: LeftOverWords): string {
  if (Math.abs(value) < NOTHING_G) return words.nothingLeft;
  return value < 0 ? words.gramsShort(text.replace(/^[−-]/, '')) : words.gramsLeft(text);
}
