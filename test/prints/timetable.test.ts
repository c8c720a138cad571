/** Day sheets and oven plans on paper: sound sheets, every line with its box, tins drawn where they stand. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { LoadedFonts } from '../../src/pdf/fonts.ts';
import { daySheetPrint } from '../../src/prints/day-sheet.ts';
import { ovenPlanPrint } from '../../src/prints/oven-plan.ts';
import { pageContents, rawObjects } from '../reading-back/raw-objects.ts';
import { type ReadPdf, readPdf } from '../reading-back/read-pdf.ts';
import { tableRows } from '../reading-back/structure.ts';
import { sampleFonts } from '../samples/fonts.ts';
import { sampleStyle } from '../samples/house-style.ts';
import { printed } from '../samples/printed.ts';
import { sampleTimetable } from '../samples/timetable.ts';
import type { PaintLog } from './recorded-surface.ts';
import { recordedPages } from './recorded-surface.ts';
import { sheetFaults, unmarkedPainting } from './sheet-checks.ts';

const view = sampleTimetable();
const rows = view.days.flatMap((day) => day.rows);
let fonts: LoadedFonts;

/** A space is a space, however it holds its words together. */
const plain = (text: string): string => text.replace(/\s+/g, ' ');

async function read(print: ReturnType<typeof daySheetPrint>): Promise<{ bytes: Uint8Array; pdf: ReadPdf }> {
  const bytes = printed(print, fonts);
  return { bytes, pdf: await readPdf(bytes) };
}

beforeAll(() => {
  fonts = sampleFonts();
});

describe('the day sheet', () => {
  it.each(['A4', 'Letter'] as const)(
    'on %s stands within its margins and says every line of the timetable',
    async (paper) => {
      const { bytes, pdf } = await read(daySheetPrint(view, sampleStyle, fonts.metrics, paper, 'en-GB'));
      expect(sheetFaults(pdf, sampleStyle.marginMm)).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
      const lines = tableRows(pdf).filter((cells) => cells.some(({ role }) => role === 'TD'));
      expect(lines).toHaveLength(rows.length);
      rows.forEach((row, at) => {
        const said = plain(lines[at]?.map(({ text }) => text).join(' ') ?? '');
        for (const words of [row.from, row.what, ...row.notes]) expect(said).toContain(plain(words));
      });
    },
  );

  it('sets the times in 14 pt, for reading from the worktop', async () => {
    const { pdf } = await read(daySheetPrint(view, sampleStyle, fonts.metrics, 'A4', 'en-GB'));
    const clocks = pdf.pages
      .flatMap(({ texts }) => texts)
      .filter(({ text, sizePt }) => /^\d\d:\d\d$/.test(text) && sizePt >= 14);
    expect(clocks.length).toBeGreaterThanOrEqual(rows.length);
  });

  it('leaves the order out where there is only one', async () => {
    const { pdf } = await read(
      daySheetPrint(sampleTimetable('fair'), sampleStyle, fonts.metrics, 'A4', 'en-GB'),
    );
    expect(tableRows(pdf)[0]?.map(({ text }) => text)).not.toContain('Order');
  });
});

describe('the oven plan', () => {
  it.each(['A4', 'Letter'] as const)(
    'on %s stands within its margins and says when to look at every tin',
    async (paper) => {
      const { bytes, pdf } = await read(
        ovenPlanPrint(view.ovenPlan, sampleStyle, fonts.metrics, paper, 'en-GB'),
      );
      expect(sheetFaults(pdf, sampleStyle.marginMm)).toEqual([]);
      expect(pageContents(rawObjects(bytes)).flatMap(unmarkedPainting)).toEqual([]);
      const looks = view.ovenPlan.loads.flatMap((load) => load.looks);
      const lines = tableRows(pdf).filter((cells) => cells.some(({ role }) => role === 'TD'));
      expect(lines.map((cells) => cells.map(({ text }) => plain(text)).slice(2))).toEqual(
        looks.map((look) => [
          `${look.firstLook} ${plain(look.firstLookMinutes.text)}`,
          `${look.likely} ${plain(look.likelyMinutes.text)}`,
          `${look.by} ${plain(look.byMinutes.text)}`,
        ]),
      );
    },
  );

  it('draws every tin inside its shelf, to the scale it names', () => {
    const print = ovenPlanPrint(view.ovenPlan, sampleStyle, fonts.metrics, 'A4', 'en-GB');
    const paints: PaintLog[] = recordedPages(print);
    const shelves = paints.filter(
      ({ paint }) => paint.stroke !== undefined && paint.fill === undefined && paint.lineWidthPt === 0.5,
    );
    const tins = paints.filter(({ paint }) => paint.evenOdd === true);
    expect(tins).toHaveLength(view.ovenPlan.loads.flatMap(({ looks }) => looks).length);
    for (const { page, box } of tins) {
      const holds = shelves.filter((shelf) => shelf.page === page && within(box, shelf.box, 20 / 5 - 0.01));
      expect(holds).toHaveLength(1);
    }
    const [ten] = tins;
    expect((ten?.box.maxX ?? 0) - (ten?.box.minX ?? 0)).toBeCloseTo((8 * 25.4) / 5, 2);
  });

  const within = (inner: PaintLog['box'], outer: PaintLog['box'], airMm: number): boolean =>
    inner.minX >= outer.minX + airMm &&
    inner.maxX <= outer.maxX - airMm &&
    inner.minY >= outer.minY + airMm &&
    inner.maxY <= outer.maxY - airMm;
});
