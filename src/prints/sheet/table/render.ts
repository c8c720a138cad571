/** Step four: styled rows as strips, tagged as a table that goes on over pages, its header repeated on each. */
import { hairline, rectangle } from '../rules.ts';
import type { SheetContext } from '../sheet-context.ts';
import { type Strip, withoutLonely } from '../strip.ts';
import type { Surface } from '../surface.ts';
import { drawText, setText } from '../text-block.ts';
import { MM_PER_PT } from '../units.ts';
import { alignedParts } from './normalise.ts';
import type { StyledCell, StyledRow } from './style.ts';
import type { Cell, SizedColumn } from './types.ts';

const HEAD_GAP_MM = 1.4;

interface Place {
  surface: Surface;
  context: SheetContext;
  xMm: number;
  yMm: number;
}

type AlignedNumber = NonNullable<Cell['number']>;

/** `place` is the left edge of the table and the number's baseline. */
function drawNumber({ surface, context, xMm, yMm }: Place, number: AlignedNumber, column: SizedColumn): void {
  const { font, sizePt, colour } = number.type;
  const headMm = context.metrics.widthMm(alignedParts(number.text)[0], font, sizePt, true);
  surface.text({
    text: number.text,
    xMm: xMm + column.xMm + column.widthMm - column.tailMm - headMm,
    yMm,
    font,
    sizePt,
    colour: context.inks[colour],
    tabular: true,
  });
}

function drawDrawing({ surface, xMm, yMm }: Place, styled: StyledCell, rowHeightMm: number): void {
  const { drawing } = styled.cell;
  if (!drawing) return;
  const x = xMm + styled.column.xMm + ((styled.column.drawingMm ?? drawing.widthMm) - drawing.widthMm) / 2;
  const y = yMm + (rowHeightMm - drawing.heightMm) / 2;
  const box = { xMm: x, yMm: y, widthMm: drawing.widthMm, heightMm: drawing.heightMm };
  surface.within('Figure', { alt: drawing.alt, box }, () => drawing.draw(surface, x, y));
}

function drawWords(place: Place, styled: StyledCell): void {
  const { surface, context } = place;
  const x = place.xMm + styled.textXMm;
  const y = place.yMm + styled.textTopMm;
  const { link } = styled.cell;
  const words = () => drawText(surface, context, styled.text, x, y, styled.column.align);
  if (!link) words();
  else {
    const box = { xMm: x, yMm: y, widthMm: styled.text.widthMm, heightMm: styled.text.heightMm };
    surface.link(box, { url: link.url }, link.description, words);
  }
}

function drawCell(place: Place, styled: StyledCell, rowHeightMm: number): void {
  const { cell } = styled;
  place.surface.within(cell.heading ? 'TH' : 'TD', cell.heading ? { scope: 'Row' } : {}, () => {
    drawDrawing(place, styled, rowHeightMm);
    const yMm = place.yMm + styled.numberBaselineMm;
    if (cell.number) drawNumber({ ...place, yMm }, cell.number, styled.column);
    drawWords(place, styled);
  });
}

function rowStrip(
  key: string,
  row: StyledRow,
  shaded: boolean,
  widthMm: number,
  context: SheetContext,
): Strip {
  return {
    heightMm: row.heightMm,
    spaceMm: 0,
    keepWithNext: false,
    draw(surface, xMm, yMm) {
      if (shaded)
        surface.artifact(() =>
          surface.path(rectangle(xMm, yMm, widthMm, row.heightMm), { fill: context.inks.tint }),
        );
      if (row.row.anchor) surface.anchor(row.row.anchor, { xMm, yMm });
      const place = { surface, context, xMm, yMm };
      surface.within('Table', { key }, () =>
        surface.within('TBody', { key }, () =>
          surface.within('TR', {}, () => {
            for (const cell of row.cells) drawCell(place, cell, row.heightMm);
          }),
        ),
      );
    },
  };
}

/** `place` is the left edge of the table and the foot of the header's text. */
function drawHeadingNumber(place: Place, column: SizedColumn): void {
  const { headingNumber } = column;
  if (!headingNumber) return;
  const { font, sizePt } = headingNumber.type;
  const yMm = place.yMm - place.context.metrics.descentMm(font, sizePt);
  drawNumber({ ...place, yMm }, headingNumber, column);
}

interface Head {
  heightMm: number;
  draw(surface: Surface, xMm: number, yMm: number): void;
}

function headOf(key: string, columns: SizedColumn[], widthMm: number, context: SheetContext): Head {
  const texts = columns.map((column) => ({ column, text: setText(column.heading, column.widthMm, context) }));
  const numbers = columns.map(({ headingNumber }) => (headingNumber?.type.leadingPt ?? 0) * MM_PER_PT);
  const textMm = Math.max(0, ...numbers, ...texts.map(({ text }) => text.heightMm));
  const heightMm = textMm + HEAD_GAP_MM;
  return {
    heightMm,
    draw(surface, xMm, yMm) {
      surface.within('Table', { key }, () =>
        surface.within('THead', { key }, () =>
          surface.within('TR', {}, () => {
            for (const { column, text } of texts)
              surface.within('TH', { scope: 'Column' }, () => {
                const top = yMm + textMm - text.heightMm;
                drawText(surface, context, text, xMm + column.xMm, top, column.align);
                drawHeadingNumber({ surface, context, xMm, yMm: yMm + textMm }, column);
              });
          }),
        ),
      );
      surface.artifact(() => hairline(surface, context, xMm, yMm + heightMm, widthMm));
    },
  };
}

/** The header goes with the first rows; where a page begins with a later row it is drawn again, as furniture. */
export function renderedStrips(
  table: { key: string; zebra: boolean; spaceMm: number },
  columns: SizedColumn[],
  rows: StyledRow[],
  widthMm: number,
  context: SheetContext,
): Strip[] {
  const head = headOf(table.key, columns, widthMm, context);
  const repeated = {
    heightMm: head.heightMm,
    draw: (surface: Surface, xMm: number, yMm: number) =>
      surface.artifact(() => head.draw(surface, xMm, yMm)),
  };
  const body = rows.map((row, index) => ({
    ...rowStrip(table.key, row, table.zebra && index % 2 === 1, widthMm, context),
    repeated,
  }));
  const foot: Strip = {
    heightMm: 0.4,
    spaceMm: 0,
    keepWithNext: false,
    draw: (surface, xMm, yMm) => surface.artifact(() => hairline(surface, context, xMm, yMm, widthMm)),
  };
  const first: Strip = {
    heightMm: head.heightMm,
    spaceMm: table.spaceMm,
    keepWithNext: true,
    draw: head.draw,
  };
  const kept = withoutLonely(body);
  return [
    first,
    ...kept.map((strip, index) => (index === kept.length - 1 ? { ...strip, keepWithNext: true } : strip)),
    foot,
  ];
}
