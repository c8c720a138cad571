/** Splits the description of a tin into words and measurements, each with its column. */
import { leadingNumber } from '../units/number.ts';

export interface Token {
  text: string;
  /** Characters before it in the whole list. */
  at: number;
  kind: 'word' | 'measurement';
}

const UNIT = /^ *(?:[a-zA-Z]+|["″”])/;
const JOINING = /^ *(?:by|base|tube|flats|corners|across|point)\b/;

function measurementLength(text: string): number {
  const number = leadingNumber(text);
  if (number === null) return /^\S+/.exec(text)?.[0].length ?? 1;
  const after = text.slice(number.length);
  // A joining word is not a unit: '9 by 5in' lacks one after the 9.
  const unit = JOINING.test(after) ? null : UNIT.exec(after);
  return number.length + (unit?.[0].length ?? /^\S*/.exec(after)?.[0].length ?? 0);
}

const WORD = /^[a-z][a-z0-9-]*/i;
const UP_TO_SPACE = /^\S+/;

/** The word a text starts with; what follows 'outline' is the name of a drawing, also where a digit comes first. */
function leadingWord(rest: string, before: readonly Token[]): string | undefined {
  const isDrawing = before.length === 1 && before[0]?.text.toLowerCase() === 'outline';
  return (isDrawing ? UP_TO_SPACE : WORD).exec(rest)?.[0];
}

/** Words and measurements of a text that starts `offset` characters into the list. */
export function specTokens(text: string, offset: number): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const rest = text.slice(at);
    const space = /^\s+/.exec(rest)?.[0].length ?? 0;
    if (space > 0) {
      at += space;
      continue;
    }
    const word = leadingWord(rest, tokens);
    const length = word?.length ?? Math.max(1, measurementLength(rest));
    const kind = word === undefined ? 'measurement' : 'word';
    tokens.push({ text: rest.slice(0, length), at: offset + at, kind });
    at += length;
  }
  return tokens;
}
