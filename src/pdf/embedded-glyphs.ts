/**
 * The glyphs that documents embed, read from their font once in a run: the library decodes every glyph again for
 * every document, which for small ones is much of their time. Same bytes, held so by the tests.
 */
import type { GlyphSubset, TrueTypeGlyphs } from './pdfkit-internals.ts';

interface EmbeddedGlyph {
  outline: Uint8Array;
  advance: number;
  bearing: number;
  /** Glyphs that this one is put together from, and where their numbers stand in its outline. */
  components: readonly { glyphID: number; pos: number }[];
}

const known = new WeakMap<TrueTypeGlyphs, Map<number, EmbeddedGlyph>>();

function readGlyph(font: TrueTypeGlyphs, id: number): EmbeddedGlyph {
  const glyph = font.getGlyph(id);
  const decoded = glyph._decode();
  const { offsets } = font.loca;
  const start = offsets[id] ?? 0;
  const stream = font._getTableStream('glyf');
  stream.pos += start;
  return {
    outline: stream.readBuffer((offsets[id + 1] ?? start) - start),
    advance: glyph.advanceWidth,
    bearing: glyph._getMetrics().leftBearing,
    components: decoded !== null && decoded.numberOfContours < 0 ? (decoded.components ?? []) : [],
  };
}

function glyphOf(font: TrueTypeGlyphs, id: number): EmbeddedGlyph {
  let glyphs = known.get(font);
  if (!glyphs) {
    glyphs = new Map();
    known.set(font, glyphs);
  }
  let glyph = glyphs.get(id);
  if (!glyph) {
    glyph = readGlyph(font, id);
    glyphs.set(id, glyph);
  }
  return glyph;
}

/** The outline with its components' numbers in this document; they are embedded as well. */
function renumbered({ outline, components }: EmbeddedGlyph, subset: GlyphSubset): Uint8Array {
  if (components.length === 0) return outline;
  const own = new Uint8Array(outline);
  const view = new DataView(own.buffer);
  for (const { glyphID, pos } of components) view.setUint16(pos, subset.includeGlyph(glyphID));
  return own;
}

/** Lets a document's subset of a TrueType font take its glyphs from those already read. */
export function shareGlyphs(subset: GlyphSubset): void {
  if (subset.cff !== undefined) return;
  subset._addGlyph = (id) => {
    const glyph = glyphOf(subset.font, id);
    const outline = renumbered(glyph, subset);
    subset.glyf.push(outline);
    subset.loca.offsets.push(subset.offset);
    subset.hmtx.metrics.push({ advance: glyph.advance, bearing: glyph.bearing });
    subset.offset += outline.length;
    return subset.glyf.length - 1;
  };
}
