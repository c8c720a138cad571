/**
 * The glyphs that documents embed, read from their font once in a run: the library decodes every glyph again for
 * every document, which for small ones is much of their time. Same bytes, held so by the tests.
 */
import { type FileGlyph, fontFile } from './font-file.ts';
import type { GlyphSubset, TrueTypeGlyphs } from './pdfkit-internals.ts';

interface EmbeddedGlyph extends FileGlyph {
  /** Glyphs that this one is put together from, and where their numbers stand in its outline. */
  components: readonly { glyphID: number; pos: number }[];
}

const known = new WeakMap<TrueTypeGlyphs, Map<number, EmbeddedGlyph>>();

function readGlyph(font: TrueTypeGlyphs, id: number): EmbeddedGlyph {
  const glyph = font.getGlyph(id);
  const { offsets } = font.loca;
  const start = offsets[id] ?? 0;
  const stream = font._getTableStream('glyf');
  stream.pos += start;
  const outline = stream.readBuffer((offsets[id + 1] ?? start) - start);
  // Its first two bytes are the number of contours, negative where a glyph is put together from others.
  const composed = (outline[0] ?? 0) >= 0x80;
  return {
    outline,
    advance: glyph.advanceWidth,
    bearing: glyph._getMetrics().leftBearing,
    components: composed ? (glyph._decode()?.components ?? []) : [],
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

/** The glyph with its components' numbers in this document; they are embedded as well. */
function renumbered(glyph: EmbeddedGlyph, subset: GlyphSubset): FileGlyph {
  if (glyph.components.length === 0) return glyph;
  const outline = new Uint8Array(glyph.outline);
  const view = new DataView(outline.buffer);
  for (const { glyphID, pos } of glyph.components) view.setUint16(pos, subset.includeGlyph(glyphID));
  return { ...glyph, outline };
}

/**
 * What documents ask of a font's table `post` (its slant, and whether all glyphs are equally wide): the library would
 * read the names of two thousand glyphs with it.
 */
function readWithoutNames(font: TrueTypeGlyphs): void {
  if (font._tables.post !== undefined || font.directory.tables.post === undefined) return;
  const { buffer, byteOffset } = font._getTableStream('post').readBuffer(16);
  const head = new DataView(buffer, byteOffset);
  font._tables.post = { italicAngle: head.getInt32(4) / 0x10000, isFixedPitch: head.getUint32(12) };
}

/** Lets a document's subset of a TrueType font be made from the glyphs already read. */
export function shareGlyphs(subset: GlyphSubset): void {
  readWithoutNames(subset.font);
  if (subset.cff !== undefined) return;
  subset.encode = () => {
    const glyphs: FileGlyph[] = [];
    // Components are added while it runs.
    for (let at = 0; at < subset.glyphs.length; at += 1)
      glyphs.push(renumbered(glyphOf(subset.font, subset.glyphs[at] ?? 0), subset));
    return fontFile(subset.font, glyphs);
  };
}
