/**
 * A print as the bytes of a PDF 1.7 file: tagged for reading aloud (PDF/UA-1), fonts embedded with their Unicode
 * maps, and the same bytes for the same print, fonts and date on every engine.
 */
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { Print } from '../prints/sheet/surface.ts';
import { writeBookmarks } from './bookmarks.ts';
import type { LoadedFonts } from './fonts.ts';
import { openDocument } from './memory-document.ts';
import { PT_PER_MM } from './operators.ts';
import { pageBoxes } from './page-boxes.ts';
import { type DocumentState, type MissingGlyph, PageSurface } from './page-surface.ts';
import { StructureTree } from './structure-tree.ts';

export interface PdfInfo {
  /** Dates the file: the kitchen's edition, or what the environment asks for. Never the clock. */
  dated: Date;
  /** The kitchen. */
  author: string;
  /** Name and version of what made the file. */
  producer: string;
}

function missingGlyphProblem(missing: MissingGlyph, path: string): Problem {
  const sign = String.fromCodePoint(missing.codePoint);
  const number = missing.codePoint.toString(16).toUpperCase().padStart(4, '0');
  return {
    code: 'missing-glyph',
    severity: 'error',
    message: `${path}: the font '${missing.font}' has no sign '${sign}' (U+${number}), needed in '${missing.text}'`,
    hint: 'Use another font for this role in house-style.yaml, or write the text without the sign.',
  };
}

function missingGlyphProblems(missing: MissingGlyph[], path: string): Problem[] {
  const first = new Map<string, MissingGlyph>();
  for (const glyph of missing) {
    const key = `${glyph.font} ${glyph.codePoint}`;
    if (!first.has(key)) first.set(key, glyph);
  }
  return [...first.values()].map((glyph) => missingGlyphProblem(glyph, path));
}

/** The file's bytes, or one missing-glyph problem for each sign that a font cannot draw. */
export function renderPdf(print: Print, fonts: LoadedFonts, info: PdfInfo): Result<Uint8Array> {
  const { pdf, finish } = openDocument({
    title: print.title,
    subject: print.subject,
    lang: print.lang,
    author: info.author,
    creator: info.producer,
    producer: info.producer,
    created: info.dated,
  });
  const tree = new StructureTree(pdf);
  const state: DocumentState = {
    pdf,
    tree,
    fonts,
    embedded: new Map(),
    shown: new Map(),
    bookmarks: [],
    missing: [],
  };
  const pages = print.pages.map((page, index) => {
    pdf.addPage({ size: [page.widthMm * PT_PER_MM, page.heightMm * PT_PER_MM], margin: 0 });
    Object.assign(pdf.page.dictionary.data, pageBoxes(page));
    const surface = new PageSurface(state, index, page.heightMm);
    page.draw(surface, { xMm: 0, yMm: 0 });
    surface.end();
    return pdf.page.dictionary;
  });
  if (state.missing.length > 0) return fail(...missingGlyphProblems(state.missing, print.path));
  writeBookmarks(pdf, pages, state.bookmarks);
  tree.end();
  return succeed(finish());
}
