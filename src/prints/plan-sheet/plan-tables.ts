/** The tables of a plan's sheet: weights to tick off, what each tin gets and how it bakes, what goes round. */
import type { PlanFinish, PlanLoad, PlanTin, PlanView } from '../../views/plan.types.ts';
import type { Amount } from '../../views/tin-chart.types.ts';
import type { PlanWords } from '../../wording/plan/index.ts';
import { TICK_COLUMN, tickCell } from '../order-sheet/tick-box.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Cell, Row, TableSpec } from '../sheet/table/types.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';

export interface PlanSheet {
  words: PlanWords['sheet'];
  context: SheetContext;
  /** 'g' or 'oz'. */
  unit: string;
}

/** What one bakes from, read from the worktop: 14 pt. */
const STRONG: TypeStyle = { ...typeScale.key, sizePt: 14, leadingPt: 17 };
const NAME: TypeStyle = { ...typeScale.ingredient, sizePt: 11.5, leadingPt: 15 };
const PADDING_MM = 0.9;

const head = (text: string): Paragraph[] => [paragraph(text, typeScale.columnHead)];
const told = (text: string, type: TypeStyle = NAME): Cell => ({ paragraphs: [paragraph(text, type)] });

const amountName = (name: string, { spoons }: Amount): string =>
  spoons === null ? name : `${name}, ${spoons}`;

/** Eggs first, said as they are counted, with the weight they should come to; then every ingredient. */
export function weightsTable(
  load: PlanLoad,
  { columns }: PlanView,
  at: number,
  { words, context, unit }: PlanSheet,
): TableSpec {
  const row = (weight: string, name: string): Row => ({
    cells: [
      tickCell(words.toTick, context),
      { number: { text: weight, type: STRONG } },
      { heading: true, paragraphs: [paragraph(name, NAME)] },
    ],
  });
  const { eggs } = load;
  // Where egg is weighed it is an ingredient like the others.
  const counted = eggs === null || eggs.rule === 'weigh' ? [] : [row(eggs.grams.text, words.eggs(eggs.text))];
  const weighed = columns.flatMap(({ name }, column) => {
    const amount = load.amounts[column];
    return amount === undefined ? [] : [row(amount.figure.text, amountName(name, amount))];
  });
  return {
    key: `weights-${at}`,
    paddingMm: PADDING_MM,
    whole: true,
    columns: [
      TICK_COLUMN,
      { heading: head(unit), align: 'right' },
      { heading: head(words.ingredient), align: 'left', narrowestMm: 45 },
    ],
    rows: [...counted, ...weighed, row(load.batter.text, words.bowlHolds)],
  };
}

function tinCell({ name, sizeText, count, portions, bake, warnings }: PlanTin, { words }: PlanSheet): Cell {
  const bold: TypeStyle = { ...NAME, font: 'textBold' };
  const serves = portions === null ? [] : [words.portions(portions.text, true)];
  return {
    heading: true,
    paragraphs: [
      paragraph(count > 1 ? `${count} × ${name}` : name, bold),
      paragraph([sizeText, ...serves].join(', '), typeScale.rowDetail),
      ...(bake === null ? [] : [paragraph(bake.advice, typeScale.rowNote)]),
      ...warnings.map(({ message }) => paragraph(`${words.check}: ${message}`, typeScale.rowNote)),
    ],
  };
}

/** Each kind of tin: what goes into one, how deep that stands, and its window in the oven. */
export function tinsTable(tins: readonly PlanTin[], sheet: PlanSheet): TableSpec {
  const { words, context, unit } = sheet;
  return {
    key: 'tins',
    paddingMm: PADDING_MM,
    columns: [
      TICK_COLUMN,
      { heading: head(words.tin), align: 'left', narrowestMm: 44 },
      { heading: head(words.inEach(unit)), align: 'right' },
      { heading: head(words.stands), align: 'left', narrowestMm: 18 },
      { heading: head(words.dial), align: 'left', narrowestMm: 20 },
      { heading: head(words.firstLook), align: 'left', narrowestMm: 18 },
      { heading: head(words.doneBy), align: 'left', narrowestMm: 18 },
    ],
    rows: tins.map((tin) => ({
      cells: [
        tickCell(words.toTick, context),
        tinCell(tin, sheet),
        { number: { text: tin.receives.text, type: STRONG } },
        told(words.standsAt(tin.rawFill.text, tin.rawFillShare.text), typeScale.rowNote),
        told(tin.bake?.dial.text ?? '–'),
        told(tin.bake?.firstLook.text ?? '–'),
        told(tin.bake?.expectedBy.text ?? '–'),
      ],
    })),
  };
}

function finishCell({ finish, useText, parts, perCake, buy }: PlanFinish, { words, unit }: PlanSheet): Cell {
  const bold: TypeStyle = { ...NAME, font: 'textBold' };
  const shares = parts.map(({ name, amount }) => words.part(name, amount.figure.text, unit, amount.spoons));
  const notes = [
    [useText, ...(buy === null ? [] : [words.buy(buy.text, unit)])].join(', '),
    ...(shares.length > 1 ? [shares.join(', ')] : []),
    ...(perCake.length > 0 ? [perCake.map(({ text }) => text).join(', ')] : []),
  ];
  return {
    heading: true,
    paragraphs: [paragraph(finish.name, bold), ...notes.map((text) => paragraph(text, typeScale.rowNote))],
  };
}

/** Every filling and coating, for all cakes together. */
export function finishesTable(finishes: readonly PlanFinish[], sheet: PlanSheet): TableSpec {
  const { words, context, unit } = sheet;
  return {
    key: 'finishes',
    paddingMm: PADDING_MM,
    columns: [
      TICK_COLUMN,
      { heading: head(unit), align: 'right' },
      { heading: head(words.finish), align: 'left', narrowestMm: 60 },
    ],
    rows: finishes.map((finish) => ({
      cells: [
        tickCell(words.toTick, context),
        { number: { text: finish.make.text, type: STRONG } },
        finishCell(finish, sheet),
      ],
    })),
  };
}
