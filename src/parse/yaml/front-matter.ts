/** Splits a Markdown file into the YAML between its first two '---' lines and the text below. */
import { fail, type Result, succeed } from '../../domain/result.ts';
import { error } from '../problems.ts';
import { hiddenCharacter, lineColumn } from './readable-text.ts';
import { type YamlSource, yamlSource } from './yaml-source.ts';

export interface FrontMatter {
  source: YamlSource;
  body: string;
}

const FENCE = /^---[ \t]*$/m;

/** The two parts of a Markdown file with plain line ends, with columns and lines of the whole file. */
export function frontMatter(text: string, file: string): Result<FrontMatter> {
  const start = { file, line: 1, column: 1 };
  const hidden = hiddenCharacter(text);
  if (hidden !== null) return fail({ ...hidden.problem, file, ...lineColumn(text, hidden.index) });
  if (!/^---[ \t]*(\n|$)/.test(text)) {
    const hint =
      "Start the file with a line '---', then keys such as 'name: …', then '---' again, then the text.";
    return fail({
      ...error('front-matter-missing', "The file does not start with a line '---'", hint),
      ...start,
    });
  }
  const close = FENCE.exec(text.slice(3));
  if (close === null) {
    const hint = "Put a line '---' between the keys and the text.";
    return fail({
      ...error('front-matter-unclosed', "The keys at the top have no closing line '---'", hint),
      ...start,
    });
  }
  const end = 3 + close.index;
  // Spaces in place of the opening fence keep every line and column where it was.
  const source = yamlSource(`   ${text.slice(3, end)}`, file);
  return source.ok
    ? succeed({ source: source.value, body: text.slice(end + close[0].length).trim() })
    : source;
}
