/** How many does a cake from this tin serve? The portions of the site and the cutting guides, small. */
import type { Content } from '../../domain/content.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { portionsWordsFor } from '../../wording/portions/index.ts';
import { portionsView } from '../portions.ts';
import type { PortionRow, PortionsView, TinCut } from '../portions.types.ts';
import { tableRowAnchor } from './anchors.ts';
import type { BookletTable, TableCell, TableColumn } from './booklet.types.ts';
import { figureCell, wordCell } from './cells.ts';

interface Way {
  column: TableColumn;
  cell(cut: TinCut | undefined): TableCell;
  at: number;
}

/** In rows for every size, and in rings where a round tin is owned. */
function waysOf({ columns, rows }: PortionsView, words: BookletWords): Way[] {
  return columns.flatMap(({ id, name }, at): Way[] => {
    const column = (way: string, unit: string): TableColumn => ({
      id: `${id}-${way}`,
      name,
      unit,
      weight: 'key',
    });
    const isRound = rows.some(({ cuts }) => cuts[at]?.rings);
    return [
      {
        column: column('rows', words.portions.rows),
        cell: (cut) => (cut ? figureCell(cut.rows.count) : wordCell('–')),
        at,
      },
      ...(isRound
        ? [
            {
              column: column('rings', words.portions.rings),
              cell: (cut: TinCut | undefined) => (cut?.rings ? figureCell(cut.rings.count) : wordCell('–')),
              at,
            },
          ]
        : []),
    ];
  });
}

/** Null when no tin has a plan that can be cut. */
export function portions(content: Content, words: BookletWords): BookletTable | null {
  const view = portionsView(content);
  const { notes } = portionsWordsFor(content.kitchen.locale);
  if (view.rows.length === 0) return null;
  const ways = waysOf(view, words);
  const rowOf = ({ id, tinName, cuts }: PortionRow) => ({
    id,
    cells: [wordCell(tinName), ...ways.map(({ cell, at }) => cell(cuts[at]))],
  });
  return {
    id: 'portions',
    title: words.portions.heading,
    lead: words.portions.lead(view.columns.map(({ text }) => text).join('; ')),
    columns: [
      { id: 'tin', name: words.portions.tin, unit: '', weight: 'word' },
      ...ways.map(({ column }) => column),
    ],
    rows: view.rows.map(rowOf),
    anchors: Object.fromEntries(view.rows.map(({ id }) => [id, tableRowAnchor('portions', id)])),
    notes: [
      notes.counted,
      ...(ways.length > view.columns.length ? [notes.rings] : []),
      ...view.leftOut.map(({ text }) => text),
    ],
    cautions: view.cautions,
  };
}
