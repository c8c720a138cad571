/**
 * The structure tree of a tagged PDF: which piece of content belongs to which heading, paragraph or cell. Our own,
 * because the library's elements cannot be continued on a later page by key, give links the wrong page, and know
 * no column spans. Elements stay open until the document ends. A chart has a thousand of them and more, so that they
 * are kept as little more than the text that is written at the end.
 */
import type { StructureTag, TagOptions } from '../prints/sheet/surface.ts';
import { type PdfInternals, type PdfPage, type PdfReference, writtenObject } from './pdfkit-internals.ts';
import { writtenNumber, writtenReference, writtenWords } from './written-values.ts';

export interface StructureElement {
  readonly tag: StructureTag;
  /** Number of its object in the file. */
  readonly id: number;
  readonly parentId: number;
  /** Words and boxes as they are written, each on a line of its own. */
  readonly attributes: string;
  /** Number of the page that its first content stands on; 0 as long as it has none. */
  pageId: number;
  /** What it holds, as it is written. */
  holds: string;
  firstChild: StructureElement | null;
  lastChild: StructureElement | null;
  next: StructureElement | null;
  keyed: Map<string, StructureElement> | null;
}

/** Box in points from the page's bottom left: [left, bottom, right, top]. */
export type PointBox = [number, number, number, number];

/** A page's pieces of marked content: the numbers of the elements that own them. */
interface PageOwners {
  page: PdfPage;
  key: number;
  ids: number[];
}

const dictionary = (...entries: string[]): string => `<<\n${entries.join('\n')}\n>>`;

/** Cells that speak for a row or a column are many, and alike. */
const SCOPES = { Row: scopeAlone('Row'), Column: scopeAlone('Column') } as const;

function scopeAlone(scope: string): string {
  return dictionary('/O /Table', `/Scope /${scope}`);
}

function tableAttributes({ scope, colSpan, rowSpan }: TagOptions): string[] {
  if (!colSpan && !rowSpan) return scope ? [SCOPES[scope]] : [];
  const entries = ['/O /Table'];
  if (scope) entries.push(`/Scope /${scope}`);
  if (colSpan) entries.push(`/ColSpan ${writtenNumber(colSpan)}`);
  if (rowSpan) entries.push(`/RowSpan ${writtenNumber(rowSpan)}`);
  return [dictionary(...entries)];
}

function layoutAttributes(box: PointBox | null): string[] {
  if (box === null) return [];
  return [dictionary('/O /Layout', '/Placement /Block', `/BBox [${box.map(writtenNumber).join(' ')}]`)];
}

function attributesOf(options: TagOptions, box: PointBox | null): string {
  const words = options.alt === undefined ? '' : `\n/Alt ${writtenWords(options.alt)}`;
  const [first, ...more] = [...tableAttributes(options), ...layoutAttributes(box)];
  if (first === undefined) return words;
  return `${words}\n/A ${more.length === 0 ? first : `[${[first, ...more].join(' ')}]`}`;
}

function hold(element: StructureElement, held: string): void {
  element.holds = element.holds === '' ? held : `${element.holds} ${held}`;
}

function written({ id, tag, parentId, attributes, pageId, holds }: StructureElement): string {
  const page = pageId === 0 ? '' : `\n/Pg ${writtenReference(pageId)}`;
  return `${id} 0 obj\n<<\n/S /${tag}\n/P ${parentId} 0 R${attributes}${page}\n/K [${holds}]\n>>\nendobj\n`;
}

export class StructureTree {
  readonly root: StructureElement;
  readonly #pdf: PdfInternals;
  readonly #pages: PageOwners[] = [];

  constructor(pdf: PdfInternals) {
    this.#pdf = pdf;
    const treeRoot = pdf.getStructTreeRoot();
    this.root = this.#element('Document', treeRoot.id, '');
    treeRoot.data.K = writtenObject(treeRoot, `[${writtenReference(this.root.id)}]`);
  }

  #element(tag: StructureTag, parentId: number, attributes: string): StructureElement {
    // The library's own object for it would be kept until the end, and asked about every value.
    const id = this.#pdf._offsets.push(null);
    return {
      tag,
      id,
      parentId,
      attributes,
      pageId: 0,
      holds: '',
      firstChild: null,
      lastChild: null,
      next: null,
      keyed: null,
    };
  }

  /** The child of `parent` with this key, or a new one. */
  child(parent: StructureElement, tag: StructureTag, options: TagOptions, box: PointBox | null) {
    const key = options.key === undefined ? null : `${tag} ${options.key}`;
    const known = key === null ? undefined : parent.keyed?.get(key);
    if (known) return known;
    const element = this.#element(tag, parent.id, attributesOf(options, box));
    hold(parent, writtenReference(element.id));
    if (parent.lastChild === null) parent.firstChild = element;
    else parent.lastChild.next = element;
    parent.lastChild = element;
    if (key !== null) {
      parent.keyed ??= new Map();
      parent.keyed.set(key, element);
    }
    return element;
  }

  #ownersOn(page: PdfPage): PageOwners {
    const last = this.#pages.at(-1);
    if (last?.page === page) return last;
    const owners: PageOwners = { page, key: page.structParentTreeKey, ids: [] };
    this.#pages.push(owners);
    return owners;
  }

  /** Registers a new piece of marked content on the page and gives its number; pages come one after the other. */
  content(element: StructureElement, page: PdfPage): number {
    const mcid = this.#ownersOn(page).ids.push(element.id) - 1;
    const pageId = page.dictionary.id;
    if (element.pageId === 0) element.pageId = pageId;
    const elsewhere = () => dictionary('/Type /MCR', `/Pg ${writtenReference(pageId)}`, `/MCID ${mcid}`);
    hold(element, element.pageId === pageId ? String(mcid) : elsewhere());
    return mcid;
  }

  /** Ties an annotation to its element and gives the number for its StructParent. */
  annotation(element: StructureElement, page: PdfPage, annotation: PdfReference): number {
    const key = this.#pdf.createStructParentTreeNextKey();
    this.#pdf.getStructParentTree().add(key, writtenObject(annotation, writtenReference(element.id)));
    const [on, object] = [writtenReference(page.dictionary.id), writtenReference(annotation.id)];
    hold(element, dictionary('/Type /OBJR', `/Pg ${on}`, `/Obj ${object}`));
    return key;
  }

  /** Writes all elements, each after those within it; once, at the end. */
  end(): void {
    const { _offset: begin, _offsets: offsets } = this.#pdf;
    const parts: string[] = [];
    let length = 0;
    const write = (element: StructureElement): void => {
      for (let child = element.firstChild; child !== null; child = child.next) write(child);
      offsets[element.id - 1] = begin + length;
      const part = written(element);
      parts.push(part);
      length += part.length;
    };
    write(this.root);
    this.#pdf._write(parts.join('').slice(0, -1));
    const tree = this.#pdf.getStructParentTree();
    for (const { page, key, ids } of this.#pages)
      tree.add(key, writtenObject(page.dictionary, `[${ids.map(writtenReference).join(' ')}]`));
  }
}
