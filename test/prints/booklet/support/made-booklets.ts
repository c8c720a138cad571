/** The booklets of a sample kitchen, set with the sample fonts and read back. */
import type { Content } from '../../../../src/domain/content.ts';
import type { HouseStyle } from '../../../../src/domain/house-style.ts';
import { bookletPrints } from '../../../../src/prints/booklet.ts';
import type { Print } from '../../../../src/prints/sheet/surface.ts';
import { readContent } from '../../../../src/read/content.ts';
import { bookletView } from '../../../../src/views/booklet/booklet.ts';
import type { BookletView } from '../../../../src/views/booklet/booklet.types.ts';
import { chartViews } from '../../../../src/views/chart-views.ts';
import { finishingCharts } from '../../../../src/views/finishing-chart.ts';
import { wantedPrints } from '../../../../src/views/wanted-prints.ts';
import { type ReadPdf, readPdf } from '../../../reading-back/read-pdf.ts';
import { sampleFonts } from '../../../samples/fonts.ts';
import { sampleStyle } from '../../../samples/house-style.ts';
import { printed } from '../../../samples/printed.ts';

const fonts = sampleFonts();

export async function contentOf(folder: string): Promise<Content> {
  const { content, problems } = await readContent(folder);
  if (content === null) throw new Error(JSON.stringify(problems));
  return content;
}

/** One for each entry of `printables` that asks for a booklet. */
export function viewsOf(content: Content): BookletView[] {
  const finishing = finishingCharts(content);
  return wantedPrints(content, chartViews(content), 'booklet').map((wanted) =>
    bookletView({
      content: wanted.content,
      charts: wanted.charts.map(({ chart }) => chart),
      finishing,
      mass: wanted.mass,
    }),
  );
}

export interface MadeBooklet {
  view: BookletView;
  style: HouseStyle;
  reading: Print;
  pdf: ReadPdf;
  bytes: Uint8Array;
  fold: ReadPdf;
}

/** Set on the first paper of the kitchen. */
export async function madeBooklet(view: BookletView, { kitchen }: Content): Promise<MadeBooklet> {
  const [paper = 'A4'] = kitchen.paper;
  const [reading, folded] = bookletPrints(view, sampleStyle, fonts.metrics, paper, kitchen.locale);
  if (!reading || !folded) throw new Error('a booklet is two files');
  const bytes = printed(reading, fonts);
  return {
    view,
    style: sampleStyle,
    reading,
    bytes,
    pdf: await readPdf(bytes),
    fold: await readPdf(printed(folded, fonts)),
  };
}
