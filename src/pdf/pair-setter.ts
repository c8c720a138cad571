/** Text set from a font's rules for single glyphs, joins and pairs; each two letters are looked up once in a run. */
import type { Font } from 'fontkit';
import { tableView } from './layout-tables.ts';
import type { Joins, PairRules } from './pairwise-font.ts';
import type { TrueTypeGlyphs } from './pdfkit-internals.ts';

export interface ShapedGlyph {
  id: number;
  /** What the glyph says when text is copied out or read aloud. */
  codePoints: readonly number[];
  /** The font's own advance, thousandths of the type size. */
  width: number;
  /** Kerning after the glyph, same unit. */
  kern: number;
  dx: number;
  dy: number;
}

type Said = Pick<ShapedGlyph, 'id' | 'codePoints'>;

/** After the last letter. */
const END = 0;

/** Two code points as one number. */
const pairOf = (code: number, next: number): number => code * 0x10000 + next;

/** Tells each glyph's advance, font units (OpenType 1.9, tables hhea and hmtx, from memory). */
function advances(font: TrueTypeGlyphs): (glyph: number) => number {
  const [head, table] = [tableView(font, 'hhea'), tableView(font, 'hmtx')];
  if (head === null || table === null) return () => 0;
  const last = head.getUint16(34) - 1;
  return (glyph) => table.getUint16(4 * Math.min(glyph, last));
}

function joinedBy(joins: Joins, said: readonly Said[]): Said[] {
  const joined: Said[] = [];
  for (let at = 0; at < said.length; at += 1) {
    const first = said[at];
    if (first === undefined) break;
    const ligature = joins
      .get(first.id)
      ?.find(({ components }) => components.every((id, index) => said[at + 1 + index]?.id === id));
    const count = ligature?.components.length ?? 0;
    const codePoints = said.slice(at, at + 1 + count).flatMap((one) => one.codePoints);
    joined.push(ligature ? { id: ligature.glyph, codePoints } : first);
    at += count;
  }
  return joined;
}

export class PairSetter {
  readonly #codes: ReadonlySet<number>;
  readonly #rules: PairRules;
  readonly #advance: (glyph: number) => number;
  readonly #scale: number;
  /** Letters before each other one; null where the two may join. */
  readonly #known = new Map<number, ShapedGlyph | null>();

  /** `codes`: the letters that the rules are whole for. */
  constructor(font: Font, codes: ReadonlySet<number>, rules: PairRules) {
    this.#codes = codes;
    this.#rules = rules;
    this.#advance = advances(font as unknown as TrueTypeGlyphs);
    this.#scale = 1000 / font.unitsPerEm;
  }

  #glyph({ id, codePoints }: Said, next: number | null): ShapedGlyph {
    const kern = next === null ? 0 : this.#rules.kerning(id, next);
    return {
      id,
      codePoints,
      width: this.#advance(id) * this.#scale,
      kern: kern * this.#scale,
      dx: 0,
      dy: 0,
    };
  }

  #pair(code: number, next: number): ShapedGlyph | null {
    const id = this.#rules.glyphOf(code);
    if (next === END) return this.#glyph({ id, codePoints: [code] }, null);
    const nextId = this.#rules.glyphOf(next);
    const join = this.#rules.joins.some((joins) =>
      joins.get(id)?.some(({ components }) => components[0] === nextId),
    );
    return join ? null : this.#glyph({ id, codePoints: [code] }, nextId);
  }

  #joined(codes: readonly number[]): ShapedGlyph[] {
    let said: Said[] = codes.map((code) => ({ id: this.#rules.glyphOf(code), codePoints: [code] }));
    for (const joins of this.#rules.joins) said = joinedBy(joins, said);
    return said.map((one, index) => this.#glyph(one, said[index + 1]?.id ?? null));
  }

  /** Null where a letter is not one that can be set here. */
  set(codes: readonly number[]): ShapedGlyph[] | null {
    const glyphs: ShapedGlyph[] = [];
    for (let at = 0; at < codes.length; at += 1) {
      const [code, next] = [codes[at] ?? END, codes[at + 1] ?? END];
      const key = pairOf(code, next);
      let glyph = this.#known.get(key);
      if (glyph === undefined) {
        if (!this.#codes.has(code) || (next !== END && !this.#codes.has(next))) return null;
        glyph = this.#pair(code, next);
        this.#known.set(key, glyph);
      }
      if (glyph === null) return codes.every((each) => this.#codes.has(each)) ? this.#joined(codes) : null;
      glyphs.push(glyph);
    }
    return glyphs;
  }
}
