/** What to take off the shelf, with boxes to tick: cards at the left, templates, sheets and labels at the right. */
import type { OrderPaper } from '../../views/order-papers.types.ts';
import { beside, heading, textParagraph } from '../sheet/blocks.ts';
import { paragraph, type Span } from '../sheet/lines.ts';
import type { Block } from '../sheet/strip.ts';
import { table } from '../sheet/table/table.ts';
import type { TableSpec } from '../sheet/table/types.ts';
import type { Sheet } from './bowl-blocks.ts';
import { TICK_COLUMN, tickCell } from './tick-box.ts';

const NAME_MM = 48;

const isCard = ({ kind }: OrderPaper): boolean => kind === 'recipe-card' || kind === 'finish-card';

/** 'templates/round-6, round-8': the folder is told once. */
function stemsText([first = '', ...others]: readonly string[]): string {
  const folder = first.slice(0, first.lastIndexOf('/') + 1);
  return [first, ...others.map((stem) => stem.replace(folder, ''))].join(', ');
}

/** Its name and whom it is for, and where its file lies. */
function paperTable(key: string, papers: readonly OrderPaper[], { words, look, context }: Sheet): TableSpec {
  return {
    ...{ key, paddingMm: look.paddingMm, spaceMm: 0 },
    columns: [TICK_COLUMN, { heading: [], align: 'left', narrowestMm: NAME_MM }],
    rows: papers.map(({ kindText, paperName, forText, prints }) => ({
      cells: [
        tickCell(words.sheet.toTick, context),
        {
          heading: true,
          paragraphs: [
            {
              spans: [
                { text: `${words.papers.forWhom(paperName ?? kindText, forText)}  `, font: 'textBold' },
                { text: stemsText(prints.map(({ stem }) => stem)), colour: look.detail.colour },
              ],
              type: look.body,
            },
          ],
        },
      ],
    })),
  };
}

/** 'Finish card: Raspberry jam (bottom tier); Sugarpaste.' and what has no name of its own, as one paragraph. */
function runIn(
  key: string,
  papers: readonly OrderPaper[],
  { look, words }: Sheet,
  lead: readonly Span[] = [],
): Block {
  const kinds = [...new Set(papers.map(({ kindText }) => kindText))];
  const colour = look.detail.colour;
  const spans = kinds.flatMap((kind): Span[] => {
    const own = papers.filter(({ kindText }) => kindText === kind);
    const told = own.flatMap(({ paperName, forText, prints }, at): Span[] => {
      const named = paperName === null ? forText : words.papers.nameAndCakes(paperName, forText);
      const files = look.papers === 'with-files' ? stemsText(prints.map(({ stem }) => stem)) : '';
      const said = [named, files].filter((text) => text !== '');
      if (said.length === 0) return [];
      const ends = at < own.length - 1 ? '; ' : '';
      return files === ''
        ? [{ text: `${named}${ends}` }]
        : [{ text: named === '' ? '' : `${named} ` }, { text: files, colour }, { text: ends }];
    });
    return [
      { text: kind, font: 'textBold' },
      ...(told.length === 0 ? [] : [{ text: ': ' }, ...told]),
      { text: '. ' },
    ];
  });
  return textParagraph(key, { spans: [...lead, ...spans], type: look.body }, look.gapMm);
}

const partsOf = (papers: readonly OrderPaper[]): [OrderPaper[], OrderPaper[]] => [
  papers.filter(isCard),
  papers.filter((paper) => !isCard(paper)),
];

function listed(papers: readonly OrderPaper[], sheet: Sheet): Block[] {
  const { words, look } = sheet;
  const [cards, others] = partsOf(papers).map((some, at): Block[] =>
    some.length === 0 ? [] : [table(paperTable(`papers-${at}`, some, sheet))],
  );
  const title = beside(
    [heading(words.papers.title, { level: 2, type: look.section, anchor: 'take' })],
    [textParagraph('papers-about', paragraph(words.papers.about, look.detail))],
  );
  return [
    (widthMm, context) =>
      title(widthMm, context).map((strip) => ({ ...strip, spaceMm: look.gapMm, keepWithNext: true })),
    beside(cards ?? [], others ?? []),
  ];
}

/** A few lines, and what stands at their right below the others. */
function told(papers: readonly OrderPaper[], sheet: Sheet, below: readonly Block[]): Block[] {
  const [cards, others] = partsOf(papers);
  const lead: Span = { text: `${sheet.words.papers.title}. `, font: 'textBold', colour: 'accent' };
  return [
    beside(
      [runIn('papers-0', cards, sheet, [lead])],
      [...(others.length === 0 ? [] : [runIn('papers-1', others, sheet)]), ...below],
    ),
  ];
}

/**
 * None where the kitchen prints nothing but the sheet itself. A sheet that is full has `below` beside its few lines;
 * others leave it where it belongs.
 */
export function paperBlocks(
  papers: readonly OrderPaper[],
  sheet: Sheet,
  below: readonly Block[],
): { blocks: Block[]; tookBelow: boolean } {
  if (papers.length === 0) return { blocks: [], tookBelow: false };
  return sheet.look.papers === 'listed'
    ? { blocks: listed(papers, sheet), tookBelow: false }
    : { blocks: told(papers, sheet, below), tookBelow: true };
}
