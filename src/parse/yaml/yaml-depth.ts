/**
 * How deep a YAML text nests, told from its marks alone and without recursion. The library that composes it recurses,
 * and an engine whose stack runs out inside a regular expression ends the process at once, where nobody can catch it.
 */
import { CST, Lexer } from 'yaml';

/** Far beyond what a kitchen's file may have, and far below what any stack holds. */
const DEEPEST = 100;

/** Tokens that stand for no text. */
const WITHOUT_TEXT: ReadonlySet<string> = new Set([CST.DOCUMENT, CST.FLOW_END, CST.SCALAR]);

interface Depth {
  /** Indents of the lines that the present one stands within. */
  indents: number[];
  /** Marks of lists and keys side by side on the present line. */
  marks: number;
  brackets: number;
  atLineStart: boolean;
}

function indented(depth: Depth, indent: number): void {
  depth.indents = depth.indents.filter((outer) => outer < indent);
  depth.indents.push(indent);
}

function step(depth: Depth, token: string): void {
  const kind = CST.tokenType(token);
  if (kind === 'newline') {
    depth.marks = 0;
    depth.atLineStart = true;
    return;
  }
  if (depth.atLineStart && depth.brackets === 0 && kind !== 'comment')
    indented(depth, kind === 'space' ? token.length : 0);
  depth.atLineStart = false;
  if (kind === 'flow-seq-start' || kind === 'flow-map-start') depth.brackets += 1;
  else if (kind === 'flow-seq-end' || kind === 'flow-map-end') depth.brackets -= 1;
  // Within brackets such marks stand between neighbours, and nest nothing.
  else if (depth.brackets > 0) return;
  else if (kind === 'seq-item-ind' || kind === 'explicit-key-ind' || kind === 'map-value-ind')
    depth.marks += 1;
}

/** Where a text nests deeper than anything can be read, or null. */
export function tooDeepAt(text: string): number | null {
  const depth: Depth = { indents: [], marks: 0, brackets: 0, atLineStart: true };
  let offset = 0;
  for (const token of new Lexer().lex(text)) {
    step(depth, token);
    if (depth.indents.length + depth.brackets + depth.marks > DEEPEST) return offset;
    if (!WITHOUT_TEXT.has(token)) offset += token.length;
  }
  return null;
}
