/** What the YAML library found wrong with the signs of a text, in words that help. */
import type { YAMLError } from 'yaml';
import type { Problem } from '../../domain/problem.ts';
import { error } from '../problems.ts';

const MOST_FAULTS = 20;
/** The library quotes what it stumbled over, be it the rest of the file. */
const LONGEST = 160;

const ADVICE: Partial<Record<YAMLError['code'], string>> = {
  BAD_INDENT: 'Line it up with the keys above it; indent what belongs to a key by two spaces.',
  MISSING_CHAR: 'A quote, bracket or colon is missing, here or further up.',
  BLOCK_AS_IMPLICIT_KEY: "A text with ': ' in it needs quotes: name: 'Cake: the big one'.",
  MULTILINE_IMPLICIT_KEY: 'A key needs a colon on its own line, for example name: Vanilla.',
  UNEXPECTED_TOKEN: 'Put quotes round a text that starts with a special sign.',
  BAD_SCALAR_START: 'Put quotes round a text that starts with @ or `.',
};

/** One fault of the library as a problem, without its place. */
export function syntaxProblem(fault: YAMLError): Problem {
  const firstLine = (fault.message.split('\n')[0] ?? '').replace(/[.:]$/, '').slice(0, LONGEST);
  switch (fault.code) {
    case 'MULTIPLE_DOCS':
      return error(
        'yaml-many-documents',
        "A line '---' starts a second document",
        'Delete the line: one file, one document.',
      );
    case 'TAB_AS_INDENT':
      return error('yaml-tab', 'A tab is used to indent', 'Use two spaces instead.');
    case 'BAD_ALIAS':
      return error(
        'yaml-alias',
        'Names that start with & or * are references',
        'Write the value out, or put quotes round it.',
      );
    case 'RESOURCE_EXHAUSTION':
      return exhausted();
    case 'TAG_RESOLVE_FAILED':
      return tagProblem();
    default:
      return error(
        'yaml-syntax',
        `This is not readable as YAML: ${firstLine}`,
        ADVICE[fault.code] ?? 'Check quotes, colons and indents, here and just above.',
      );
  }
}

/** The problem of a text that exhausts the stack. */
export function exhausted(): Problem {
  return error(
    'yaml-too-deep',
    'Lists within lists go too deep to read',
    'Look for a run of opening brackets.',
  );
}

/** The problem of a key that stands in its group already. */
export function keyRepeated(): Problem {
  return error('yaml-key-repeated', 'This key is already in the same list of keys', 'Keep one of the two.');
}

/** The problem of a value with a tag. */
export function tagProblem(): Problem {
  return error(
    'yaml-tag',
    "A value starts with a tag, '!'",
    'Delete the tag, or put quotes round a text that starts with !.',
  );
}

/** Once a file is broken, the YAML library may repeat itself thousands of times: the first of each, twenty in all. */
export function firstFaults(faults: readonly YAMLError[]): YAMLError[] {
  const seen = new Set<string>();
  return faults
    .filter(({ code, pos }) => {
      const key = `${code} ${pos[0]}`;
      return !seen.has(key) && seen.add(key).size <= MOST_FAULTS;
    })
    .slice(0, MOST_FAULTS);
}
