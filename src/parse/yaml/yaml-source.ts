/**
 * A YAML text as plain data that remembers where everything stood. Anchors, aliases, tags, several documents
 * and nesting beyond 12 levels are refused: a kitchen's file needs none of them, and they can hide or swell it.
 */
import {
  type Document,
  isMap,
  isPair,
  isScalar,
  LineCounter,
  type Node,
  parseDocument,
  visit,
  type YAMLError,
} from 'yaml';
import type { Place, Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { error } from '../problems.ts';
import { quote } from '../quote.ts';
import { hiddenCharacter, lineColumn } from './readable-text.ts';

export type YamlPath = readonly (string | number)[];

export interface YamlSource {
  file: string;
  /** Plain data; nothing checked yet. */
  value: unknown;
  /** Where a value stands; for a missing one, the nearest thing around it. */
  at(path: YamlPath): Place;
  /** Where a key stands. */
  atKey(path: YamlPath): Place;
  /** Where the characters of a text value start, inside its quotes; null when they are not as in the file. */
  atText(path: YamlPath): Place | null;
}

/** The value at a path of plain data; undefined when there is none. */
export function valueAt(value: unknown, path: YamlPath): unknown {
  let here: unknown = value;
  for (const step of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<string | number, unknown>)[step];
  }
  return here;
}

const DEEPEST = 12;
const MOST_FAULTS = 20;

const ADVICE: Partial<Record<YAMLError['code'], string>> = {
  BAD_INDENT: 'Line it up with the keys above it; indent what belongs to a key by two spaces.',
  MISSING_CHAR: 'A quote, bracket or colon is missing, here or further up.',
  BLOCK_AS_IMPLICIT_KEY: "A text with ': ' in it needs quotes: name: 'Cake: the big one'.",
  MULTILINE_IMPLICIT_KEY: 'A key needs a colon on its own line, for example name: Vanilla.',
  UNEXPECTED_TOKEN: 'Put quotes round a text that starts with a special sign.',
  BAD_SCALAR_START: 'Put quotes round a text that starts with @ or `.',
};

function syntaxProblem(fault: YAMLError): Problem {
  const firstLine = (fault.message.split('\n')[0] ?? '').replace(/[.:]$/, '');
  switch (fault.code) {
    case 'DUPLICATE_KEY':
      return error(
        'yaml-key-repeated',
        'This key is already in the same list of keys',
        'Keep one of the two.',
      );
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

function exhausted(): Problem {
  return error(
    'yaml-too-deep',
    'Lists within lists go too deep to read',
    'Look for a run of opening brackets.',
  );
}

function tagProblem(): Problem {
  return error(
    'yaml-tag',
    "A value starts with a tag, '!'",
    'Delete the tag, or put quotes round a text that starts with !.',
  );
}

function nodeProblem(node: Node, depth: number): Problem | null {
  const anchor = 'anchor' in node ? node.anchor : undefined;
  if (anchor !== undefined) {
    return error(
      'yaml-alias',
      `${quote(`&${anchor}`)} marks a value for repeating`,
      'Write the value out where it is needed.',
    );
  }
  if ('tag' in node && node.tag !== undefined) {
    return tagProblem();
  }
  if (depth > DEEPEST) {
    return error(
      'yaml-too-deep',
      `Lists within lists go deeper than ${DEEPEST} levels`,
      'Check the indents of this line.',
    );
  }
  // Escapes can bring back what the text itself must not hold.
  return isScalar(node) && typeof node.value === 'string'
    ? (hiddenCharacter(node.value)?.problem ?? null)
    : null;
}

function structureProblems(doc: Document, place: (offset: number) => Place): Problem[] {
  const problems: Problem[] = [];
  visit(doc, {
    Alias(_key, node) {
      const message = `${quote(`*${node.source}`)} repeats a value from elsewhere`;
      problems.push({
        ...error('yaml-alias', message, 'Write the value out.'),
        ...place(node.range?.[0] ?? 0),
      });
    },
    Node(_key, node, path) {
      const problem = nodeProblem(node, path.filter((step) => !isPair(step)).length - 1);
      if (problem === null) return undefined;
      problems.push({ ...problem, ...place(node.range?.[0] ?? 0) });
      return problem.code === 'yaml-too-deep' ? visit.BREAK : visit.SKIP;
    },
  });
  return problems;
}

/** Once a file is broken, the YAML library may repeat itself thousands of times: the first of each, twenty in all. */
function firstFaults(faults: readonly YAMLError[]): YAMLError[] {
  const seen = new Set<string>();
  return faults
    .filter(({ code, pos }) => {
      const key = `${code} ${pos[0]}`;
      return !seen.has(key) && seen.add(key).size <= MOST_FAULTS;
    })
    .slice(0, MOST_FAULTS);
}

function open(text: string, file: string): Result<YamlSource> {
  const lines = new LineCounter();
  const doc = parseDocument(text, {
    lineCounter: lines,
    uniqueKeys: true,
    stringKeys: true,
    prettyErrors: false,
    logLevel: 'error',
  });
  const place = (offset: number): Place => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(1, line), column: Math.max(1, col) };
  };
  const faults = [...doc.errors, ...doc.warnings];
  if (faults.length > 0) {
    // Where the stack ran out differs between machines.
    const start = ({ code, pos }: YAMLError): number => (code === 'RESOURCE_EXHAUSTION' ? 0 : pos[0]);
    return fail(...firstFaults(faults).map((fault) => ({ ...syntaxProblem(fault), ...place(start(fault)) })));
  }
  const problems = structureProblems(doc, place);
  if (problems.length > 0) return fail(...problems);
  if (doc.contents === null || (isScalar(doc.contents) && doc.contents.value === null)) {
    const hint = "Write its keys; the demo kitchen's file of that name shows which.";
    return fail({ ...error('file-empty', 'There is nothing to read here', hint), ...place(0) });
  }
  return succeed({ file, value: doc.toJS(), ...finders(doc, text, place) });
}

