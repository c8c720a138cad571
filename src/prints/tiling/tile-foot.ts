/** Below a tile's window: its name, a small plan of where it belongs, and how to join it to its neighbours. */
import { rectangle } from '../sheet/rules.ts';
import type { SheetContext } from '../sheet/sheet-context.ts';
import type { PathStep, Surface } from '../sheet/surface.ts';
import { drawText, setText } from '../sheet/text-block.ts';
import { type TypeStyle, typeScale } from '../sheet/type-scale.ts';
import { FOOT_MM, MARGIN_MM, type Tile, type TileGrid } from './tile-grid.ts';

const NAME: TypeStyle = { font: 'textBold', sizePt: 20, leadingPt: 22, colour: 'ink' };
const TEXT: TypeStyle = { ...typeScale.furniture, colour: 'ink' };
const MAP_HEIGHT_MM = 9;
const GAP_MM = 4;
/** Clear of the tick at the window's corner. */
const MAP_IN_MM = 4;
const NAME_MM = 13;
const LINE_PT = 0.5;

export interface TileFoot {
  grid: TileGrid;
  tile: Tile;
  /** How to join, and what it belongs to. */
  text: string;
}

function cell({ grid: { columns, rows, tiles } }: TileFoot) {
  const first = tiles[0]?.window;
  const shape = first ? first.widthMm / first.heightMm : 1;
  const heightMm = MAP_HEIGHT_MM / rows;
  return { widthMm: heightMm * shape, heightMm, mapMm: heightMm * shape * columns };
}

/** All tiles as boxes; this one is filled. Returns its width, mm. */
function drawMap(surface: Surface, context: SheetContext, foot: TileFoot, xMm: number, yMm: number): number {
  const { widthMm, heightMm, mapMm } = cell(foot);
  const { ink } = context.inks;
  const box = ({ column, row }: Tile): PathStep[] =>
    rectangle(xMm + column * widthMm, yMm + row * heightMm, widthMm, heightMm);
  surface.path(foot.grid.tiles.flatMap(box), { stroke: ink, lineWidthPt: LINE_PT });
  surface.path(box(foot.tile), { fill: ink });
  return mapMm;
}

export function drawTileFoot(surface: Surface, context: SheetContext, foot: TileFoot): void {
  const { widthMm, heightMm } = foot.grid.paper;
  const topMm = heightMm - MARGIN_MM - FOOT_MM;
  const mapMm = drawMap(surface, context, foot, MARGIN_MM + MAP_IN_MM, topMm + FOOT_MM - MAP_HEIGHT_MM);
  const nameAt = MARGIN_MM + MAP_IN_MM + mapMm + GAP_MM;
  const baselineMm = topMm + FOOT_MM - context.metrics.descentMm(NAME.font, NAME.sizePt);
  surface.text({
    text: foot.tile.name,
    xMm: nameAt,
    yMm: baselineMm,
    font: NAME.font,
    sizePt: NAME.sizePt,
    colour: context.inks[NAME.colour],
  });
  const textAt = nameAt + NAME_MM;
  const text = setText([{ spans: [{ text: foot.text }], type: TEXT }], widthMm - MARGIN_MM - textAt, context);
  drawText(surface, context, text, textAt, topMm + FOOT_MM - text.heightMm);
}
