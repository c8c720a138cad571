/**
 * The parts of the PDF library that this room reaches into, spelled out in one place. They are not in the
 * library's public types; its version is pinned, and test/pdf reads every result back.
 */
export interface PdfReference {
  data: Record<string, unknown>;
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
  subset: { includeGlyph(glyphId: number): number };
  ref(): PdfReference;
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
  addContent(operators: string): unknown;
  appendXML(xml: string): void;
  addNamedDestination(name: string, ...args: unknown[]): void;
  getStructTreeRoot(): PdfReference;
  getStructParentTree(): PdfTree;
  createStructParentTreeNextKey(): number;
  end(): void;
}
