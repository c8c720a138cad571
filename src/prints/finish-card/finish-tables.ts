/** The two small tables of a finish card: batches with what to weigh, and what the cake of a tin takes. */
import type { FinishCardTin } from '../../views/finish-card.types.ts';
import type { Amount } from '../../views/tin-chart.types.ts';
import { textParagraph } from '../sheet/blocks.ts';
import { paragraph } from '../sheet/lines.ts';
import type { Block } from '../sheet/strip.ts';
import { table, tableFits } from '../sheet/table/table.ts';
import type { Cell, Column, Row, TableSpec } from '../sheet/table/types.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { FinishCardParts } from './finish-card-parts.ts';

/** Air above and below the rows, mm. */
const PADDING_MM = 0.2;
const SPACE_MM = 2.4;

const numberCell = (text: string, type: TypeStyle): Cell => ({ number: { text, type } });

/** A heading of some words wants more room than a figure; three of them side by side have none. */
const NARROWEST_EM = 1.3;
const FEW = 2;

/** Names at the left, figures at the right. */
function columnsOf(headings: readonly string[], { form }: FinishCardParts): Column[] {
  const { body, small } = form.type;
  const [first = '', ...others] = headings;
  const head = (text: string) => [paragraph(text, small)];
  const wordy = others.length <= FEW && others.some((text) => text !== '');
  return [
    { heading: head(first), align: 'left', narrowestMm: body.sizePt * 2.2, widestMm: body.sizePt * 4.4 },
    ...others.map((text) => ({
      heading: head(text),
      align: 'right' as const,
      narrowestMm: body.sizePt * (wordy ? 2 : 1) * NARROWEST_EM,
      widestMm: body.sizePt * 3,
    })),
  ];
}

function amountCell(amount: Amount | undefined, { form }: FinishCardParts): Cell {
  if (amount === undefined) return {};
  const cell = numberCell(amount.figure.text, form.type.figure);
  const { spoons } = amount;
  return spoons === null ? cell : { ...cell, paragraphs: [paragraph(spoons, form.type.small)] };
}

const nameCell = (name: string, { form }: FinishCardParts, strong = false): Cell => ({
  heading: true,
  paragraphs: [paragraph(name, strong ? { ...form.type.body, font: 'textBold' } : form.type.body)],
});

function batchTable(parts: FinishCardParts, count: number): TableSpec {
  const { view, own, form } = parts;
  const batches = view.batches.slice(0, count);
  const makes: Row = {
    cells: [
      nameCell(own.makes, parts, true),
      ...batches.map(({ make }) => numberCell(make.text, { ...form.type.figure, font: 'textBold' })),
    ],
  };
  const rows = view.parts.map(
    ({ name }, at): Row => ({
      cells: [nameCell(name, parts), ...batches.map((batch) => amountCell(batch.parts[at], parts))],
    }),
  );
  return {
    ...{ key: 'batches', zebra: true, whole: true, paddingMm: PADDING_MM, spaceMm: SPACE_MM },
    columns: columnsOf([own.batches(view.mass), ...batches.map(() => '')], parts),
    rows: [makes, ...rows],
  };
}

/** As many batches as the width holds, the smallest first; none for what is bought ready made. */
export function batchBlocks(parts: FinishCardParts): Block[] {
  const most = parts.view.batches.length;
  if (most === 0) return [];
  const tables = Array.from({ length: most }, (_, at) => batchTable(parts, most - at));
  return [
    (widthMm, context) => {
      const widest = tables.find((one) => tableFits(one, widthMm, context)) ?? batchTable(parts, 1);
      return table(widest)(widthMm, context);
    },
  ];
}

function useCell(use: FinishCardTin['uses'][number], parts: FinishCardParts): Cell {
  const { form, own } = parts;
  if (use === null) return { paragraphs: [paragraph('–', form.type.body)] };
  const cell = numberCell(use.make.text, form.type.figure);
  if (use.sheetText === null) return cell;
  return { ...cell, paragraphs: [paragraph(own.sheet(use.sheetText), form.type.small)] };
}

/**
 * The first `count` of the tins in the view, and below them for which cake; none where the finish is used on no cake,
 * or its uses do not stand side by side.
 */
export function tinBlocks(parts: FinishCardParts, count: number): Block[] {
  const { view, own, form } = parts;
  const tins = view.tins.slice(0, count);
  if (tins.length === 0) return [];
  const rolled = view.uses.every(({ id }) => id === 'rolled');
  const head = (rolled ? own.toRoll : own.forTins)(view.mass);
  const spec: TableSpec = {
    ...{ key: 'tins', zebra: true, whole: true, paddingMm: PADDING_MM, spaceMm: SPACE_MM },
    columns: columnsOf([head, ...view.uses.map(({ text }) => text)], parts),
    rows: tins.map(({ name, uses }) => ({
      cells: [nameCell(name, parts), ...uses.map((use) => useCell(use, parts))],
    })),
  };
  const about = textParagraph('tins-about', paragraph(view.tinsText, form.type.small), 0.8);
  return [
    (widthMm, context) =>
      tableFits(spec, widthMm, context)
        ? [table(spec), about].flatMap((block) => block(widthMm, context))
        : [],
  ];
}
