/** Text turned into glyphs of one font, once: measuring, drawing and later documents of a run share the result. */
import type { Font } from 'fontkit';
import type { Script } from './layout-tables.ts';
import { PairSetter, type ShapedGlyph } from './pair-setter.ts';
import { pairwiseText } from './pairwise-font.ts';

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

/** The code points of a text: what every line begins with, so that it is done without asking for them one by one. */
function codesOf(text: string): number[] {
  const codes: number[] = [];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.codePointAt(at) ?? 0;
    codes.push(code);
    if (code > 0xffff) at += 1;
  }
  return codes;
}

function shapedText(glyphs: ShapedGlyph[], missing: number[]): ShapedText {
  let width = 0;
  for (const glyph of glyphs) width = width + glyph.width + glyph.kern;
  return { glyphs, width, missing };
}

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
/** Null where a font's bytes end before its rules do: the library is asked how it takes them. */
function readable<T>(read: () => T | null): T | null {
  try {
    return read();
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

/** Shapes as `shapeText` does, by the font's own rules where they are plain: the library sets a line ten times slower. */
export function shaperFor(font: Font): Shaper {
  const paired = readable(() => pairwiseText(font));
  if (paired === null) return (text, tabular) => shapeText(font, text, tabular);
  const setters: Partial<Record<Script, PairSetter>>[] = [{}, {}];
  const setterFor = (script: Script, tabular: boolean): PairSetter => {
    const known = setters[tabular ? 1 : 0] ?? {};
    known[script] ??= new PairSetter(font, paired.codes, paired.rules(script, tabular));
    return known[script];
  };
  return (text, tabular) => {
    const plain = spaced(text);
    // The script decides the font's rules; text without a Latin letter has none.
    const script = LATIN.test(plain) ? 'latin' : 'none';
    const glyphs = readable(() => setterFor(script, tabular).set(codesOf(plain)));
    return glyphs === null ? shapeText(font, text, tabular) : shapedText(glyphs, []);
  };
}
