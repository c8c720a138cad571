/** The portions page: what every tin serves, which tins to stack for how many, and how each cake is cut. */

import type { DownloadLink } from '../views/downloads.ts';
import { type PageHead, pageHead, tinPath } from '../views/nav.ts';
import type { PortionsView, TinCut } from '../views/portions.types.ts';
import type { PortionsWords } from '../wording/portions/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { cutSvg } from './cut-svg.ts';

interface CountCell {
  main: string;
  small: string;
}

export interface PortionsPage {
  head: PageHead;
  view: PortionsView;
  words: PortionsWords;
  sizes: string[];
  columns: { name: string; small: string }[];
  rows: { id: string; tinPath: string; tinName: string; sizeText: string; cells: CountCell[] }[];
  guides: { id: string; title: string; cuts: { tinName: string; drawings: unknown[] }[] }[];
  files: readonly DownloadLink[];
}

/** Widest drawing, px. */
const DRAWING_PX = 190;

const ringsIn = (view: PortionsView, at: number): boolean => view.rows.some(({ cuts }) => cuts[at]?.rings);

function countCells(cut: TinCut, hasRings: boolean, words: PortionsWords): CountCell[] {
  const { rows, rings } = cut;
  const inRows = { main: rows.count.text, small: words.whole(rows.whole.text) };
  const inRings = rings ? { main: rings.count.text, small: rings.detail } : { main: '–', small: '' };
  return hasRings ? [inRows, inRings] : [inRows];
}

function guideOf(view: PortionsView, at: number, words: PortionsWords): PortionsPage['guides'] {
  const column = view.columns[at];
  if (column === undefined) return [];
  const pxPerMm = DRAWING_PX / Math.max(...view.rows.map(({ picture }) => picture.widthMm));
  const cuts = view.rows.flatMap(({ tinName, picture: { plan }, cuts: own }) => {
    const cut = own[at];
    if (!cut || plan === null) return [];
    const drawing = (guide: TinCut['rows'] | NonNullable<TinCut['rings']>, way: string) => ({
      svg: cutSvg(plan, guide, pxPerMm),
      count: guide.count.text,
      way: `${uncapitalised(way)}`,
      note: 'circlesText' in guide ? guide.circlesText : '',
    });
    return [
      {
        tinName,
        drawings: [
          drawing(cut.rows, words.inRows),
          ...(cut.rings ? [drawing(cut.rings, words.inRings)] : []),
        ],
      },
    ];
  });
  return [{ id: column.id, title: column.text, cuts }];
}

/** The page of a kitchen's portions. */
export function portionsPage(
  view: PortionsView,
  files: readonly DownloadLink[],
  words: PortionsWords,
): PortionsPage {
  return {
    head: pageHead({ path: 'portions.html', text: view.title, description: view.summary, section: 'tins' }),
    view,
    words,
    sizes: view.columns.map(({ text }) => text),
    columns: view.columns.flatMap(({ name }, at) => [
      { name, small: words.inRows },
      ...(ringsIn(view, at) ? [{ name, small: words.inRings }] : []),
    ]),
    rows: view.rows.map(({ id, tinName, sizeText, cuts }) => ({
      id,
      tinPath: tinPath(id),
      tinName,
      sizeText,
      cells: cuts.flatMap((cut, at) => countCells(cut, ringsIn(view, at), words)),
    })),
    guides: view.columns.flatMap((_, at) => guideOf(view, at, words)),
    files,
  };
}
