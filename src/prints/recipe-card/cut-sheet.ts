/**
 * Cards several to a sheet, to print on both sides and cut: a sheet of fronts, then their backs with the columns
 * mirrored, so that each back lies behind its front when the sheet is turned sideways.
 */

import type { RecipeCardWords } from '../../wording/recipe-card/index.ts';
import { capitalised } from '../../wording/sentence-case.ts';
import { asOneParagraph } from '../imposition/plain-surface.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { shiftedSurface } from '../sheet/shifted-surface.ts';
import type { PathStep, PrintPage, Surface } from '../sheet/surface.ts';
import type { CardFace } from './card-parts.ts';
import { BLEED_MM, type CardForm } from './card-size.ts';
import { type CutGrid, MARK_MM } from './cut-grid.ts';

const line = (x1: number, y1: number, x2: number, y2: number): PathStep[] => [
  { op: 'move', x: x1, y: y1 },
  { op: 'line', x: x2, y: y2 },
];

/** In line with every cut, outside the bleed: a ruler laid across two of them cuts true. */
function cutMarks({ xsMm, ysMm }: CutGrid, { widthMm, heightMm }: CardForm): PathStep[] {
  const xs = xsMm.flatMap((x) => [x, x + widthMm]);
  const ys = ysMm.flatMap((y) => [y, y + heightMm]);
  const ends = (values: number[]): [number, number] => [
    Math.min(...values) - BLEED_MM,
    Math.max(...values) + BLEED_MM,
  ];
  const [left, right] = ends(xs);
  const [top, bottom] = ends(ys);
  return [
    ...xs.flatMap((x) => [...line(x, top - MARK_MM, x, top), ...line(x, bottom, x, bottom + MARK_MM)]),
    ...ys.flatMap((y) => [...line(left - MARK_MM, y, left, y), ...line(right, y, right + MARK_MM, y)]),
  ];
}

interface SheetParts {
  grid: CutGrid;
  form: CardForm;
  words: RecipeCardWords;
  context: SheetContext;
}

const NOTE_PT = 8;
const NOTE_IN_MM = 4;
const NOTE_BELOW_MM = 3.2;

function drawSheetFurniture(surface: Surface, parts: SheetParts, note: string): void {
  const { grid, form, context } = parts;
  surface.path(cutMarks(grid, form), { stroke: context.inks.ink, lineWidthPt: lineWeightPt.thin });
  surface.text({
    text: note,
    xMm: (grid.xsMm[0] ?? 0) + NOTE_IN_MM,
    yMm: Math.max(...grid.ysMm) + form.heightMm + BLEED_MM + NOTE_BELOW_MM,
    font: 'text',
    sizePt: NOTE_PT,
    colour: context.inks.quietInk,
  });
}

/** Place of card `index` of a sheet; on backs the columns run the other way. */
function placeOf({ columns, xsMm, ysMm }: CutGrid, index: number, back: boolean) {
  const column = index % columns;
  const row = Math.floor(index / columns);
  return { xMm: xsMm[back ? columns - 1 - column : column] ?? 0, yMm: ysMm[row] ?? 0 };
}

/** A face, and the name of the cards that begin with it. */
interface NamedFace {
  face: CardFace;
  begins: string | null;
}

function sheetPage(parts: SheetParts, faces: NamedFace[], key: string, back: boolean): PrintPage {
  const { grid, words } = parts;
  const note = `${back ? words.sheets.back : words.sheets.front}: ${words.sheets.turn[grid.turn]}`;
  const sentence = capitalised(note);
  return {
    ...grid.sheet,
    draw(surface, origin) {
      const sheet = shiftedSurface(surface, origin);
      sheet.artifact(() => drawSheetFurniture(sheet, parts, sentence));
      for (const [index, { face, begins }] of faces.entries()) {
        const { xMm, yMm } = placeOf(grid, index, back);
        if (begins !== null) sheet.bookmark(begins, 1, { xMm, yMm });
        asOneParagraph(sheet, `${key} ${index}`, (plain) => face.draw(plain, xMm, yMm));
      }
    },
  };
}

/** Pages for all cards, fronts and backs in turn; faces as `cardFaces` gives them. */
export function cutSheets(
  parts: SheetParts,
  cards: readonly { title: string; faces: readonly CardFace[] }[],
): PrintPage[] {
  const faces = cards.flatMap(({ title, faces: own }) =>
    own.map((face, index): NamedFace => ({ face, begins: index === 0 ? title : null })),
  );
  const perSheet = 2 * parts.grid.columns * parts.grid.rows;
  const pages: PrintPage[] = [];
  for (let from = 0; from < faces.length; from += perSheet) {
    const here = faces.slice(from, from + perSheet);
    for (const back of [false, true]) {
      const shown = here.filter((_, index) => index % 2 === (back ? 1 : 0));
      pages.push(sheetPage(parts, shown, `${back ? 'back' : 'front'} ${from}`, back));
    }
  }
  return pages;
}
