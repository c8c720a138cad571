/** Where on a shelf may the middle of a tin lie, and can any shelf hold these tins at all? Lengths mm. */
import type { OvenRoom } from '../../domain/work-settings.ts';
import { airedAreaMm2, type Footprint } from './footprint.ts';
import { isKeptOut, keepOut } from './keep-out.ts';

export type ShelfRoom = Pick<OvenRoom, 'widthMm' | 'depthMm' | 'airGapMm' | 'wallGapMm'>;

/** Bounds for the middle of a tin, from the front left corner of the shelf. */
export interface Reach {
  minX: number;
  maxX: number;
  minY: number;
  maxY: number;
}

/** Null when the tin alone is too big for the shelf. */
export function reachOf({ halfXMm, halfYMm, roundMm }: Footprint, room: ShelfRoom): Reach | null {
  const [x, y] = [halfXMm + roundMm + room.wallGapMm, halfYMm + roundMm + room.wallGapMm];
  const reach = { minX: x, maxX: room.widthMm - x, minY: y, maxY: room.depthMm - y };
  return reach.minX <= reach.maxX && reach.minY <= reach.maxY ? reach : null;
}

/** Two tins fit exactly when they fit with each in its own corner, as far from each other as can be. */
export function pairFits(a: Footprint, b: Footprint, room: ShelfRoom): boolean {
  const [one, other] = [reachOf(a, room), reachOf(b, room)];
  if (one === null || other === null) return false;
  const apart = {
    x: Math.max(one.maxX - other.minX, other.maxX - one.minX),
    y: Math.max(one.maxY - other.minY, other.maxY - one.minY),
  };
  return !isKeptOut(keepOut({ x: 0, y: 0 }, a, b, room.airGapMm), apart);
}

/** Half the air belongs to each tin and to the walls: shares of the shelf that cannot overlap. */
export function areaFits(tins: readonly Footprint[], room: ShelfRoom): boolean {
  const { widthMm, depthMm, wallGapMm, airGapMm } = room;
  const [across, deep] = [widthMm, depthMm].map((side) => side - 2 * wallGapMm + airGapMm);
  const taken = tins.reduce((sum, tin) => sum + airedAreaMm2(tin, airGapMm / 2), 0);
  return taken <= (across ?? 0) * (deep ?? 0);
}
