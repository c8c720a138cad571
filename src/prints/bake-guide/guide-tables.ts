/** The tables of a bake guide: figures behind a picture, and the bakes of the log. */
import type { BakeGuideView } from '../../views/bake-guide.types.ts';
import type { Plot } from '../../views/plot/plot.types.ts';
import type { BakeWords } from '../../wording/bake/index.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';

const column = (text: string, narrowestMm: number, widestMm: number): Column => ({
  heading: [paragraph(text, typeScale.columnHead)],
  align: 'left',
  narrowestMm,
  widestMm,
});

const cell = (main: string, below = ''): Cell => ({
  paragraphs: [
    paragraph(main, typeScale.rowNote),
    ...(below === '' ? [] : [paragraph(below, typeScale.rowDetail)]),
  ],
});

/** The figures of a picture. */
export function plotTable({ id, table: { head, rows } }: Plot): TableSpec {
  const share = Math.floor(150 / head.length);
  return {
    key: `table-${id}`,
    whole: true,
    paddingMm: 0.7,
    columns: head.map((text) => column(text, Math.min(30, share - 1), share)),
    rows: rows.map((row) => ({
      cells: row.map((text, at): Cell => (at === 0 ? { ...cell(text), heading: true } : cell(text))),
    })),
  };
}

/** The bakes that the guide rests on. */
export function logTable({ log }: BakeGuideView, { guide }: BakeWords): TableSpec {
  return {
    key: 'log',
    zebra: true,
    paddingMm: 1,
    columns: [
      column(guide.date, 24, 34),
      column(guide.tin, 46, 90),
      column(guide.dial, 20, 28),
      column(guide.took, 30, 40),
    ],
    rows: log.map(({ date, tin, how, dial, batter, took, expected, notes }) => ({
      cells: [
        { ...cell(date), heading: true },
        {
          paragraphs: [
            paragraph(tin, typeScale.rowNote),
            paragraph([batter, how].filter((part) => part !== '').join(', '), typeScale.rowDetail),
            ...(notes === '' ? [] : [paragraph(notes, typeScale.rowDetail)]),
          ],
        },
        cell(dial),
        {
          paragraphs: [
            paragraph(took, { ...typeScale.bodyStrong, tabular: true }),
            paragraph(`${guide.expected.toLowerCase()} ${expected}`, typeScale.rowDetail),
          ],
        },
      ],
    })),
  };
}
