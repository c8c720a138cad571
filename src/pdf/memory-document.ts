/**
 * The PDF library's document, set up once the way every print needs it (PDF 1.7, tagged, PDF/UA-1) and collecting
 * its bytes in memory. Each departure from the library's own behaviour says why.
 */
import PDFDocument from 'pdfkit';
import { placeLatin1 } from './latin1.ts';
import type { PdfInternals, PdfTree } from './pdfkit-internals.ts';
import { writtenReference } from './written-values.ts';
import { type DocumentInfo, xmpDescription } from './xmp.ts';

class CollectingDocument extends PDFDocument {
  // Only declared: an initialiser would run after the base constructor, which already writes the file header.
  declare parts?: (string | Uint8Array)[];
  declare _offset: number;

  /**
   * Keeps the parts instead of queueing them in a stream, so that a document is ready when `end` returns; text
   * becomes bytes at the end, all at once.
   */
  _write(data: unknown): void {
    const part = data instanceof Uint8Array ? data : `${data}\n`;
    this.parts ??= [];
    this.parts.push(part);
    this._offset += part.length;
  }

  override push(): boolean {
    return true;
  }

  /** The end of the file in one piece: a chart has a thousand objects and more, each with a line in its table. */
  _finalize(): void {
    const { _offsets: offsets, _root: root, _info: info, _id: id } = this as unknown as PdfInternals;
    const size = offsets.length + 1;
    const hex = `<${Array.from(id, (byte) => byte.toString(16).padStart(2, '0')).join('')}>`;
    const lines = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n `);
    const [rootId, infoId] = [writtenReference(root.id), writtenReference(info.id)];
    const trailer = `<<\n/Size ${size}\n/Root ${rootId}\n/Info ${infoId}\n/ID [${hex} ${hex}]\n>>`;
    const table = ['xref', `0 ${size}`, '0000000000 65535 f ', ...lines].join('\n');
    this._write(`${table}\ntrailer\n${trailer}\nstartxref\n${this._offset}\n%%EOF`);
  }
}

export interface MemoryDocument {
  pdf: PdfInternals;
  /** Ends the document and gives its bytes. */
  finish(): Uint8Array;
}

function joined(parts: readonly (string | Uint8Array)[], length: number): Uint8Array {
  const bytes = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    if (typeof part === 'string') placeLatin1(part, bytes, at);
    else bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

/** Compares by code unit, as readers search; the library's locale order would hide names from them. */
const byCodeUnit = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

function mendTrees(pdf: PdfInternals): void {
  const names = pdf._root.data.Names.data.Dests as PdfTree;
  names._compareKeys = byCodeUnit;
  // The standard forbids Limits in the root of a name or number tree, and these trees are roots only.
  names.limits = false;
  pdf.getStructParentTree().limits = false;
}

export function openDocument(info: DocumentInfo): MemoryDocument {
  const options = {
    pdfVersion: '1.7',
    tagged: true,
    subset: 'PDF/UA',
    lang: info.lang,
    displayTitle: true,
    // Deflate gives different bytes on different engines.
    compress: false,
    autoFirstPage: false,
    bufferPages: true,
    // No built-in font: everything is embedded.
    font: null,
    info: {
      Title: info.title,
      Subject: info.subject,
      Author: info.author,
      Creator: info.creator,
      Producer: info.producer,
      CreationDate: info.created,
    },
  };
  const document = new CollectingDocument(options as unknown as PDFKit.PDFDocumentOptions);
  const pdf = document as unknown as PdfInternals;
  // As a string the part number still reaches the XMP packet, but the library then leaves out its CIDSet, which
  // misses the components of accented letters; no CIDSet is allowed, an incomplete one is not.
  pdf.subset = '1';
  pdf._addInfo = () => pdf.appendXML(xmpDescription(info));
  pdf._root.data.PageLabels = { Nums: [0, { S: 'D' }] };
  mendTrees(pdf);
  return {
    pdf,
    finish: () => {
      pdf.end();
      return joined(document.parts ?? [], document._offset);
    },
  };
}
