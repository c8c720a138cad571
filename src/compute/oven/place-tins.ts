/**
 * Do these tins go on one shelf, and where? Largest first, each pushed against walls and tins that stand already,
 * trying every such place. A placement found is a proof; that none exists is proven by pairs and by area, and
 * otherwise only not found.
 */
import type { Point } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { type Footprint, turnedFootprint } from './footprint.ts';
import { edgesMeet, isKeptOut, type KeepOut, keepOut, onLevel, onUpright } from './keep-out.ts';
import { areaFits, pairFits, type Reach, reachOf, type ShelfRoom } from './shelf.ts';
import { type StandingTin, spreadTins } from './spread.ts';

/** Middle of a tin from the front left corner of the shelf, mm, and whether it is turned by a quarter. */
export interface Place extends Point {
  turned: boolean;
}

export type ShelfAnswer =
  | { fits: 'yes'; places: Place[] }
  | { fits: 'no'; because: 'too big' | 'a pair' | 'area' }
  | { fits: 'not found' };

const MOST_STEPS = 1500;

/** Tries to put tins on a shelf; places come in the order of the tins. */
export function placeTins(tins: readonly Footprint[], room: ShelfRoom): ShelfAnswer {
  const ways = tins.map((tin) => waysOf(tin, room));
  if (ways.some((each) => each.length === 0)) return { fits: 'no', because: 'too big' };
  if (!pairsFit(ways, room)) return { fits: 'no', because: 'a pair' };
  if (!areaFits(tins, room)) return { fits: 'no', because: 'area' };
  const order = tins.map((_, at) => at).sort((a, b) => sizeOf(tins[b]) - sizeOf(tins[a]) || a - b);
  const found = search(
    order.map((at) => ways[at] ?? []),
    room,
  );
  if (found === null) return { fits: 'not found' };
  const spread = spreadTins(found, room);
  const places = tins.map((_, at) => placeOf(spread[order.indexOf(at)]));
  return { fits: 'yes', places };
}

const sizeOf = (tin: Footprint | undefined): number =>
  tin === undefined ? 0 : tin.halfXMm + tin.halfYMm + 2 * tin.roundMm;

const placeOf = (standing: StandingTin | undefined): Place => ({
  x: quantiseMm(standing?.x ?? 0),
  y: quantiseMm(standing?.y ?? 0),
  turned: standing?.turned ?? false,
});

interface Way {
  footprint: Footprint;
  turned: boolean;
  reach: Reach;
}

/** As it is and turned by a quarter, where that differs and the shelf is big enough. */
function waysOf(tin: Footprint, room: ShelfRoom): Way[] {
  const both = [
    { footprint: tin, turned: false },
    ...(tin.halfXMm === tin.halfYMm ? [] : [{ footprint: turnedFootprint(tin), turned: true }]),
  ];
  return both.flatMap((way) => {
    const reach = reachOf(way.footprint, room);
    return reach === null ? [] : [{ ...way, reach }];
  });
}

function pairsFit(ways: readonly Way[][], room: ShelfRoom): boolean {
  return ways.every((mine, at) =>
    ways
      .slice(at + 1)
      .every((others) => mine.some((a) => others.some((b) => pairFits(a.footprint, b.footprint, room)))),
  );
}

function search(ways: readonly Way[][], room: ShelfRoom): StandingTin[] | null {
  let steps = 0;
  const standing: StandingTin[] = [];
  const next = (): boolean => {
    const mine = ways[standing.length];
    if (mine === undefined) return true;
    for (const way of mine) {
      for (const spot of spotsFor(way, standing, room)) {
        if (++steps > MOST_STEPS) return false;
        standing.push({ ...spot, footprint: way.footprint, turned: way.turned });
        if (next()) return true;
        standing.pop();
      }
    }
    return false;
  };
  return next() ? standing : null;
}

/** Free places against two things each, front left first. */
function spotsFor({ footprint, reach }: Way, standing: readonly StandingTin[], room: ShelfRoom): Point[] {
  const zones = standing.map((tin) => keepOut(tin, tin.footprint, footprint, room.airGapMm));
  const uprights = [reach.minX, reach.maxX];
  const levels = [reach.minY, reach.maxY];
  const corners = uprights.flatMap((x) => levels.map((y) => ({ x, y })));
  const atWalls = zones.flatMap((zone) => [
    ...uprights.flatMap((x) => onUpright(zone, x)),
    ...levels.flatMap((y) => onLevel(zone, y)),
  ]);
  const between = zones.flatMap((zone, at) => zones.slice(at + 1).flatMap((other) => edgesMeet(zone, other)));
  const free = [...corners, ...atWalls, ...between]
    .map(({ x, y }) => ({ x: quantiseMm(x), y: quantiseMm(y) }))
    .filter((spot) => isWithin(spot, reach) && !zones.some((zone) => isKeptOut(relaxed(zone), spot)));
  return distinct(free.sort((a, b) => a.y - b.y || a.x - b.x));
}

const QUANTUM_MM = 0.001;

const isWithin = ({ x, y }: Point, { minX, maxX, minY, maxY }: Reach): boolean =>
  x >= minX - QUANTUM_MM && x <= maxX + QUANTUM_MM && y >= minY - QUANTUM_MM && y <= maxY + QUANTUM_MM;

/** Quantised places may be short of the air by their last digit. */
const relaxed = (zone: KeepOut): KeepOut => ({ ...zone, round: Math.max(0, zone.round - 2 * QUANTUM_MM) });

const distinct = (spots: readonly Point[]): Point[] =>
  spots.filter((spot, at) => at === 0 || spot.x !== spots[at - 1]?.x || spot.y !== spots[at - 1]?.y);
