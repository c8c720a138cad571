/** Text turned into glyphs of one font, once: measuring, drawing and later documents of a run share the result. */
import type { Font } from 'fontkit';

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

function featuresFor(text: string, tabular: boolean): string[] {
  const features = text.includes(FRACTION_SLASH) ? ['frac'] : [];
  return tabular ? [...features, 'tnum', 'lnum'] : features;
}

/**
 * Shapes a line of text. A no-break space has done its work once lines are broken and becomes a space: both share
 * a glyph, and the one met first would otherwise decide what copied text holds.
 */
export function shapeText(font: Font, text: string, tabular: boolean): ShapedText {
  const plain = text.replaceAll('\u00a0', ' ');
  const asked = Array.from(plain, (sign) => sign.codePointAt(0) ?? 0);
  const run = font.layout(plain, featuresFor(plain, tabular));
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
  return {
    glyphs,
    width: glyphs.reduce((sum, glyph) => sum + glyph.width + glyph.kern, 0),
    missing: asked.filter((code) => !font.hasGlyphForCodePoint(code)),
  };
}
