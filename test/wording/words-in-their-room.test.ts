/** Sentences live in src/wording: a locale is whole only where no other room speaks. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CARD_SIZES, WALL_SIZES } from '../../src/domain/printable.ts';
import { TIN_MATERIALS } from '../../src/domain/tin.ts';
import { stringLiterals } from './string-literals.ts';

const filesOf = (folder: string, ending: RegExp): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => ending.test(path))
    .map((path) => join(folder, path).replaceAll('\\', '/'));

/** Two words, a space between. */
const SENTENCE = /\p{L}{2,}[,.:;]? \p{L}{2,}/u;
/** Exceptions are for whoever mends the program. */
const EXCEPTION = /new Error\((?:[^()]|\([^()]*\))*\)/g;
/** Words of the content format, and names that code gives its own choices. */
const TOKENS: ReadonlySet<string> = new Set([
  ...[...TIN_MATERIALS, ...CARD_SIZES, ...WALL_SIZES],
  ...[
    'use by',
    'sold at a stall',
    'set up at the venue',
    'made to order',
    'prepacked for direct sale',
    'cutting cake',
  ],
  ...['small capitals', 'step up', 'as words', 'close up', 'left out', 'where the page ends'],
]);
/** Styles, font names and the text that fonts are measured with. */
const STYLES = /src\/site\/(?:house-css|house-fonts|meanwhile-fonts|logo|bundles)\.ts$/;
const MEDIA = /^screen and \(/;
const spoken = (text: string): string => text.replace(/<[^>]*>?/g, ' ');

function sentencesIn(path: string): string[] {
  const code = readFileSync(path, 'utf8').replace(EXCEPTION, '');
  return stringLiterals(code)
    .filter((text) => SENTENCE.test(spoken(text)) && !TOKENS.has(text) && !MEDIA.test(text))
    .map((text) => `${path}: ${text}`);
}

describe('Sentences stand in the wording room alone', () => {
  it.each(['src/views', 'src/prints', 'src/site'])('%s has none', (room) => {
    expect(
      filesOf(room, /\.tsx?$/)
        .filter((path) => !STYLES.test(path))
        .flatMap(sentencesIn),
    ).toEqual([]);
  });
});
