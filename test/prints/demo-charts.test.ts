import { describe, expect, it } from 'vitest';
import { tinChartPrint } from '../../src/prints/tin-chart.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { readPdf } from '../reading-back/read-pdf.ts';
import { chartsOf, readDemo } from '../samples/demo.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { printed } from '../samples/printed.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

describe('every tin chart of the demo kitchen', async () => {
  const { content, problems } = await readDemo();
  if (content === null) throw new Error(JSON.stringify(problems));
  const fonts = sampleFonts();
  const { kitchen, houseStyle } = content;
  // The quick run reads every chart on one paper, and every paper with half of the charts.
  const isRead = (chart: number, paper: number): boolean =>
    process.env.TINWRIGHT_LONG !== undefined || chart % kitchen.paper.length === paper;
  const cases = chartsOf(content).flatMap(({ chart }, index) =>
    kitchen.paper
      .filter((_, at) => isRead(index, at))
      .map((paper) => ({ name: `${chart.id} on ${paper}`, chart, paper })),
  );

  it.each(cases)(
    '$name: inside the margins, nothing overlapping, 8 pt or more, all marked',
    async (wanted) => {
      const print = tinChartPrint(wanted.chart, houseStyle, fonts.metrics, wanted.paper, kitchen.locale);
      const bytes = printed(print, fonts);
      const pdf = await readPdf(bytes);
      expect(sheetFaults(pdf, houseStyle.marginMm)).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
      const said = pdf.pages.flatMap((page) => page.texts.map(({ text }) => text.trim()));
      for (const row of wanted.chart.rows) {
        expect(said).toContain(row.batter.text);
        for (const { figure } of row.amounts) expect(said).toContain(figure.text);
      }
    },
  );
});
