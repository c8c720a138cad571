/**
 * The parts of the PDF library that this room reaches into, spelled out in one place. They are not in the
 * library's public types; its version is pinned, and test/pdf reads every result back.
 */
export interface PdfReference {
  readonly id: number;
  data: Record<string, unknown>;
  /** Where it stands in the file, once written. */
  offset?: number;
  end(): void;
}

/** Text of the file. */
export interface PdfWritten {
  toString(): string;
}

export interface PdfTree {
  limits: boolean;
  add(key: string | number, value: unknown): void;
  get(key: string | number): unknown;
  _compareKeys(a: string, b: string): number;
}

export interface PdfFont {
  id: string;
  widths: number[];
  unicode: (readonly number[])[];
  subset: GlyphSubset;
  ref(): PdfReference;
}

/** The glyphs of one font that a document embeds. */
export interface GlyphSubset {
  /** Only in fonts whose outlines are not TrueType. */
  cff?: unknown;
  font: TrueTypeGlyphs;
  /** The font's numbers of the glyphs, by their numbers in the document. */
  glyphs: number[];
  includeGlyph(glyphId: number): number;
  /** The font file that is embedded. */
  encode(): Uint8Array;
}

export interface TrueTypeGlyphs {
  loca: { version: number; offsets: number[] };
  directory: { tables: Record<string, { length: number } | undefined> };
  /** What has been read already, by tag. */
  _tables: Record<string, unknown>;
  getGlyph(glyphId: number): {
    advanceWidth: number;
    _getMetrics(): { leftBearing: number };
    _decode(): { components?: { glyphID: number; pos: number }[] } | null;
  };
  _getTableStream(table: string): { pos: number; readBuffer(length: number): Uint8Array };
}

export interface PdfOutlineItem {
  outlineData: Record<string, unknown>;
  addItem(title: string, options: { pageNumber?: number; expanded?: boolean }): PdfOutlineItem;
}

export interface PdfPage {
  dictionary: PdfReference;
  fonts: Record<string, PdfReference>;
  annotations: PdfReference[];
  readonly structParentTreeKey: number;
}

/** The document as this room uses it. */
export interface PdfInternals {
  page: PdfPage;
  info: Record<string, unknown>;
  outline: PdfOutlineItem;
  subset: unknown;
  _root: { id: number; data: Record<string, unknown> & { Names: PdfReference } };
  _info: PdfReference;
  /** What tells this file from others. */
  _id: Uint8Array;
  _font: PdfFont;
  _addInfo(): void;
  font(font: unknown): unknown;
  ref(data: Record<string, unknown>): PdfReference;
  addPage(options: { size: [number, number]; margin: number }): unknown;
  addContent(operators: Uint8Array): unknown;
  appendXML(xml: string): void;
  addNamedDestination(name: string, ...args: unknown[]): void;
  getStructTreeRoot(): PdfReference;
  getStructParentTree(): PdfTree;
  createStructParentTreeNextKey(): number;
  /** Bytes written so far. */
  _offset: number;
  /** Where each object stands in the file, by its number less one; null as long as it is not written. */
  _offsets: (number | null)[];
  /** Writes a part of the file, with a line end after text. */
  _write(part: string | Uint8Array): void;
  end(): void;
}

/** Something the library writes as it stands, without asking what it holds. `like`: any object of the document. */
export function writtenObject(like: PdfReference, text: string): PdfWritten {
  // What it writes by itself is told by its kind, of which a reference is one.
  const kind: unknown = Object.getPrototypeOf(Object.getPrototypeOf(like));
  return Object.assign(Object.create(kind as object | null), { toString: () => text }) as PdfWritten;
}
