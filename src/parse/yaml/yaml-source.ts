/**
 * A YAML text as plain data that remembers where everything stood. Anchors, aliases, tags, several documents
 * and nesting beyond 12 levels are refused: a kitchen's file needs none of them, and they can hide or swell it.
 */
import { type Document, isScalar, LineCounter, parseDocument, type YAMLError } from 'yaml';
import type { Place } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { error } from '../problems.ts';
import { hiddenCharacter, lineColumn } from './readable-text.ts';
import { tooDeepAt } from './yaml-depth.ts';
import { exhausted, firstFaults, syntaxProblem } from './yaml-faults.ts';
import { nodeFinder } from './yaml-nodes.ts';
import { structureProblems } from './yaml-structure.ts';

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

function open(text: string, file: string): Result<YamlSource> {
  const lines = new LineCounter();
  const doc = parseDocument(text, {
    lineCounter: lines,
    // The library compares every key with every other; structureProblems does it in one go.
    uniqueKeys: false,
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
    // Where the stack ran out, how often, and what is missing after that differ between machines.
    const isExhausted = ({ code }: YAMLError): boolean => code === 'RESOURCE_EXHAUSTION';
    const deep = faults.find(isExhausted);
    const told = deep === undefined ? firstFaults(faults) : [deep];
    const start = (fault: YAMLError): number => (isExhausted(fault) ? 0 : fault.pos[0]);
    return fail(...told.map((fault) => ({ ...syntaxProblem(fault), ...place(start(fault)) })));
  }
  const problems = structureProblems(doc, place);
  if (problems.length > 0) return fail(...problems);
  if (doc.contents === null || (isScalar(doc.contents) && doc.contents.value === null)) {
    const hint = "Write its keys; the demo kitchen's file of that name shows which.";
    return fail({ ...error('file-empty', 'There is nothing to read here', hint), ...place(0) });
  }
  return succeed({ file, value: doc.toJS(), ...finders(doc, text, place) });
}

function finders(
  doc: Document,
  text: string,
  place: (offset: number) => Place,
): Pick<YamlSource, 'at' | 'atKey' | 'atText'> {
  const { nearest, key: keyOf } = nodeFinder(doc);
  const at = (path: YamlPath): Place => place(nearest(path)?.range?.[0] ?? 0);
  return {
    at,
    atKey: (path) => {
      const key = keyOf(path);
      return key === null ? at(path) : place(key.range?.[0] ?? 0);
    },
    atText: (path) => {
      const node = nearest(path);
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
  const deep = tooDeepAt(text);
  if (deep !== null) return fail({ ...exhausted(), file, ...lineColumn(text, deep) });
  try {
    return open(text, file);
  } catch (thrown) {
    // The YAML library recurses, and what has got past the look at its depth may still exhaust the stack.
    if (!(thrown instanceof RangeError)) throw thrown;
    return fail({ ...exhausted(), file, line: 1, column: 1 });
  }
}
