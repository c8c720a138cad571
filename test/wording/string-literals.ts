/** The texts in quotes of a TypeScript file, as far as telling sentences apart from code needs it. */

/** After these a slash begins a pattern, not a division. */
const BEFORE_PATTERN = /[(,=:[!&|?{};\n]\s*$/;

function skipPattern(code: string, from: number): number {
  let inClass = false;
  for (let at = from + 1; at < code.length; at += 1) {
    const sign = code[at];
    if (sign === '\\') at += 1;
    else if (sign === '[') inClass = true;
    else if (sign === ']') inClass = false;
    else if (sign === '/' && !inClass) return at + 1;
  }
  return code.length;
}

/** Reads a template from its backtick: its own words go in, the code within is read as code. */
function readTemplate(code: string, from: number, found: string[]): number {
  let text = '';
  for (let at = from + 1; at < code.length; at += 1) {
    if (code[at] === '\\') at += 1;
    else if (code[at] === '`') {
      found.push(text);
      return at + 1;
    } else if (code.startsWith('${', at)) {
      at = readCode(code, at + 2, found, '}') - 1;
      text += '…';
    } else text += code[at];
  }
  return code.length;
}

function readQuoted(code: string, from: number, found: string[]): number {
  const quote = code[from];
  let at = from + 1;
  while (at < code.length && code[at] !== quote && code[at] !== '\n') at += code[at] === '\\' ? 2 : 1;
  found.push(code.slice(from + 1, at));
  return at + 1;
}

/** Reads code up to an unmatched `until`. */
function readCode(code: string, from: number, found: string[], until: string): number {
  let depth = 0;
  let at = from;
  while (at < code.length) {
    const sign = code[at];
    if (code.startsWith('//', at)) at = Math.max(at, code.indexOf('\n', at));
    else if (code.startsWith('/*', at)) at = code.indexOf('*/', at) + 2;
    else if (sign === "'" || sign === '"') at = readQuoted(code, at, found);
    else if (sign === '`') at = readTemplate(code, at, found);
    else if (sign === '/' && BEFORE_PATTERN.test(code.slice(Math.max(0, at - 20), at)))
      at = skipPattern(code, at);
    else {
      if (sign === until && depth === 0) return at + 1;
      depth += sign === '{' ? 1 : sign === '}' ? -1 : 0;
      at += 1;
    }
  }
  return code.length;
}

export function stringLiterals(code: string): string[] {
  const found: string[] = [];
  readCode(code, 0, found, '\u0000');
  return found;
}
