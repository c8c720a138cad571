/** Text turned into glyphs of one font, once: measuring, drawing and later documents of a run share the result. */
import type { Font } from 'fontkit';
import { glyphPair, type PairwiseText, pairwiseText } from './pairwise-font.ts';

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

export interface ShapedText {
  glyphs: ShapedGlyph[];
  /** Thousandths of the type size. */
  width: number;
  /** Code points that the font cannot draw. */
  missing: number[];
}

const FRACTION_SLASH = '\u2044';

function featuresFor(text: string, tabular: boolean, smallCapitals: boolean): string[] {
  const features = [...(text.includes(FRACTION_SLASH) ? ['frac'] : []), ...(smallCapitals ? ['smcp'] : [])];
  return tabular ? [...features, 'tnum', 'lnum'] : features;
}

/** A no-break space has done its work once lines are broken; it and the space share a glyph, whose first meaning would stay. */
const spaced = (text: string): string => text.replaceAll('\u00a0', ' ');

const codesOf = (text: string): number[] => Array.from(text, (sign) => sign.codePointAt(0) ?? 0);

const shapedText = (glyphs: ShapedGlyph[], missing: number[]): ShapedText => ({
  glyphs,
  width: glyphs.reduce((sum, glyph) => sum + glyph.width + glyph.kern, 0),
  missing,
});

/** Shapes a line of text as one; what it says when read aloud stays as written, whatever its letters look like. */
export function shapeText(font: Font, text: string, tabular: boolean, smallCapitals = false): ShapedText {
  const plain = spaced(text);
  const asked = codesOf(plain);
  const run = font.layout(plain, featuresFor(plain, tabular, smallCapitals));
  const scale = 1000 / font.unitsPerEm;
  const oneToOne = run.glyphs.length === asked.length;
  const glyphs = run.glyphs.map((glyph, index) => {
    const position = run.positions[index];
    const code = asked[index];
    return {
      id: glyph.id,
      // The font keeps a glyph's first code points for good; ours must not depend on earlier documents.
      codePoints: oneToOne && code !== undefined ? [code] : glyph.codePoints,
      width: glyph.advanceWidth * scale,
      kern: ((position?.xAdvance ?? 0) - glyph.advanceWidth) * scale,
      dx: (position?.xOffset ?? 0) * scale,
      dy: (position?.yOffset ?? 0) * scale,
    };
  });
  return shapedText(
    glyphs,
    asked.filter((code) => !font.hasGlyphForCodePoint(code)),
  );
}

export type Shaper = (text: string, tabular: boolean) => ShapedText;

const LATIN = /[a-z\u00aa\u00ba\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u017f]/i;
const END = 0;

/** Letters as they stand before each other one, out of the texts shaped so far. */
class SeenPairs {
  readonly #plain: PairwiseText;
  readonly #glyphs = new Map<number, ShapedGlyph>();

  constructor(plain: PairwiseText) {
    this.#plain = plain;
  }

  /** The glyphs of a text all of whose pairs have been seen. */
  compose(codes: number[]): ShapedGlyph[] | null {
    const glyphs: ShapedGlyph[] = [];
    for (let at = 0; at < codes.length; at += 1) {
      const glyph = this.#glyphs.get(glyphPair(codes[at] ?? END, codes[at + 1] ?? END));
      if (glyph === undefined) return null;
      glyphs.push(glyph);
    }
    return glyphs;
  }

  /** Learns from a text without joined letters. */
  learn(codes: number[], { glyphs, missing }: ShapedText): void {
    if (missing.length > 0 || glyphs.length !== codes.length) return;
    const { codes: plain, undecided } = this.#plain;
    if (!codes.every((code) => plain.has(code))) return;
    if (glyphs.some(({ id }, at) => undecided.has(glyphPair(id, glyphs[at + 1]?.id ?? END)))) return;
    for (const [at, glyph] of glyphs.entries()) {
      const code = codes[at] ?? END;
      this.#glyphs.set(glyphPair(code, codes[at + 1] ?? END), glyph);
      if (!this.#glyphs.has(glyphPair(code, END)))
        this.#glyphs.set(glyphPair(code, END), { ...glyph, kern: 0 });
    }
  }
}

/** Shapes as `shapeText` does, from pairs already seen where the font allows it: a kitchen says few pairs, and many lines. */
export function shaperFor(font: Font): Shaper {
  const paired = pairwiseText(font);
  if (paired === null) return (text, tabular) => shapeText(font, text, tabular);
  const seen = [0, 1, 2, 3].map(() => new SeenPairs(paired));
  return (text, tabular) => {
    const plain = spaced(text);
    // The script decides the font's rules; text without a Latin letter has none.
    const pairs = seen[(tabular ? 2 : 0) + (LATIN.test(plain) ? 1 : 0)];
    if (pairs === undefined || plain.includes(FRACTION_SLASH)) return shapeText(font, text, tabular);
    const codes = codesOf(plain);
    const known = pairs.compose(codes);
    if (known !== null) return shapedText(known, []);
    const fresh = shapeText(font, text, tabular);
    pairs.learn(codes, fresh);
    return fresh;
  };
}
