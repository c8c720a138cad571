/**
 * The PDFs of a build in pieces that can be made apart. A maker keeps the fonts of a style from piece to piece,
 * because what they have measured is most of the work.
 */
import { instantOf } from '../../domain/edition.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { LoadedFonts } from '../../pdf/fonts.ts';
import { renderPdf } from '../../pdf/render-pdf.ts';
import { printsOfPiece } from '../../prints/catalogue.ts';
import type { PrintPiece } from '../../prints/printable.ts';
import { sha256 } from '../../read/sha256.ts';
import { parsedFonts } from './house-fonts.ts';
import type { DrawnPrint } from './made-file.ts';
import type { Dress, PrintHouse } from './print-house.ts';

export interface PrintTask {
  /** Which house style: 0 is the kitchen's own. */
  dress: number;
  piece: PrintPiece;
}

/** Every piece in every house style, piece by piece, so that its text is told once and let go. */
export function* printTasks({ dresses }: PrintHouse, pieces: Iterable<PrintPiece>): Generator<PrintTask> {
  for (const piece of pieces) for (const dress of dresses.keys()) yield { dress, piece };
}

export type PrintMaker = (task: PrintTask) => Result<DrawnPrint[]>;

/** Fonts parsed before, by the hash of their files and how they set headings. */
export type FontShelf = Map<string, Result<LoadedFonts>>;

function fontsOf({ style, file, fonts }: Dress, shelf: FontShelf): Result<LoadedFonts> {
  const key = `${fonts.hash} ${style.headingCase}`;
  const parsed = shelf.get(key) ?? parsedFonts(fonts, style, file);
  shelf.set(key, parsed);
  return parsed;
}

/** Problems are the house style's: a font that cannot be read, or that lacks a sign which a print needs. */
export function printMaker(house: PrintHouse, shelf: FontShelf = new Map()): PrintMaker {
  const { edition, author, producer } = house;
  const info = { dated: instantOf(edition), author, producer };
  return ({ dress: index, piece }) => {
    const dress = house.dresses[index];
    if (dress === undefined) throw new Error(`no house style ${index}`);
    const fonts = fontsOf(dress, shelf);
    if (!fonts.ok) return fonts;
    const files = printsOfPiece(piece, dress.style, fonts.value.metrics).map((print) => {
      const pdf = renderPdf(print, fonts.value, info);
      if (!pdf.ok) return pdf;
      const path = `${dress.folder}${print.path}.pdf`;
      return succeed([{ path, byteCount: pdf.value.length, sha256: sha256(pdf.value), bytes: pdf.value }]);
    });
    return allOf(files);
  };
}

/** The files of all results in their order, or every problem once. */
export function allOf<File>(results: readonly Result<File[]>[]): Result<File[]> {
  const problems = results.flatMap((files) => (files.ok ? [] : files.problems));
  const once = [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
  return once.length > 0 ? fail(...once) : succeed(results.flatMap((files) => (files.ok ? files.value : [])));
}
