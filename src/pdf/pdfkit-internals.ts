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
  glyf: Uint8Array[];
  loca: { offsets: number[] };
  hmtx: { metrics: { advance: number; bearing: number }[] };
  offset: number;
  includeGlyph(glyphId: number): number;
  _addGlyph(glyphId: number): number;
}

export interface TrueTypeGlyphs {
  loca: { offsets: number[] };
  getGlyph(glyphId: number): {
    advanceWidth: number;
    _getMetrics(): { leftBearing: number };
    _decode(): { numberOfContours: number; components?: { glyphID: number; pos: number }[] } | null;
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
  _root: { data: Record<string, unknown> & { Names: PdfReference } };
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
  /** Writes a part of the file, with a line end after text. */
  _write(part: string | Uint8Array): void;
  /** Called when an object has been written. */
  _refEnd(reference: PdfReference): void;
  end(): void;
}
