/**
 * The rules for setting glyphs that a font brings along (OpenType 1.9, tables GSUB and GPOS, from memory), read from
 * its bytes where they stand: the font library would make an object of every number in them first.
 */
import type { TrueTypeGlyphs } from './pdfkit-internals.ts';

/** One rule, out of the wrapping that large fonts put around it. */
export interface LayoutRule {
  type: number;
  /** The rule's own bytes, and what follows them. */
  view: DataView;
  /** Its form: the first number of it. */
  form: number;
  /** Whether the rule looks past some glyphs that are not marks. */
  skips: boolean;
}

export interface LayoutTable {
  kind: 'GSUB' | 'GPOS';
  view: DataView;
  /** Lookups that have been asked for: several scripts share most. */
  lookups: Map<number, LayoutRule[]>;
}

/** The number that wraps another rule. */
const EXTENSION = { GSUB: 7, GPOS: 9 } as const;
const IGNORES_BASES_OR_LIGATURES = 0b110;
/** Which of a font's sets of rules text of a script takes: the first that is there. */
const SCRIPTS = { latin: ['latn', 'DFLT', 'dflt'], none: ['DFLT', 'dflt', 'latn'] } as const;

export type Script = keyof typeof SCRIPTS;

/** The bytes of a font's table, null where it has none. */
export function tableView(font: TrueTypeGlyphs, tag: string): DataView | null {
  const length = font.directory.tables[tag]?.length ?? 0;
  if (length === 0) return null;
  const bytes = font._getTableStream(tag).readBuffer(length);
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

export function layoutTable(font: TrueTypeGlyphs, kind: LayoutTable['kind']): LayoutTable | null {
  const view = tableView(font, kind);
  return view === null ? null : { kind, view, lookups: new Map() };
}

const from = (view: DataView, offset: number): DataView =>
  new DataView(view.buffer, view.byteOffset + offset, view.byteLength - offset);

/** What an offset of two bytes at this place leads to, counted from the beginning of the view. */
export const led = (view: DataView, at: number): DataView => from(view, view.getUint16(at));

/** Numbers of two bytes, after their count. */
function numbers(view: DataView, at: number, count = view.getUint16(at)): number[] {
  return Array.from({ length: count }, (_, index) => view.getUint16(at + 2 + 2 * index));
}

const tagAt = (view: DataView, at: number): string =>
  String.fromCharCode(...[0, 1, 2, 3].map((index) => view.getUint8(at + index)));

/** Entries of a list of tags, each with where it leads. */
function tagged(list: DataView): { tag: string; view: DataView }[] {
  return Array.from({ length: list.getUint16(0) }, (_, index) => {
    const at = 2 + 6 * index;
    return { tag: tagAt(list, at), view: led(list, at + 4) };
  });
}

/** Numbers of the lookups behind some features of a script, in the order in which they act. */
function lookupsOf({ view }: LayoutTable, script: Script, features: ReadonlySet<string>): number[] {
  const scripts = tagged(led(view, 4));
  const chosen = SCRIPTS[script].flatMap((tag) => scripts.find((entry) => entry.tag === tag) ?? [])[0];
  // A script without a language of its own for all has no rules here.
  if (chosen === undefined || chosen.view.getUint16(0) === 0) return [];
  const all = tagged(led(view, 6));
  const asked = new Map<string, DataView>();
  for (const index of numbers(led(chosen.view, 0), 4)) {
    const feature = all[index];
    if (feature && features.has(feature.tag)) asked.set(feature.tag, feature.view);
  }
  return [...asked.values()].flatMap((feature) => numbers(feature, 2)).sort((a, b) => a - b);
}

function lookupRules(table: LayoutTable, index: number): LayoutRule[] {
  const known = table.lookups.get(index) ?? readLookup(table, index);
  table.lookups.set(index, known);
  return known;
}

function readLookup({ kind, view }: LayoutTable, index: number): LayoutRule[] {
  const lookup = led(led(view, 8), 2 + 2 * index);
  const type = lookup.getUint16(0);
  const skips = (lookup.getUint16(2) & IGNORES_BASES_OR_LIGATURES) !== 0;
  return numbers(lookup, 4).map((offset) => {
    const rule = from(lookup, offset);
    const inner = type === EXTENSION[kind] ? from(rule, rule.getUint32(4)) : rule;
    return { type: inner === rule ? type : rule.getUint16(2), view: inner, form: inner.getUint16(0), skips };
  });
}

/** The rules behind some features, lookup by lookup: of each the first that takes a glyph acts on it. */
export const rulesOf = (
  table: LayoutTable | null,
  script: Script,
  features: ReadonlySet<string>,
): LayoutRule[][] =>
  table === null ? [] : lookupsOf(table, script, features).map((index) => lookupRules(table, index));

/** Those of every script, each once. */
export function everyRule(table: LayoutTable | null, features: ReadonlySet<string>): LayoutRule[] {
  if (table === null) return [];
  const lookups = new Set([...lookupsOf(table, 'latin', features), ...lookupsOf(table, 'none', features)]);
  return [...lookups].flatMap((index) => lookupRules(table, index));
}

/** All glyphs of a coverage table. */
export function covered(coverage: DataView): number[] {
  if (coverage.getUint16(0) === 1) return numbers(coverage, 2);
  return Array.from({ length: coverage.getUint16(2) }, (_, range) => {
    const [first, last] = [coverage.getUint16(4 + 6 * range), coverage.getUint16(6 + 6 * range)];
    return Array.from({ length: last - first + 1 }, (_, index) => first + index);
  }).flat();
}

/** Rules over several glyphs in their third form name the glyphs of each place: before, at, and after. */
export function places(
  { type, view }: LayoutRule,
  context: number,
): { input: DataView[]; around: DataView[] } {
  const listed = (at: number) => numbers(view, at).map((offset) => from(view, offset));
  if (type === context) {
    const count = view.getUint16(2);
    return { input: numbers(view, 4, count).map((offset) => from(view, offset)), around: [] };
  }
  const before = listed(2);
  const inputAt = 4 + 2 * before.length;
  const input = listed(inputAt);
  return { input, around: [...before, ...listed(inputAt + 2 + 2 * input.length)] };
}

export interface Ligature {
  /** Without the first. */
  components: number[];
  glyph: number;
}

/** What may join, by its first glyph. */
export function ligatures({ view }: LayoutRule): [first: number, ligature: Ligature][] {
  return covered(led(view, 2)).flatMap((first, index) => {
    const set = led(view, 6 + 2 * index);
    return numbers(set, 0).map((offset): [number, Ligature] => {
      const count = set.getUint16(offset + 2) - 1;
      return [first, { components: numbers(set, offset + 2, count), glyph: set.getUint16(offset) }];
    });
  });
}

const ALTERNATES = 3;

/** One glyph for one: of several to choose from the first. */
export function replacements({ type, form, view }: LayoutRule): [from: number, to: number][] {
  const glyphs = covered(led(view, 2));
  if (type === ALTERNATES) return glyphs.map((id, index) => [id, led(view, 6 + 2 * index).getUint16(2)]);
  if (form === 1) return glyphs.map((id) => [id, (id + view.getInt16(4)) & 0xffff]);
  return glyphs.map((id, index) => [id, view.getUint16(6 + 2 * index)]);
}
