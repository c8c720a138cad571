/**
 * A TrueType file of some of a font's glyphs, as documents embed it (OpenType 1.9, 'Organization of an OpenType
 * font', from memory): what the font library writes, without asking it about every number of every table.
 */
import type { TrueTypeGlyphs } from './pdfkit-internals.ts';

export interface FileGlyph {
  outline: Uint8Array;
  /** Font units. */
  advance: number;
  bearing: number;
}

/** In the library's order. */
const TAGS = ['head', 'hhea', 'loca', 'maxp', 'cvt ', 'prep', 'glyf', 'hmtx', 'fpgm'] as const;
const MADE: ReadonlySet<string> = new Set(['loca', 'glyf', 'hmtx']);
/** Longer ones have room at their end that belongs to nobody. */
const LONGEST: Record<string, number> = { head: 54, hhea: 36, maxp: 32 };

type Tables = Map<string, Uint8Array>;

const kept = new WeakMap<TrueTypeGlyphs, Tables>();

/** The font's own tables that every document embeds as they are but for a number in them. */
function keptTables(font: TrueTypeGlyphs): Tables {
  const known = kept.get(font);
  if (known) return known;
  const tables: Tables = new Map();
  for (const tag of TAGS) {
    const length = Math.min(
      font.directory.tables[tag]?.length ?? 0,
      LONGEST[tag] ?? Number.POSITIVE_INFINITY,
    );
    if (length > 0 && !MADE.has(tag)) tables.set(tag, font._getTableStream(tag).readBuffer(length).slice());
  }
  kept.set(font, tables);
  return tables;
}

function withNumber(table: Uint8Array | undefined, at: number, number: number): Uint8Array {
  const own = new Uint8Array(table ?? []);
  new DataView(own.buffer).setUint16(at, number);
  return own;
}

/** Where each glyph's outline begins, halved in the short form. */
function locations(glyphs: readonly FileGlyph[], short: boolean): Uint8Array {
  const view = new DataView(new ArrayBuffer((glyphs.length + 1) * (short ? 2 : 4)));
  let offset = 0;
  for (let at = 0; at <= glyphs.length; at += 1) {
    if (short) view.setUint16(at * 2, offset >>> 1);
    else view.setUint32(at * 4, offset);
    offset += glyphs[at]?.outline.length ?? 0;
  }
  return new Uint8Array(view.buffer);
}

function measures(glyphs: readonly FileGlyph[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(glyphs.length * 4));
  for (const [at, { advance, bearing }] of glyphs.entries()) {
    view.setUint16(at * 4, advance);
    view.setInt16(at * 4 + 2, bearing);
  }
  return new Uint8Array(view.buffer);
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

/** The file's list of its tables; nobody checks their sums, and they stand one after the other without a gap. */
function directory(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  const count = tables.length;
  const exponent = Math.floor(Math.log2(count));
  const view = new DataView(new ArrayBuffer(12 + 16 * count));
  const put = (text: string, at: number) => {
    for (let sign = 0; sign < 4; sign += 1) view.setUint8(at + sign, text.charCodeAt(sign));
  };
  put('true', 0);
  for (const [at, number] of [count, 16 << exponent, exponent, 16 * count - (16 << exponent)].entries())
    view.setUint16(4 + 2 * at, number);
  let offset = view.byteLength;
  for (const [index, [tag, { length }]] of tables.entries()) {
    const at = 12 + 16 * index;
    put(tag, at);
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, length);
    offset += length;
  }
  return new Uint8Array(view.buffer);
}

/** The glyphs by their numbers in the file; the first is shown for signs that the font lacks. */
export function fontFile(font: TrueTypeGlyphs, glyphs: readonly FileGlyph[]): Uint8Array {
  const own = keptTables(font);
  const { version } = font.loca;
  const made: Tables = new Map([
    ...own,
    ['head', withNumber(own.get('head'), 50, version)],
    ['hhea', withNumber(own.get('hhea'), 34, glyphs.length)],
    ['maxp', withNumber(own.get('maxp'), 4, glyphs.length)],
    ['loca', locations(glyphs, version === 0)],
    ['glyf', joined(glyphs.map(({ outline }) => outline))],
    ['hmtx', measures(glyphs)],
  ]);
  const tables = TAGS.flatMap((tag) => {
    const bytes = made.get(tag);
    return bytes ? [[tag, bytes] as const] : [];
  });
  return joined([directory(tables), ...tables.map(([, bytes]) => bytes)]);
}
