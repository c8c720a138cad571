/**
 * A large print on home paper, to be joined: each page a window on the sheet, with laps, crosses, a name and a map.
 * Its tags say little; the title names the file that is for reading on a screen or aloud.
 */
import type { PaperName } from '../../domain/kitchen.ts';
import type { TilingWords } from '../../wording/tiling/index.ts';
import { asOneParagraph } from '../imposition/plain-surface.ts';
import { portraitSheet } from '../sheet/paper.ts';
import { lineWeightPt } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import { shiftedSurface } from '../sheet/shifted-surface.ts';
import type { Print, PrintPage } from '../sheet/surface.ts';
import { drawTileFoot } from './tile-foot.ts';
import { LAP_MM, MARGIN_MM, type Tile, type TileGrid, tileGrid } from './tile-grid.ts';
import { crossesIn, trimTicks } from './tile-marks.ts';
import { inWindow } from './window-surface.ts';

export interface Tiling {
  /** What the large sheet is called: 'A2'. */
  sheetName: string;
  paper: PaperName;
  words: TilingWords;
}

const fileOf = ({ path }: Print): string => `${path.slice(path.lastIndexOf('/') + 1)}.pdf`;

function tilePage(
  sheet: PrintPage,
  grid: TileGrid,
  tile: Tile,
  text: string,
  key: string,
  context: SheetContext,
): PrintPage {
  const { window } = tile;
  const corner = { xMm: MARGIN_MM, yMm: MARGIN_MM };
  const marks = { stroke: context.inks.quietInk, lineWidthPt: lineWeightPt.thin };
  return {
    ...grid.paper,
    draw(surface, origin) {
      const page = shiftedSurface(surface, origin);
      asOneParagraph(page, key, (plain) =>
        inWindow(plain, window, corner, context.metrics, (seen) => sheet.draw(seen, { xMm: 0, yMm: 0 })),
      );
      page.artifact(() => {
        const crosses = crossesIn(grid, tile);
        const onSheet = shiftedSurface(page, {
          xMm: corner.xMm - window.xMm,
          yMm: corner.yMm - window.yMm,
        });
        if (crosses.length > 0) onSheet.path(crosses, marks);
        const ticks = trimTicks(tile, { ...window, ...corner });
        if (ticks.length > 0) page.path(ticks, marks);
        drawTileFoot(page, context, { grid, tile, text });
      });
    },
  };
}

/** The tiled print of a print in which all pages have one size. */
export function tiledPrint(print: Print, tiling: Tiling, context: SheetContext): Print {
  const { words, paper, sheetName } = tiling;
  const pages = print.pages.flatMap((sheet, index) => {
    const grid = tileGrid(sheet, portraitSheet(paper));
    const of = print.pages.length > 1 ? words.sheet(index + 1, print.pages.length) : '';
    const text = [words.join(LAP_MM), of, `${print.title}.`].filter((part) => part !== '').join(' ');
    return grid.tiles.map((tile) => tilePage(sheet, grid, tile, text, `${index} ${tile.name}`, context));
  });
  return {
    path: `${print.path}-on-${paper.toLowerCase()}`,
    title: words.title(print.title, words.papers[paper], sheetName, fileOf(print)),
    lang: print.lang,
    subject: words.subject(fileOf(print)),
    pages,
  };
}
