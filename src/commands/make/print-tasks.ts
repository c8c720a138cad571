/**
 * The PDFs of a build in pieces that can be made apart: one kind of print in one house style each. A maker keeps
 * the fonts of a style from piece to piece, because what they have measured is most of the work.
 */
import type { Content } from '../../domain/content.ts';
import { instantOf } from '../../domain/edition.ts';
import type { HouseStyle } from '../../domain/house-style.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { LoadedFonts } from '../../pdf/fonts.ts';
import { renderPdf } from '../../pdf/render-pdf.ts';
import { PRINTABLES, type PrintSource, printsOfKind } from '../../prints/catalogue.ts';
import { programVersion } from '../version.ts';
import { houseFonts } from './house-fonts.ts';
import type { MadeFile } from './made-file.ts';

/** What one run's prints are made from: plain data, so that it can be handed to another thread. */
export type PrintJob = Pick<PrintSource, 'content' | 'charts' | 'finishing'> & { contentDir: string };

export interface PrintTask {
  /** Which house style: 0 is the kitchen's own. */
  dress: number;
  kind: string;
}

interface Dress {
  style: HouseStyle;
  /** Folder of a further style's prints, with its slash; empty for the kitchen's own. */
  folder: string;
  /** Where the style was written, for problems. */
  file: string;
}

function dressesOf({ houseStyle, houseStyles }: Content): Dress[] {
  return [
    { style: houseStyle, folder: '', file: 'house-style.yaml' },
    ...houseStyles.map(({ id, style }) => ({ style, folder: `in-${id}/`, file: `house-styles/${id}.yaml` })),
  ];
}

/** All pieces of a run, in the order in which their files are listed. */
export const printTasks = (content: Content): PrintTask[] =>
  dressesOf(content).flatMap((_, dress) => PRINTABLES.map(({ kind }) => ({ dress, kind })));

export type PrintMaker = (task: PrintTask) => Promise<Result<MadeFile[]>>;

/** Problems are the house style's: a font that cannot be read, or that lacks a sign which a print needs. */
export function printMaker({ contentDir, ...views }: PrintJob): PrintMaker {
  const { kitchen } = views.content;
  const dresses = dressesOf(views.content);
  const info = {
    dated: instantOf(kitchen.edition),
    author: kitchen.name,
    producer: `Tinwright ${programVersion()}`,
  };
  const fontsOfDress = new Map<number, Promise<Result<LoadedFonts>>>();
  return async ({ dress: index, kind }) => {
    const dress = dresses[index];
    if (dress === undefined) throw new Error(`no house style ${index}`);
    const loading = fontsOfDress.get(index) ?? houseFonts(dress.style, contentDir, dress.file);
    fontsOfDress.set(index, loading);
    const fonts = await loading;
    if (!fonts.ok) return fonts;
    const prints = printsOfKind({ ...views, style: dress.style, metrics: fonts.value.metrics }, kind);
    const files = prints.map((print) => {
      const pdf = renderPdf(print, fonts.value, info);
      return pdf.ok ? succeed({ path: `${dress.folder}${print.path}.pdf`, bytes: pdf.value }) : pdf;
    });
    return allOf(files.map((file) => (file.ok ? succeed([file.value]) : file)));
  };
}

/** The files of all results in their order, or every problem once. */
export function allOf(results: readonly Result<MadeFile[]>[]): Result<MadeFile[]> {
  const problems = results.flatMap((files) => (files.ok ? [] : files.problems));
  const once = [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
  return once.length > 0 ? fail(...once) : succeed(results.flatMap((files) => (files.ok ? files.value : [])));
}
