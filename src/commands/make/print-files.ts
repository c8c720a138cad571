/** The PDFs of a build: every print in every paper that the kitchen uses. */
import type { Content } from '../../domain/content.ts';
import { instantOf } from '../../domain/edition.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { renderPdf } from '../../pdf/render-pdf.ts';
import { printsOf } from '../../prints/catalogue.ts';
import type { ChartViews } from '../../views/chart-views.ts';
import { programVersion } from '../version.ts';
import { houseFonts } from './house-fonts.ts';
import type { MadeFile } from './made-file.ts';

/** Problems are the house style's: a font that cannot be read, or that lacks a sign which a print needs. */
export function printFiles(
  content: Content,
  charts: readonly ChartViews[],
  contentDir: string,
): Result<MadeFile[]> {
  const { kitchen, houseStyle } = content;
  const fonts = houseFonts(houseStyle, contentDir);
  if (!fonts.ok) return fonts;
  const info = {
    dated: instantOf(kitchen.edition),
    author: kitchen.name,
    producer: `Tinwright ${programVersion()}`,
  };
  const source = { content, charts, style: houseStyle, metrics: fonts.value.metrics };
  const files = printsOf(source).map((print) => {
    const pdf = renderPdf(print, fonts.value, info);
    return pdf.ok ? succeed({ path: `${print.path}.pdf`, bytes: pdf.value }) : pdf;
  });
  const problems = files.flatMap((file) => (file.ok ? [] : file.problems));
  return problems.length > 0
    ? fail(...problems)
    : succeed(files.flatMap((file) => (file.ok ? [file.value] : [])));
}
