/** The tables of the cutting guides: counts, drawings, and the stacks that serve a number of guests. */
import type { PortionRow, PortionsView, StackAnswerView, TinCut } from '../../views/portions.types.ts';
import type { PortionsWords } from '../../wording/portions/index.ts';
import { type Paragraph, paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Cell, Column, TableSpec } from '../sheet/table/types.ts';
import { typeScale } from '../sheet/type-scale.ts';
import { cutDrawing } from './cut-drawing.ts';

/** A count is what one reads at the table. */
const STRONG = { ...typeScale.key, sizePt: 14, leadingPt: 16 };

function head(name: string, small = ''): Paragraph[] {
  return [
    paragraph(name, typeScale.columnHead),
    ...(small === '' ? [] : [paragraph(small, typeScale.columnUnit)]),
  ];
}

const tinCell = ({ tinName, sizeText }: PortionRow): Cell => ({
  heading: true,
  paragraphs: [paragraph(tinName, typeScale.rowName), paragraph(sizeText, typeScale.rowDetail)],
});

const none: Cell = { paragraphs: [paragraph('–', typeScale.figure)] };

const countCell = (text: string, small: string): Cell => ({
  number: { text, type: STRONG },
  paragraphs: small === '' ? [] : [paragraph(small, typeScale.figureNote)],
});

function hasRings(view: PortionsView, at: number): boolean {
  return view.rows.some(({ cuts }) => cuts[at]?.rings);
}

/** Every tin and how many it serves. */
export function countTable(view: PortionsView, words: PortionsWords): TableSpec {
  const columns = view.columns.flatMap(({ name }, at): Column[] => [
    { heading: head(name, words.inRows), align: 'right' },
    ...(hasRings(view, at) ? [{ heading: head(name, words.inRings), align: 'right' as const }] : []),
  ]);
  const cells = ({ cuts }: PortionRow): Cell[] =>
    cuts.flatMap(({ rows, rings }, at): Cell[] => [
      countCell(rows.count.text, words.whole(rows.whole.text)),
      ...(hasRings(view, at) ? [rings ? countCell(rings.count.text, rings.detail) : none] : []),
    ]);
  return {
    key: 'counts',
    zebra: true,
    paddingMm: 0.5,
    columns: [{ heading: head(words.tin), align: 'left', narrowestMm: 44 }, ...columns],
    rows: view.rows.map((row) => ({ cells: [tinCell(row), ...cells(row)] })),
  };
}

const drawnCell = (
  row: PortionRow,
  guide: TinCut['rows'] | TinCut['rings'] | undefined,
  scale: number,
  context: SheetContext,
): Cell => {
  const { plan } = row.picture;
  if (!guide || plan === null) return none;
  const below = 'circlesText' in guide ? guide.circlesText : '';
  return {
    drawing: cutDrawing(plan, guide, scale, context),
    paragraphs: [
      paragraph(guide.count.text, STRONG),
      ...(below === '' ? [] : [paragraph(below, typeScale.figureNote)]),
    ],
  };
};

/** The tins of one size of portion, drawn with the knife's lines: in rows, and rounds in rings as well. */
export function drawnTable(
  view: PortionsView,
  at: number,
  scale: number,
  words: PortionsWords,
  context: SheetContext,
): TableSpec {
  const rings = hasRings(view, at);
  const widest = Math.max(...view.rows.map(({ picture }) => picture.widthMm)) / scale;
  const widestRound =
    Math.max(0, ...view.rows.filter(({ cuts }) => cuts[at]?.rings).map(({ picture }) => picture.widthMm)) /
    scale;
  return {
    key: `drawn-${at}`,
    paddingMm: 2.2,
    columns: [
      { heading: head(words.tin), align: 'left', narrowestMm: 34, widestMm: 40 },
      { heading: head(words.inRows), align: 'left', drawingMm: widest },
      ...(rings ? [{ heading: head(words.inRings), align: 'left' as const, drawingMm: widestRound }] : []),
    ],
    rows: view.rows.map((row) => ({
      cells: [
        tinCell(row),
        drawnCell(row, row.cuts[at]?.rows, scale, context),
        ...(rings ? [drawnCell(row, row.cuts[at]?.rings, scale, context)] : []),
      ],
    })),
  };
}

function stackCells({ wanted, choices }: StackAnswerView, words: PortionsWords): Cell[][] {
  const guests: Cell = { heading: true, number: { text: wanted.text, type: STRONG } };
  if (choices.length === 0)
    return [
      [guests, { paragraphs: [paragraph(words.noStack, typeScale.rowDetail)] }, none, none, none, none],
    ];
  return choices.map((choice, at) => [
    at === 0 ? guests : { heading: true, paragraphs: [paragraph(wanted.text, typeScale.figureNote)] },
    { paragraphs: [paragraph(choice.text, typeScale.rowName)] },
    {
      number: { text: choice.portions.text, type: typeScale.figure },
    },
    { number: { text: choice.over.text, type: typeScale.figure } },
    { number: { text: choice.batter.text, type: typeScale.figure } },
    { paragraphs: [paragraph(choice.eggsText, typeScale.rowDetail)] },
    { number: { text: choice.height.text, type: typeScale.figure } },
  ]);
}

/** Which tins for how many. */
export function stackTable(view: PortionsView, words: PortionsWords): TableSpec {
  const number = (name: string, small = ''): Column => ({ heading: head(name, small), align: 'right' });
  return {
    key: 'stacks',
    zebra: true,
    paddingMm: 0.7,
    columns: [
      number(words.wanted),
      { heading: head(words.stackOf), align: 'left' },
      number(words.portions),
      number(words.over),
      number(words.batter),
      { heading: head(words.eggs), align: 'left', narrowestMm: 24 },
      number(words.height, 'mm'),
    ],
    rows: view.stacks.flatMap((answer) => stackCells(answer, words).map((cells) => ({ cells }))),
  };
}
