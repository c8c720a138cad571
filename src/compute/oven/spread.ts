/**
 * Tins that fit are moved apart and to the middle, so that hot air finds its way evenly: spare room goes in equal
 * parts between the tins and to either side. Stretching both ways never brings two tins nearer to each other.
 */
import type { Point } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import type { Footprint } from './footprint.ts';
import type { ShelfRoom } from './shelf.ts';

export interface StandingTin extends Point {
  footprint: Footprint;
  turned: boolean;
}

type Axis = 'x' | 'y';

const reachAlong = ({ halfXMm, halfYMm, roundMm }: Footprint, axis: Axis): number =>
  (axis === 'x' ? halfXMm : halfYMm) + roundMm;

/** Positions along one axis, from wall to wall. */
function spreadAlong(tins: readonly StandingTin[], axis: Axis, roomMm: number, wallMm: number): number[] {
  const at = tins.map((tin) => tin[axis]);
  const reach = tins.map(({ footprint }) => reachAlong(footprint, axis));
  const low = Math.min(...at.map((value, index) => value - (reach[index] ?? 0)));
  const high = Math.max(...at.map((value, index) => value + (reach[index] ?? 0)));
  const spareMm = roomMm - 2 * wallMm - (high - low);
  const first = Math.min(...at);
  const span = Math.max(...at) - first;
  // One part between, one to either side; a single row or column only goes to the middle.
  const factor = span > 0 ? 1 + Math.max(0, spareMm) / 3 / span : 1;
  const stretched = at.map((value) => first + (value - first) * factor);
  const from = Math.min(...stretched.map((value, index) => value - (reach[index] ?? 0)));
  const to = Math.max(...stretched.map((value, index) => value + (reach[index] ?? 0)));
  const shift = roomMm / 2 - (from + to) / 2;
  return stretched.map((value) => quantiseMm(value + shift));
}

/** The tins at their new places. */
export function spreadTins(tins: readonly StandingTin[], room: ShelfRoom): StandingTin[] {
  if (tins.length === 0) return [];
  const xs = spreadAlong(tins, 'x', room.widthMm, room.wallGapMm);
  const ys = spreadAlong(tins, 'y', room.depthMm, room.wallGapMm);
  return tins.map((tin, at) => ({ ...tin, x: xs[at] ?? tin.x, y: ys[at] ?? tin.y }));
}
