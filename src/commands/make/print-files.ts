/** The PDFs of a build: every print in every paper that the kitchen uses, in each of its house styles. */
import type { Content } from '../../domain/content.ts';
import { instantOf } from '../../domain/edition.ts';
import type { HouseStyle } from '../../domain/house-style.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { renderPdf } from '../../pdf/render-pdf.ts';
import { printsOf } from '../../prints/catalogue.ts';
import type { ChartViews } from '../../views/chart-views.ts';
import type { FinishingChartView } from '../../views/finishing-chart.types.ts';
import { programVersion } from '../version.ts';
import { houseFonts } from './house-fonts.ts';
import type { MadeFile } from './made-file.ts';

/** The views of one run that prints draw from. */
export interface PrintViews {
  charts: readonly ChartViews[];
  finishing: readonly FinishingChartView[];
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

async function dressedFiles(
  content: Content,
  views: PrintViews,
  contentDir: string,
  dress: Dress,
): Promise<Result<MadeFile[]>> {
  const { kitchen } = content;
  const fonts = await houseFonts(dress.style, contentDir, dress.file);
  if (!fonts.ok) return fonts;
  const info = {
    dated: instantOf(kitchen.edition),
    author: kitchen.name,
    producer: `Tinwright ${programVersion()}`,
  };
  const source = { content, ...views, style: dress.style, metrics: fonts.value.metrics };
  const files = printsOf(source).map((print) => {
    const pdf = renderPdf(print, fonts.value, info);
    return pdf.ok ? succeed({ path: `${dress.folder}${print.path}.pdf`, bytes: pdf.value }) : pdf;
  });
  const problems = files.flatMap((file) => (file.ok ? [] : file.problems));
  return problems.length > 0
    ? fail(...problems)
    : succeed(files.flatMap((file) => (file.ok ? [file.value] : [])));
}

/** Problems are the house style's: a font that cannot be read, or that lacks a sign which a print needs. */
export async function printFiles(
  content: Content,
  views: PrintViews,
  contentDir: string,
): Promise<Result<MadeFile[]>> {
  const dressed: Result<MadeFile[]>[] = [];
  for (const dress of dressesOf(content)) dressed.push(await dressedFiles(content, views, contentDir, dress));
  const problems = dressed.flatMap((files) => (files.ok ? [] : files.problems));
  return problems.length > 0
    ? fail(...problems)
    : succeed(dressed.flatMap((files) => (files.ok ? files.value : [])));
}
