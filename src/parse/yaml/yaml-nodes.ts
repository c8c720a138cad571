/**
 * The nodes of a document by their path. The library looks through all keys of a group each time; here each group
 * is gone through once, so that a file with thousands of slips is still told about in a moment.
 */
import { type Document, isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap } from 'yaml';
import type { YamlPath } from './yaml-source.ts';

export interface NodeFinder {
  /** The node at a path, or the nearest one around it. */
  nearest(path: YamlPath): Node | null;
  /** The node of a key. */
  key(path: YamlPath): Node | null;
}

type Step = string | number;

const asNode = (found: unknown): Node | null =>
  typeof found === 'object' && found !== null && 'range' in found ? (found as Node) : null;

/** Finds nodes of a document that does not change any more. */
export function nodeFinder(doc: Document): NodeFinder {
  const groups = new WeakMap<YAMLMap, Map<string, Pair>>();
  const pairsOf = (group: YAMLMap): Map<string, Pair> => {
    const known = groups.get(group);
    if (known !== undefined) return known;
    const pairs = new Map<string, Pair>();
    for (const pair of group.items) if (isScalar(pair.key)) pairs.set(String(pair.key.value), pair);
    groups.set(group, pairs);
    return pairs;
  };
  const below = (node: Node | null, step: Step): Node | null => {
    if (isMap(node)) return asNode(pairsOf(node).get(String(step))?.value);
    return isSeq(node) ? asNode(node.items[Number(step)]) : null;
  };
  const nearest = (path: YamlPath): Node | null => {
    let here = asNode(doc.contents);
    for (const step of path) {
      const next = below(here, step);
      if (next === null) return here;
      here = next;
    }
    return here;
  };
  return {
    nearest,
    key(path) {
      let parent = asNode(doc.contents);
      for (const step of path.slice(0, -1)) parent = below(parent, step);
      return isMap(parent) ? asNode(pairsOf(parent).get(String(path[path.length - 1]))?.key) : null;
    },
  };
}
