/** The left-hand page: each bowlful with its weights to tick off, its eggs, and what goes into which tin. */
import type { BatterView, Bowlful, WeighedLine } from '../../views/order.types.ts';
import { intoText } from '../../views/order-batters.ts';
import type { OrderWords } from '../../wording/orders/index.ts';
import { beside, heading, textParagraph, together } from '../sheet/blocks.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { Row, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';
import type { SheetLook } from './look.ts';
import { TICK_COLUMN, tickCell } from './tick-box.ts';

export interface Sheet {
  words: OrderWords;
  look: SheetLook;
  context: SheetContext;
}

/** Names get the room that figures and boxes leave of half a page. */
const NAME_MM = 48;

const head = (text: string) => [paragraph(text, typeScale.columnHead)];

/** Weights to tick off; eggs are lines like the others where they are weighed. */
export function weightsTable(
  key: string,
  lines: readonly WeighedLine[],
  { words, look, context }: Sheet,
  title: Paragraph[] = head(words.table.ingredient),
): TableSpec {
  return {
    key,
    paddingMm: look.paddingMm,
    spaceMm: look.tableGapMm,
    whole: true,
    columns: [
      TICK_COLUMN,
      { heading: head(words.table.grams), align: 'right' },
      { heading: title, align: 'left', narrowestMm: NAME_MM },
    ],
    rows: lines.map(({ ingredient, grams, beside: small }) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        { number: { text: grams.text, type: look.strong } },
        {
          heading: true,
          paragraphs: [
            paragraph(small === null ? ingredient.name : `${ingredient.name}, ${small}`, look.name),
          ],
        },
      ],
    })),
  };
}

function eggRows({ eggs, eggsText, batter }: Bowlful, { words, look, context }: Sheet): Row[] {
  const row = (number: string, text: string): Row => ({
    cells: [
      tickCell(words.sheet.toTick, context),
      { number: { text: number, type: look.strong } },
      { heading: true, paragraphs: [paragraph(text, look.name)] },
    ],
  });
  return [
    ...(eggsText === null
      ? []
      : eggs.map(({ count, grams, partText }) => row(count.text, words.sheet.beaten(partText, grams.text)))),
    row(batter.text, words.sheet.batterIn),
  ];
}

function tinRows({ tins }: Bowlful, { words, look, context }: Sheet): Row[] {
  return tins.map((tin) => ({
    cells: [
      tickCell(words.sheet.toTick, context),
      { number: { text: tin.each.text, type: look.strong } },
      {
        heading: true,
        paragraphs: [paragraph(intoText(tin, words), look.name)],
      },
    ],
  }));
}

/** Eggs, the bowl's whole weight and the tins, below one another. */
function fillTable(key: string, bowl: Bowlful, sheet: Sheet): TableSpec {
  const { words, look } = sheet;
  return {
    key,
    paddingMm: look.paddingMm,
    spaceMm: look.tableGapMm,
    whole: true,
    columns: [
      TICK_COLUMN,
      { heading: [], align: 'right' },
      { heading: head(words.sheet.eggsAndTins), align: 'left', narrowestMm: NAME_MM },
    ],
    rows: [...eggRows(bowl, sheet), ...tinRows(bowl, sheet)],
  };
}

function bowlBlock(batter: BatterView, bowl: Bowlful, sheet: Sheet): Block {
  const key = `${batter.id}-${bowl.id}`;
  const { look } = sheet;
  return together(
    heading(`${batter.name}. ${bowl.name}`, { level: 3, type: look.section, spaceMm: look.gapMm }),
    beside(
      [table(weightsTable(`${key}-weights`, bowl.lines, sheet))],
      [
        table(fillTable(`${key}-fill`, bowl, sheet)),
        textParagraph(`${key}-left`, paragraph(bowl.afterText, look.body), 1),
      ],
    ),
  );
}

/** Every bowlful of every batter, each with what it leaves over. */
export const bowlBlocks = (batters: readonly BatterView[], sheet: Sheet): Block[] =>
  batters.flatMap((batter) => batter.bowlfuls.map((bowl) => bowlBlock(batter, bowl, sheet)));
