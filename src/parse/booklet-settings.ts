/** `booklet` in kitchen.yaml: the baker's own words, and the paper it is printed on. */
import type { BookletSettings } from '../domain/printable.ts';
import { succeed } from '../domain/result.ts';
import { parseWithin } from './finishing-settings.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';

const SHEETS = 100;
/** Tissue to card. */
const STACK = { leastMm: 4, mostMm: 30 };

/** One leaf's thickness from the height of a hundred: the way to measure it with a ruler. */
function parseLeafMm(text: string) {
  const stack = parseWithin(text, STACK);
  return stack.ok ? succeed(stack.value / SHEETS) : stack;
}

/** What is left out stays undefined; what is wrong is reported. */
export function readBooklet(reader: YamlReader): BookletSettings {
  return present<BookletSettings>({
    editionNote: reader.text('booklet', 'edition_note'),
    licence: reader.text('booklet', 'licence'),
    preparedFor: reader.text('booklet', 'prepared_for'),
    paperThicknessMm: reader.parsed(parseLeafMm, 'booklet', 'hundred_sheets'),
  } as { [K in keyof BookletSettings]: BookletSettings[K] | undefined });
}
