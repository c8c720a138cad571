/**
 * The structure tree of a tagged PDF: which piece of content belongs to which heading, paragraph or cell. Our own,
 * because the library's elements cannot be continued on a later page by key, give links the wrong page, and know
 * no column spans. Elements stay open until the document ends.
 */
import type { StructureTag, TagOptions } from '../prints/sheet/surface.ts';
import type { PdfInternals, PdfPage, PdfReference } from './pdfkit-internals.ts';

type Child =
  | { kind: 'element'; element: StructureElement }
  | { kind: 'content'; page: PdfReference; mcid: number }
  | { kind: 'annotation'; page: PdfReference; annotation: PdfReference };

export interface StructureElement {
  tag: StructureTag;
  ref: PdfReference;
  children: Child[];
  keyed: Map<string, StructureElement>;
}

/** Box in points from the page's bottom left: [left, bottom, right, top]. */
export type PointBox = [number, number, number, number];

function attributes(options: TagOptions, box: PointBox | null): Record<string, unknown>[] {
  const table: Record<string, unknown> = { O: 'Table' };
  if (options.scope) table.Scope = options.scope;
  if (options.colSpan) table.ColSpan = options.colSpan;
  if (options.rowSpan) table.RowSpan = options.rowSpan;
  const layout = box ? [{ O: 'Layout', Placement: 'Block', BBox: box }] : [];
  return Object.keys(table).length > 1 ? [table, ...layout] : layout;
}

function childEntry(child: Child, elementPage: PdfReference | null): unknown {
  switch (child.kind) {
    case 'element':
      return child.element.ref;
    case 'content':
      return child.page === elementPage ? child.mcid : { Type: 'MCR', Pg: child.page, MCID: child.mcid };
    case 'annotation':
      return { Type: 'OBJR', Pg: child.page, Obj: child.annotation };
  }
}

/** Nothing but names and numbers: neither words nor boxes. */
function isPlain({ Alt, A }: Record<string, unknown>): boolean {
  const isTable = typeof A === 'object' && A !== null && 'O' in A && A.O === 'Table';
  return Alt === undefined && (A === undefined || isTable);
}

const shown = (reference: PdfReference): string => `${reference.id} 0 R`;

const dictionary = (entries: Record<string, string | number>): string =>
  [
    '<<',
    ...Object.entries(entries).map(
      ([key, value]) => `/${key} ${typeof value === 'string' ? `/${value}` : value}`,
    ),
    '>>',
  ].join('\n');

function childText(child: Child, elementPage: PdfReference | null): string {
  switch (child.kind) {
    case 'element':
      return shown(child.element.ref);
    case 'content':
      return child.page === elementPage
        ? String(child.mcid)
        : `<<\n/Type /MCR\n/Pg ${shown(child.page)}\n/MCID ${child.mcid}\n>>`;
    case 'annotation':
      return `<<\n/Type /OBJR\n/Pg ${shown(child.page)}\n/Obj ${shown(child.annotation)}\n>>`;
  }
}

export class StructureTree {
  readonly root: StructureElement;
  readonly #pdf: PdfInternals;

  constructor(pdf: PdfInternals) {
    this.#pdf = pdf;
    const treeRoot = pdf.getStructTreeRoot();
    this.root = this.#element('Document', { S: 'Document', P: treeRoot });
    treeRoot.data.K = [this.root.ref];
  }

  #element(tag: StructureTag, data: Record<string, unknown>): StructureElement {
    return { tag, ref: this.#pdf.ref(data), children: [], keyed: new Map() };
  }

  /** The child of `parent` with this key, or a new one. */
  child(parent: StructureElement, tag: StructureTag, options: TagOptions, box: PointBox | null) {
    const known = options.key === undefined ? undefined : parent.keyed.get(`${tag} ${options.key}`);
    if (known) return known;
    const attribute = attributes(options, box);
    const element = this.#element(tag, {
      S: tag,
      P: parent.ref,
      // String objects become PDF strings, plain ones names.
      ...(options.alt === undefined ? {} : { Alt: new String(options.alt) }),
      ...(attribute.length === 0 ? {} : { A: attribute.length === 1 ? attribute[0] : attribute }),
    });
    parent.children.push({ kind: 'element', element });
    if (options.key !== undefined) parent.keyed.set(`${tag} ${options.key}`, element);
    return element;
  }

  /** Registers a new piece of marked content on the page and gives its number. */
  content(element: StructureElement, page: PdfPage): number {
    const owners = this.#pdf.getStructParentTree().get(page.structParentTreeKey) as PdfReference[];
    const mcid = owners.push(element.ref) - 1;
    element.children.push({ kind: 'content', page: page.dictionary, mcid });
    return mcid;
  }

  /** Ties an annotation to its element and gives the number for its StructParent. */
  annotation(element: StructureElement, page: PdfPage, annotation: PdfReference): number {
    const key = this.#pdf.createStructParentTreeNextKey();
    this.#pdf.getStructParentTree().add(key, element.ref);
    element.children.push({ kind: 'annotation', page: page.dictionary, annotation });
    return key;
  }

  /** Writes all elements; once, at the end. */
  end(element: StructureElement = this.root): void {
    const first = element.children.find((child) => child.kind === 'content');
    const page = first?.kind === 'content' ? first.page : null;
    if (page) element.ref.data.Pg = page;
    element.ref.data.K = element.children.map((child) => childEntry(child, page));
    for (const child of element.children) if (child.kind === 'element') this.end(child.element);
    if (isPlain(element.ref.data)) this.#write(element, page);
    else element.ref.end();
  }

  /** What the library would write, without asking it about every value: a chart has a thousand elements and more. */
  #write({ tag, ref, children }: StructureElement, page: PdfReference | null): void {
    const parent = ref.data.P as PdfReference;
    const attribute = ref.data.A as Record<string, string | number> | undefined;
    const lines = [`${ref.id} 0 obj`, '<<', `/S /${tag}`, `/P ${shown(parent)}`];
    if (attribute) lines.push(`/A ${dictionary(attribute)}`);
    if (page) lines.push(`/Pg ${shown(page)}`);
    lines.push(`/K [${children.map((child) => childText(child, page)).join(' ')}]`, '>>', 'endobj');
    ref.offset = this.#pdf._offset;
    this.#pdf._write(lines.join('\n'));
    this.#pdf._refEnd(ref);
  }
}
