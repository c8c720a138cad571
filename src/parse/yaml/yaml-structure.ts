/**
 * Refuses what a kitchen's file does not need and what can hide or swell a value: anchors, aliases, tags, deep
 * nesting, lists of thousands, a key that stands there twice.
 */
import { type Document, isCollection, isMap, isPair, isScalar, type Node, visit } from 'yaml';
import type { Place, Problem } from '../../domain/problem.ts';
import { error } from '../problems.ts';
import { quote } from '../quote.ts';
import { hiddenCharacter } from './readable-text.ts';
import { keyRepeated, tagProblem } from './yaml-faults.ts';

const DEEPEST = 12;
const MOST_ITEMS = 2000;
const MOST_REPEATED = 20;

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
  if (isCollection(node) && node.items.length > MOST_ITEMS) {
    const message = `${node.items.length} entries stand in one list; at most ${MOST_ITEMS} are read`;
    return error('yaml-too-many', message, 'Take out what does not belong in this file.');
  }
  // Escapes can bring back what the text itself must not hold.
  return isScalar(node) && typeof node.value === 'string'
    ? (hiddenCharacter(node.value)?.problem ?? null)
    : null;
}

/** The keys of a group that stand there already. */
function repeatedKeys(node: Node): Node[] {
  if (!isMap(node)) return [];
  const seen = new Set<string>();
  return node.items
    .flatMap(({ key }) => {
      if (!isScalar(key)) return [];
      const name = String(key.value);
      return seen.has(name) ? [key] : seen.add(name) && [];
    })
    .slice(0, MOST_REPEATED);
}

/** Every such thing in a document, each at its place. */
export function structureProblems(doc: Document, place: (offset: number) => Place): Problem[] {
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
      for (const key of repeatedKeys(node))
        problems.push({ ...keyRepeated(), ...place(key.range?.[0] ?? 0) });
      if (problem === null) return undefined;
      problems.push({ ...problem, ...place(node.range?.[0] ?? 0) });
      return problem.code === 'yaml-too-deep' || problem.code === 'yaml-too-many' ? visit.BREAK : visit.SKIP;
    },
  });
  return problems;
}
