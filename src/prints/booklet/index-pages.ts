/** The index: tins, then ingredients, in two columns; every number leads to its page. */
import type { BookletView, IndexEntry } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { heading, textParagraph } from '../sheet/blocks.ts';
import type { FlowedPage } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { baselineInLeadingMm } from '../sheet/text-block.ts';
import { MM_PER_PT } from '../sheet/units.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';
import { columnPage, twoColumns } from './two-columns.ts';

const TYPE = bookletType.small;
const LINE_MM = TYPE.leadingPt * MM_PER_PT;
const HANG_MM = 4;

/** A page number or a run of them, and the place of the first. */
interface PageRun {
  from: number;
  to: number;
  anchor: string;
}

/** Pages in order, each once, those that follow each other joined: 12–14. */
function runsOf({ anchors }: IndexEntry, pageOf: (anchor: string) => number): PageRun[] {
  const pages = new Map<number, string>();
  for (const anchor of anchors) if (!pages.has(pageOf(anchor))) pages.set(pageOf(anchor), anchor);
  const runs: PageRun[] = [];
  for (const [page, anchor] of [...pages].sort(([a], [b]) => a - b)) {
    const last = runs.at(-1);
    if (last && last.to === page - 1) last.to = page;
    else runs.push({ from: page, to: page, anchor });
  }
  return runs;
}

interface Piece {
  text: string;
  /** Where a click leads; null for the name. */
  run: PageRun | null;
}

interface PlacedPiece extends Piece {
  line: number;
  xMm: number;
  widthMm: number;
}

function piecesOf(entry: IndexEntry, pageOf: (anchor: string) => number): Piece[] {
  const runs = runsOf(entry, pageOf);
  return [
    { text: `${entry.name} `, run: null },
    ...runs.map((run, index) => ({
      text: `${run.from === run.to ? run.from : `${run.from}–${run.to}`}${index < runs.length - 1 ? ',' : ''}`,
      run,
    })),
  ];
}

/** One after the other, a new line where the next does not fit; later lines hang in. */
function placed(pieces: readonly Piece[], widthMm: number, { metrics }: SheetContext): PlacedPiece[] {
  const width = (text: string) => metrics.widthMm(text, TYPE.font, TYPE.sizePt);
  const spaceMm = width(' ');
  let line = 0;
  let xMm = 0;
  return pieces.map((piece) => {
    const wide = width(piece.text.trimEnd());
    if (xMm > 0 && xMm + wide > widthMm) {
      line += 1;
      xMm = HANG_MM;
    }
    const at = { ...piece, line, xMm, widthMm: wide };
    xMm += wide + (piece.run === null ? 2 : 1) * spaceMm;
    return at;
  });
}

function drawPiece(
  surface: Surface,
  piece: PlacedPiece,
  name: string,
  context: SheetContext,
  xMm: number,
  yMm: number,
) {
  const baseline = yMm + piece.line * LINE_MM + baselineInLeadingMm(TYPE, context);
  const draw = () =>
    surface.text({
      text: piece.text.trimEnd(),
      xMm: xMm + piece.xMm,
      yMm: baseline,
      font: TYPE.font,
      sizePt: TYPE.sizePt,
      colour: context.inks.ink,
    });
  if (piece.run === null) draw();
  else {
    const box = {
      xMm: xMm + piece.xMm,
      yMm: yMm + piece.line * LINE_MM,
      widthMm: piece.widthMm,
      heightMm: LINE_MM,
    };
    surface.link(box, { anchor: piece.run.anchor }, `${name}, ${piece.text.replace(',', '')}`, draw);
  }
}

function entryStrip(
  group: string,
  entry: IndexEntry,
  pageOf: (anchor: string) => number,
  widthMm: number,
  context: SheetContext,
): Strip {
  const pieces = placed(piecesOf(entry, pageOf), widthMm, context);
  return {
    heightMm: ((pieces.at(-1)?.line ?? 0) + 1) * LINE_MM,
    spaceMm: 0.5,
    keepWithNext: false,
    draw(surface, xMm, yMm) {
      surface.within('L', { key: group }, () =>
        surface.within('LI', { key: entry.id }, () =>
          surface.within('LBody', {}, () => {
            for (const piece of pieces) drawPiece(surface, piece, entry.name, context, xMm, yMm);
          }),
        ),
      );
    },
  };
}

function groupStrips(
  title: string,
  entries: readonly IndexEntry[],
  pageOf: (anchor: string) => number,
  widthMm: number,
  context: SheetContext,
): Strip[] {
  if (entries.length === 0) return [];
  const head = heading(title, { level: 2, type: bookletType.heading, spaceMm: 5 })(widthMm, context);
  return [...head, ...entries.map((entry) => entryStrip(title, entry, pageOf, widthMm, context))];
}

const GAP_MM = 8;

/** Pages of the index; `pageOf` knows every place that an entry leads to. */
export function indexPages(
  index: BookletView['index'],
  pageOf: (anchor: string) => number,
  words: BookletWords,
  frame: PageFrame,
  context: SheetContext,
): FlowedPage[] {
  const columnMm = (frame.widthMm - GAP_MM) / 2;
  const own = words.index;
  const opening = [
    heading(own.heading, { level: 1, type: bookletType.part, bookmark: own.heading, anchor: 'index' }),
    textParagraph('lead', paragraph(own.lead, bookletType.quiet), 0),
  ].flatMap((block) => block(frame.widthMm, context));
  const strips = [
    ...groupStrips(own.tins, index.tins, pageOf, columnMm, context),
    ...groupStrips(own.ingredients, index.ingredients, pageOf, columnMm, context),
  ];
  return twoColumns(opening, strips, frame.heightMm).map((page) =>
    columnPage(page, 'index', columnMm + GAP_MM),
  );
}
