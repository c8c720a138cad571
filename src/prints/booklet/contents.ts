/** The contents: parts and what is in them, with the page that each begins on and a way to it. */
import type { BookletView } from '../../views/booklet/booklet.types.ts';
import type { BookletWords } from '../../wording/booklet/index.ts';
import { heading } from '../sheet/blocks.ts';
import type { FlowedPage } from '../sheet/flow.ts';
import { paragraph } from '../sheet/lines.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { Strip } from '../sheet/strip.ts';
import type { Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import type { TypeStyle } from '../sheet/type-scale.ts';
import type { PageFrame } from './booklet-form.ts';
import { bookletType } from './booklet-type.ts';
import { tableAnchor } from './reference-section.ts';
import { columnPage, twoColumns } from './two-columns.ts';

export interface ContentsEntry {
  level: 1 | 2;
  title: string;
  anchor: string;
}

const part = (title: string, anchor: string): ContentsEntry => ({ level: 1, title, anchor });
const inner = (title: string, anchor: string): ContentsEntry => ({ level: 2, title, anchor });

/** What the booklet holds, in its order. */
export function contentsEntries(view: BookletView, words: BookletWords): ContentsEntry[] {
  const { flavours, finishing } = view;
  return [
    part(words.use.heading, 'use'),
    part(view.overview.title, tableAnchor(view.overview)),
    ...view.recipes.map(({ name, anchor }) => inner(name, anchor)),
    ...(flavours.length === 0 ? [] : [part(words.flavours.heading, 'flavours')]),
    ...flavours.map(({ name, anchor }) => inner(name, anchor)),
    ...(finishing === null
      ? []
      : [
          part(words.finishing.heading, 'finishing'),
          ...finishing.tables.map((table) => inner(table.title, tableAnchor(table))),
        ]),
    part(words.tables.heading, 'tables'),
    ...view.reference.map((table) => inner(table.title, tableAnchor(table))),
    ...(view.tins.length === 0 ? [] : [inner(words.tins.heading, 'tins')]),
    part(words.notes, 'notes'),
    part(words.index.heading, 'index'),
  ];
}

const CONTENTS_PART: TypeStyle = { ...bookletType.strong, leadingPt: 15 };
const CONTENTS_ENTRY: TypeStyle = { ...bookletType.rowWord, sizePt: 9.5, leadingPt: 14 };
const INDENT_MM = 3;
const NUMBER_MM = 8;
const LEADER_GAP_MM = 1.5;
const DOTS_MM = [0.25, 1.2];

interface Place {
  surface: Surface;
  context: SheetContext;
  xMm: number;
  baselineMm: number;
}

function drawNumber(place: Place, page: number, type: TypeStyle, rightMm: number): number {
  const { font, sizePt, colour } = type;
  const text = String(page);
  const xMm = rightMm - place.context.metrics.widthMm(text, font, sizePt, true);
  const ink = place.context.inks[colour];
  place.surface.text({ text, xMm, yMm: place.baselineMm, font, sizePt, colour: ink, tabular: true });
  return xMm;
}

function drawLeader({ surface, context, baselineMm }: Place, fromMm: number, toMm: number): void {
  if (toMm - fromMm < 2 * LEADER_GAP_MM) return;
  surface.artifact(() =>
    surface.path(
      [
        { op: 'move', x: fromMm + LEADER_GAP_MM, y: baselineMm - 0.1 },
        { op: 'line', x: toMm - LEADER_GAP_MM, y: baselineMm - 0.1 },
      ],
      { stroke: context.inks.rule, lineWidthPt: 0.5, dashMm: DOTS_MM },
    ),
  );
}

function entryStrip(entry: ContentsEntry, page: number, widthMm: number, context: SheetContext): Strip {
  const { level, title, anchor } = entry;
  const type = level === 1 ? CONTENTS_PART : CONTENTS_ENTRY;
  const indentMm = level === 1 ? 0 : INDENT_MM;
  const text = setText([paragraph(title, type)], widthMm - indentMm - NUMBER_MM, context);
  const last = text.lines.at(-1);
  return {
    heightMm: text.heightMm,
    spaceMm: level === 1 ? 3 : 0,
    keepWithNext: false,
    draw(surface, xMm, yMm) {
      const place = { surface, context, xMm, baselineMm: yMm + (last?.baselineMm ?? 0) };
      let numberMm = 0;
      surface.within('TOC', { key: 'contents' }, () =>
        surface.within('TOCI', { key: anchor }, () =>
          surface.within('Reference', {}, () =>
            surface.link({ xMm, yMm, widthMm, heightMm: text.heightMm }, { anchor }, title, () => {
              drawText(surface, context, text, xMm + indentMm, yMm);
              numberMm = drawNumber(place, page, type, xMm + widthMm);
            }),
          ),
        ),
      );
      drawLeader(place, xMm + indentMm + (last?.line.widthMm ?? 0), numberMm);
    },
  };
}

const GAP_MM = 9;

/** Pages of the contents; `pageOf` may give anything while pages are still being counted. */
export function contentsPages(
  entries: readonly ContentsEntry[],
  pageOf: (anchor: string) => number,
  title: string,
  frame: PageFrame,
  context: SheetContext,
): FlowedPage[] {
  const columnMm = (frame.widthMm - GAP_MM) / 2;
  const opening = heading(title, { level: 1, type: bookletType.part, bookmark: title })(
    frame.widthMm,
    context,
  );
  const strips = entries.map((entry, index) => ({
    ...entryStrip(entry, pageOf(entry.anchor), columnMm, context),
    keepWithNext: entry.level === 1 && entries[index + 1]?.level === 2,
  }));
  return twoColumns(opening, strips, frame.heightMm).map((page) =>
    columnPage(page, 'contents', columnMm + GAP_MM),
  );
}
