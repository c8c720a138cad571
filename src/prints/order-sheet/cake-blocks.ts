/** The right-hand page: what is baked how long, what goes on which cake, and what it stands on. */
import type { FinishView, OrderDummy, OrderTier, TierFinishView } from '../../views/order.types.ts';
import type { OrderWords } from '../../wording/orders/index.ts';
import { textParagraph } from '../sheet/blocks.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { Cell, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';
import { type Sheet, weightsTable } from './bowl-blocks.ts';
import { TICK_COLUMN, tickCell } from './tick-box.ts';

const head = (text: string): Paragraph[] => [paragraph(text, typeScale.columnHead)];

/** The cake's name over its tin. */
function cakeCell(tier: OrderTier, { look }: Sheet): Cell {
  return {
    heading: true,
    paragraphs: [
      paragraph(tier.countedName, { ...look.name, font: 'textBold' }),
      paragraph(`${tier.tin.name}, ${tier.sizeText}`, look.detail),
      ...[tier.bakes, tier.level].flatMap((note) =>
        note === null ? [] : [paragraph(note.text, look.detail)],
      ),
    ],
  };
}

/** The cake's name alone. */
const nameCell = ({ countedName }: OrderTier | OrderDummy, { look }: Sheet): Cell => ({
  heading: true,
  paragraphs: [paragraph(countedName, { ...look.name, font: 'textBold' })],
});

/** Dial, first look and the latest time for every cake. */
export function bakeTable(tiers: readonly OrderTier[], sheet: Sheet): TableSpec {
  const { words, look, context } = sheet;
  const time = (text: string | undefined): Cell => ({ paragraphs: [paragraph(text ?? '–', look.strong)] });
  return {
    key: 'bake',
    paddingMm: look.paddingMm,
    spaceMm: look.tableGapMm,
    columns: [
      TICK_COLUMN,
      { heading: head(words.table.tier), align: 'left', narrowestMm: 38, widestMm: 62 },
      { heading: head(words.table.dial), align: 'left', narrowestMm: 24 },
      { heading: head(words.table.firstLook), align: 'left', narrowestMm: 20 },
      { heading: head(words.table.by), align: 'left', narrowestMm: 20 },
    ],
    rows: tiers.map((tier) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        cakeCell(tier, sheet),
        {
          paragraphs: [
            paragraph(tier.bake?.dial.text ?? '–', look.strong),
            ...(tier.bake?.core ? [paragraph(words.sheet.withCore, look.detail)] : []),
            ...(tier.bake?.band ? [paragraph(words.sheet.withBand, look.detail)] : []),
          ],
        },
        time(tier.bake?.firstLook.text),
        time(tier.bake?.expectedBy.text),
      ],
    })),
  };
}

/** 'Sugarpaste. Rolled, 4 mm: roll out 1,005 g to 47.8 cm across'. */
function howText({ calledText, useText, sheetText, make }: TierFinishView, { sheet }: OrderWords): string {
  const how = `${calledText}. ${useText}`;
  return sheetText === null ? how : `${how}: ${sheet.rollTo(sheetText, make.text)}`;
}

/** Everything that goes in, on and under every cake and dummy. */
export function cakeTable(tiers: readonly (OrderTier | OrderDummy)[], sheet: Sheet): TableSpec {
  const { words, look, context } = sheet;
  const rows = tiers.flatMap((tier) =>
    tier.finishes.map((finish, at) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        at === 0 ? nameCell(tier, sheet) : {},
        { number: { text: finish.on.text, type: look.strong } },
        { paragraphs: [paragraph(howText(finish, words), look.name)] },
      ],
    })),
  );
  return {
    key: 'cakes',
    paddingMm: look.paddingMm,
    spaceMm: look.tableGapMm,
    columns: [
      TICK_COLUMN,
      { heading: head(words.table.tier), align: 'left', narrowestMm: 24, widestMm: 45 },
      { heading: head(words.table.grams), align: 'right' },
      { heading: head(words.table.use), align: 'left', narrowestMm: 40 },
    ],
    rows,
  };
}

/** Boards, boxes and ribbons. */
export function boxTable(tiers: readonly (OrderTier | OrderDummy)[], sheet: Sheet): TableSpec {
  const { words, look, context } = sheet;
  const cell = (text: string | undefined): Cell => ({ paragraphs: [paragraph(text ?? '–', look.name)] });
  const { table: t } = words;
  return {
    key: 'boxes',
    paddingMm: look.paddingMm,
    spaceMm: look.tableGapMm,
    columns: [
      TICK_COLUMN,
      { heading: head(t.tier), align: 'left', narrowestMm: 22, widestMm: 40 },
      { heading: head(t.coated), align: 'left', narrowestMm: 22 },
      { heading: head(t.board), align: 'left', narrowestMm: 29 },
      { heading: head(t.box), align: 'left', narrowestMm: 16 },
      { heading: head(t.ribbon), align: 'left', narrowestMm: 16 },
    ],
    rows: tiers.map((tier) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        { heading: true, paragraphs: [paragraph(tier.countedName, look.name)] },
        cell(`${tier.coatedAcross?.text ?? '?'} × ${tier.coatedHeight.text}`),
        cell(tier.board?.text),
        cell(tier.small?.boxesText ?? tier.boxText ?? undefined),
        cell(tier.ribbon?.text),
      ],
    })),
  };
}

/** A finish with its weights under its name, and what of it is tinted; one that is bought ready is a line all the same. */
export function finishBlocks(one: FinishView, { words, look, ...sheet }: Sheet): Block[] {
  const { finish, lines, make, spareText, boilsAwayText, coloursText } = one;
  const beside = [spareText, boilsAwayText].filter((text) => text !== '').join('; ');
  const title = [
    ...head(words.sheet.finishMade(finish.name, make.text)),
    ...(beside === '' ? [] : [paragraph(beside, look.detail)]),
  ];
  return [
    table(weightsTable(`finish-${finish.id}`, lines, { words, look, ...sheet }, title)),
    ...(coloursText === ''
      ? []
      : [textParagraph(`colours-${finish.id}`, paragraph(coloursText, look.body), 1)]),
  ];
}
