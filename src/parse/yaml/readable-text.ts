/** Is a file plain text that shows what it says? Control and direction marks can hide or reorder a figure. */
import type { Problem } from '../../domain/problem.ts';
import { error } from '../problems.ts';

// C0 and C1 controls except tab and newline.
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
const CONTROL = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f]/;
// Direction marks and overrides, zero-width spaces, a byte-order mark in the middle, line and paragraph separators.
const HIDDEN = /[\u061c\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/;

function codePoint(sign: string): string {
  return `U+${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** The first character that must not be there, or null; `index` counts from the start of the text. */
export function hiddenCharacter(text: string): { problem: Problem; index: number } | null {
  const control = CONTROL.exec(text);
  if (control) {
    const message = `The text holds a control character (${codePoint(control[0])})`;
    return {
      problem: error('text-control-character', message, 'Delete it and type the line again.'),
      index: control.index,
    };
  }
  const hidden = HIDDEN.exec(text);
  if (hidden === null) return null;
  const message = `The text holds an invisible character (${codePoint(hidden[0])}) that can hide or reorder what is written`;
  return {
    problem: error('text-hidden-character', message, 'Delete it and type the line again.'),
    index: hidden.index,
  };
}

/** One kind of line end, no byte-order mark. */
export function plainLines(text: string): string {
  return text.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
}

/** Line and column, both from 1, of a place in a text. */
export function lineColumn(text: string, index: number): { line: number; column: number } {
  const before = text.slice(0, index);
  const start = before.lastIndexOf('\n') + 1;
  return { line: before.split('\n').length, column: index - start + 1 };
}