function nearestNode(doc: Document, path: YamlPath): Node | null {
  for (let length = path.length; length >= 0; length -= 1) {
    const node = length === 0 ? doc.contents : doc.getIn(path.slice(0, length), true);
    if (node !== null && typeof node === 'object' && 'range' in node) return node as Node;
  }
  return null;
}

function keyNode(doc: Document, path: YamlPath): Node | null {
  const parent = path.length === 1 ? doc.contents : doc.getIn(path.slice(0, -1), true);
  if (!isMap(parent)) return null;
  const pair = parent.items.find(
    (item) => isScalar(item.key) && String(item.key.value) === String(path[path.length - 1]),
  );
  return pair && isScalar(pair.key) ? pair.key : null;
}

function finders(
  doc: Document,
  text: string,
  place: (offset: number) => Place,
): Pick<YamlSource, 'at' | 'atKey' | 'atText'> {
  const at = (path: YamlPath): Place => place(nearestNode(doc, path)?.range?.[0] ?? 0);
  return {
    at,
    atKey: (path) => {
      const key = keyNode(doc, path);
      return key === null ? at(path) : place(key.range?.[0] ?? 0);
    },
    atText: (path) => {
      const node = nearestNode(doc, path);
      if (!isScalar(node) || typeof node.value !== 'string' || !node.range) return null;
      const start = node.range[0] + (node.type === 'PLAIN' ? 0 : 1);
      return text.slice(start, start + node.value.length) === node.value ? place(start) : null;
    },
  };
}

/** Reads a YAML text, or says everything that keeps it from being read. `text` has plain line ends. */
export function yamlSource(text: string, file: string): Result<YamlSource> {
  const hidden = hiddenCharacter(text);
  if (hidden !== null) return fail({ ...hidden.problem, file, ...lineColumn(text, hidden.index) });
  try {
    return open(text, file);
  } catch (thrown) {
    // The YAML library recurses: brackets nested tens of thousands deep exhaust the stack.
    if (!(thrown instanceof RangeError)) throw thrown;
    return fail({ ...exhausted(), file, line: 1, column: 1 });
  }
}
