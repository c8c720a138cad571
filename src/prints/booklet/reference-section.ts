/** Tables to look things up in: tins, oven dials, egg sizes, portions, allergens. */
import type { BookletTable, BookletTin } from '../../views/booklet/booklet.types.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import type { Section } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import { cautionBlock } from '../sheet/method-blocks.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { Cell, TableSpec } from '../sheet/table/types.ts';
import { commonScale, tinDrawing } from '../sheet/tin-drawing.ts';
import { keptFromStart, keptWithNext, noShortEnds } from './block-wraps.ts';
import { bookletType, methodLook } from './booklet-type.ts';
import type { SectionParts } from './recipe-section.ts';
import { headingOf, smallTables } from './small-table.ts';

export const tableAnchor = ({ id }: Pick<BookletTable, 'id'>): string => `part-${id}`;

/** Tables of few rows stay whole, longer ones break well inside. */
const FEW_ROWS = 12;

/** Heading, lead, table and what belongs beneath it; short ones are not broken. */
export function tableBlocks(
  view: BookletTable,
  { words, widthMm, context }: SectionParts,
  level: 1 | 2 = 2,
): Block[] {
  const { title, lead, notes, cautions } = view;
  const isShort = view.rows.length <= FEW_ROWS;
  const whole = (block: Block): Block => (isShort ? keptFromStart([block]) : noShortEnds(block));
  const [first, ...rest] = smallTables(view, widthMm, context).map(table);
  const head = [
    heading(title, {
      level,
      type: level === 1 ? bookletType.part : bookletType.title,
      bookmark: title,
      anchor: tableAnchor(view),
      spaceMm: 7,
    }),
    textParagraph('lead', paragraph(lead, bookletType.body), 0.5),
  ];
  return [
    keptWithNext(...head),
    ...(first ? [whole(first)] : []),
    ...rest.map(whole),
    ...notes.map((text, index) => textParagraph(`note ${index}`, paragraph(text, bookletType.small), 1.4)),
    ...cautions.map(({ code, text }) => cautionBlock(code, words.caution, text, methodLook)),
  ];
}

const FIELD = { widthMm: 27, heightMm: 11 };

function tinsTable(tins: readonly BookletTin[], scale: number, { words, context }: SectionParts): TableSpec {
  const own = words.tins;
  const { rowName, quiet, figure, key } = bookletType;
  const cell = (tin: BookletTin): Cell => {
    const drawing = tinDrawing(tin.picture, scale, 'beside', context);
    const size = [tin.sizeText, tin.otherSizeText].join(' ');
    return {
      heading: true,
      ...(drawing ? { drawing } : {}),
      paragraphs: [
        paragraph(tin.name, rowName),
        paragraph(size, quiet),
        ...(tin.note === '' ? [] : [paragraph(`${tin.note}.`, quiet)]),
      ],
    };
  };
  return {
    key: 'tins',
    zebra: true,
    paddingMm: 0.8,
    columns: [
      { heading: headingOf(own.tin, ''), align: 'left', drawingMm: FIELD.widthMm },
      { heading: headingOf(own.holds, ''), align: 'right' },
      { heading: headingOf(own.owned, ''), align: 'right' },
    ],
    rows: tins.map((tin) => ({
      anchor: tin.anchor,
      cells: [
        cell(tin),
        { number: { text: tin.volume.text, type: key } },
        { number: { text: tin.owned.text, type: figure } },
      ],
    })),
  };
}

/** The tins, drawn to one scale. */
function tinsBlocks(tins: readonly BookletTin[], parts: SectionParts): Block[] {
  if (tins.length === 0) return [];
  const own = parts.words.tins;
  const scale = commonScale(
    tins.map(({ picture }) => picture),
    FIELD,
    'beside',
  );
  return [
    keptWithNext(
      heading(own.heading, {
        level: 2,
        type: bookletType.title,
        bookmark: own.heading,
        anchor: 'tins',
        spaceMm: 7,
      }),
      textParagraph('lead', paragraph(own.lead(scale), bookletType.body), 0.5),
    ),
    noShortEnds(table(tinsTable(tins, scale, parts))),
    textParagraph('note', paragraph(own.note, bookletType.small), 2),
  ];
}

/** The part with everything to look up: one section for each table, the tins last. */
export function tablesSections(
  tins: readonly BookletTin[],
  tables: readonly BookletTable[],
  parts: SectionParts,
): Section[] {
  const { heading: title } = parts.words.tables;
  const opening = heading(title, { level: 1, type: bookletType.part, bookmark: title, anchor: 'tables' });
  return [
    { key: 'tables', startsPage: true, blocks: [keptWithNext(opening)] },
    ...tables.map((view) => ({ key: `reference-${view.id}`, blocks: tableBlocks(view, parts) })),
    { key: 'tins', blocks: tinsBlocks(tins, parts) },
  ];
}
