/** What an answer to any text must never hold, whatever the text was. */
import { PROBLEM_CODES } from '../../src/parse/codes.ts';
import type { Answer } from './readers.ts';

const CODES: ReadonlySet<string> = new Set(PROBLEM_CODES);
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not come through
const UNSEEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b\u200e\u200f\u2028-\u202e\u2060-\u2069\ufeff]/;
const STACK = /\bat \S+ \(|\.ts:\d|node_modules|\[object |TypeError|RangeError/;
const ID_PATH = /\.(?:id|\w+Id|\w+Ids\.\d+)$/;
const FILE_PATH = /\.(?:logo|fonts\.\w+)$/;
const LARGEST = 1e12;

function textFault(text: string, path: string): string | null {
  if (UNSEEN.test(text)) return `${path} holds a sign that nobody sees: ${JSON.stringify(text)}`;
  if (ID_PATH.test(path) && !/^[a-z][a-z0-9-]*$/.test(text))
    return `${path} is not an id: ${JSON.stringify(text)}`;
  if (FILE_PATH.test(path) && (text.startsWith('/') || text.includes('..') || text.includes('\\')))
    return `${path} leads out of the content folder: ${text}`;
  return null;
}

/** The first thing in a value that is not plain, finite and safe; null when there is none. */
function valueFault(value: unknown, path = 'value'): string | null {
  switch (typeof value) {
    case 'number':
      return Number.isFinite(value) && Math.abs(value) < LARGEST ? null : `${path} is ${value}`;
    case 'string':
      return textFault(value, path);
    case 'boolean':
      return null;
    case 'object': {
      if (value === null) return null;
      const proto: unknown = Object.getPrototypeOf(value);
      if (!Array.isArray(value) && proto !== Object.prototype) return `${path} is not plain data`;
      for (const [key, inner] of Object.entries(value)) {
        const fault = valueFault(inner, `${path}.${key}`);
        if (fault !== null) return fault;
      }
      return null;
    }
    default:
      return `${path} is ${typeof value}`;
  }
}

function problemFault({ problems }: Answer): string | null {
  for (const { code, message, hint = '', line = 1, column = 1 } of problems) {
    const own = message.replace(/'[^']*'|".*"?/gs, '');
    if (!CODES.has(code)) return `no such code: ${code}`;
    if (message.trim() === '' || hint.trim() === '') return `${code} without message or hint`;
    if (UNSEEN.test(message + hint)) return `${code} shows unseen signs: ${JSON.stringify(message + hint)}`;
    if (STACK.test(own) || /\bNaN\b|\bundefined\b|\bInfinity\b/.test(own))
      return `${code} talks of our code: ${message}`;
    if (message.length + hint.length > 2000)
      return `${code} goes on for ${message.length + hint.length} signs`;
    if (!(Number.isInteger(line) && line > 0 && Number.isInteger(column) && column > 0))
      return `${code} stands at ${line}:${column}`;
  }
  return null;
}

/** What is wrong with an answer, or null. A refusal must say why, and what is accepted must not be called wrong. */
export function answerFault(answer: Answer): string | null {
  const isRefused = answer.problems.some(({ severity }) => severity === 'error');
  if (answer.value === null && answer.problems.length === 0) return 'refused without a word';
  if (answer.value !== null && isRefused) return `accepted with an error: ${answer.problems[0]?.code}`;
  return problemFault(answer) ?? valueFault(answer.value);
}
