/**
 * What does a kitchen.yaml say, section by section, as it was written? So that a file can be saved with some sections
 * changed and all others as they were.
 */
import { isMap, isNode, parseDocument, stringify, type YAMLMap } from 'yaml';
import { plainLines } from './yaml/readable-text.ts';

/** A key at the top of the file with all that belongs to it: the comment lines over it, and its lines. */
export interface KitchenSection {
  key: string;
  text: string;
}

/** What a site hands on of its own kitchen.yaml. */
export interface KitchenText {
  sections: KitchenSection[];
  /** Sections that stay at home. */
  leftOut: string[];
  /** Whether the baker's comments stay at home too. */
  withoutComments: boolean;
}

const offsetsOf = ({ items }: YAMLMap): number[] =>
  items.flatMap(({ key }) => (isNode(key) && key.range ? [key.range[0]] : []));

/** Comments and empty lines at the end of a text belong to what follows. */
function parted(text: string): [own: string, ofTheNext: string] {
  const lines = text.replace(/\n?$/, '\n').match(/[^\n]*\n/g) ?? [];
  const last = lines.findLastIndex((line) => !/^(#.*|\.\.\.)?\s*$/.test(line));
  return [lines.slice(0, last + 1).join(''), lines.slice(last + 1).join('')];
}

/** Written anew: what a file in one bracket, or set in from the edge, comes to. */
const writtenAnew = (values: object): KitchenSection[] =>
  Object.entries(values).map(([key, value]) => ({
    key,
    text: stringify({ [key]: value }, { lineWidth: 0 }),
  }));

/**
 * The sections of a sound kitchen.yaml in the order written, each ending with a line's end; `withoutComments` writes
 * them anew. Sections of a text that is no list of keys: none.
 */
export function kitchenSections(written: string, { withoutComments = false } = {}): KitchenSection[] {
  const text = plainLines(written);
  const doc = parseDocument(text, { stringKeys: true, logLevel: 'error' });
  if (!isMap(doc.contents)) return [];
  const values = doc.toJS() as object;
  const offsets = offsetsOf(doc.contents);
  const atTheEdge = offsets.every((at) => at === 0 || text[at - 1] === '\n');
  if (withoutComments || doc.contents.flow === true || !atTheEdge) return writtenAnew(values);
  let over = text.slice(0, offsets[0]).replace(/^(---|%).*\n/gm, '');
  return Object.keys(values).map((key, index) => {
    const [own, ofTheNext] = parted(text.slice(offsets[index], offsets[index + 1]));
    const section = { key, text: over + own };
    over = ofTheNext;
    return section;
  });
}
