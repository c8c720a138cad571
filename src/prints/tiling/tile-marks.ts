/**
 * What helps to join tiles: crosses in the middle of every lap, the same on both tiles that share it, and ticks
 * outside the window where its edges are to be trimmed.
 */
import type { Box, PathStep } from '../sheet/surface.ts';
import { registrationCross, straightLine } from '../templates/marks.ts';
import { LAP_MM, type Tile, type TileGrid } from './tile-grid.ts';

interface Spot {
  x: number;
  y: number;
}

/** Along an edge, where two crosses stand: clear of the corners, where four tiles meet. */
const SHARES = [0.22, 0.78];

function acrossCrosses({ window }: Tile): Spot[] {
  const x = window.xMm + window.widthMm - LAP_MM / 2;
  return SHARES.map((share) => ({ x, y: window.yMm + window.heightMm * share }));
}

function downCrosses({ window }: Tile): Spot[] {
  const y = window.yMm + window.heightMm - LAP_MM / 2;
  return SHARES.map((share) => ({ x: window.xMm + window.widthMm * share, y }));
}

/** Middles of all crosses, on the sheet. */
function crossSpots({ columns, rows, tiles }: TileGrid): Spot[] {
  return tiles.flatMap((tile) => [
    ...(tile.column < columns - 1 ? acrossCrosses(tile) : []),
    ...(tile.row < rows - 1 ? downCrosses(tile) : []),
  ]);
}

/** Crosses that a tile shows, whole. */
export function crossesIn(grid: TileGrid, { window }: Tile): PathStep[] {
  const within = ({ x, y }: Spot): boolean =>
    x > window.xMm && x < window.xMm + window.widthMm && y > window.yMm && y < window.yMm + window.heightMm;
  return crossSpots(grid).filter(within).flatMap(registrationCross);
}

const TICK_MM = 4;
const TICK_GAP_MM = 1;

/** Only at the edges that lie on a neighbour: left and top. */
export function trimTicks({ column, row }: Tile, at: Box): PathStep[] {
  const [left, top] = [at.xMm, at.yMm];
  const [right, bottom] = [left + at.widthMm, top + at.heightMm];
  const upright = (y: number, way: 1 | -1): PathStep[] =>
    straightLine({ x: left, y: y + way * TICK_GAP_MM }, { x: left, y: y + way * (TICK_GAP_MM + TICK_MM) });
  const level = (x: number, way: 1 | -1): PathStep[] =>
    straightLine({ x: x + way * TICK_GAP_MM, y: top }, { x: x + way * (TICK_GAP_MM + TICK_MM), y: top });
  return [
    ...(column > 0 ? [...upright(top, -1), ...upright(bottom, 1)] : []),
    ...(row > 0 ? [...level(left, -1), ...level(right, 1)] : []),
  ];
}
