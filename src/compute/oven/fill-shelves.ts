/**
 * Do these tins go into the oven together? Shared out over the shelves, the emptiest oven first; every shelf asked
 * once per set of sizes and remembered. `might` is the same question with 'not found' taken for yes: what proves
 * that fewer loads are impossible.
 */
import type { TinForm } from '../../domain/tin.ts';
import type { OvenRoom } from '../../domain/work-settings.ts';
import { type Footprint, footprintKey, tinFootprint } from './footprint.ts';
import { type Place, placeTins, type ShelfAnswer } from './place-tins.ts';

/** Place of each tin, in the order asked, with its shelf from the bottom, 0 first. */
export interface OvenPlace extends Place {
  shelf: number;
}

/** Answers for one oven, remembered from question to question. */
export interface OvenMemory {
  room: OvenRoom;
  shelves: Map<string, ShelfAnswer>;
  ovens: Map<string, OvenPlace[] | null>;
  footprints: Map<TinForm, Footprint>;
}

export const ovenMemory = (room: OvenRoom): OvenMemory => ({
  room,
  shelves: new Map(),
  ovens: new Map(),
  footprints: new Map(),
});

/** What a tin takes of a shelf; one known only by its water gets a whole shelf. */
export function standingRoom(tin: TinForm, { room, footprints }: OvenMemory): Footprint {
  const known = footprints.get(tin);
  if (known) return known;
  const whole = {
    halfXMm: room.widthMm / 2 - room.wallGapMm,
    halfYMm: room.depthMm / 2 - room.wallGapMm,
    roundMm: 0,
  };
  const found = tinFootprint(tin) ?? whole;
  footprints.set(tin, found);
  return found;
}

const reachMm = ({ halfXMm, halfYMm, roundMm }: Footprint): number => halfXMm + halfYMm + 2 * roundMm;

/** Largest first: what does not fit is soon known. */
const byKey = (a: Footprint, b: Footprint): number => {
  const [x, y] = [footprintKey(a), footprintKey(b)];
  return reachMm(b) - reachMm(a) || (x < y ? -1 : x > y ? 1 : 0);
};

const keyOf = (tins: readonly Footprint[]): string => tins.map(footprintKey).join(' ');

/** `tins` in the order of their keys. */
function shelfAnswer(tins: readonly Footprint[], memory: OvenMemory): ShelfAnswer {
  const key = keyOf(tins);
  const known = memory.shelves.get(key);
  if (known) return known;
  const answer = placeTins(tins, memory.room);
  memory.shelves.set(key, answer);
  return answer;
}

/**
 * Where the tins stand, in their order; null when no way was found.
 * @example two 8 in rounds on 440 × 360 mm: one shelf, cornerwise
 */
export function fillShelves(tins: readonly Footprint[], memory: OvenMemory): OvenPlace[] | null {
  const order = tins
    .map((_, at) => at)
    .sort((a, b) => byKey(tins[a] ?? NOTHING, tins[b] ?? NOTHING) || a - b);
  const sorted = order.map((at) => tins[at] ?? NOTHING);
  const key = keyOf(sorted);
  const known = memory.ovens.get(key);
  const places = known === undefined ? placesOf(sorted, memory) : known;
  memory.ovens.set(key, places);
  if (places === null) return null;
  return tins.map((_, at) => places[order.indexOf(at)] ?? NOWHERE);
}

const NOTHING: Footprint = { halfXMm: 0, halfYMm: 0, roundMm: 0 };
const NOWHERE: OvenPlace = { x: 0, y: 0, turned: false, shelf: 0 };

/** False when it is proven that the tins do not go into the oven together. */
export function mightFillShelves(tins: readonly Footprint[], memory: OvenMemory): boolean {
  if (fillShelves(tins, memory) !== null) return true;
  return shareOut([...tins].sort(byKey), memory, (answer) => answer.fits !== 'no') !== 'no';
}

function placesOf(sorted: readonly Footprint[], memory: OvenMemory): OvenPlace[] | null {
  const shelves = shareOut(sorted, memory, (answer) => answer.fits === 'yes');
  if (shelves === 'no' || shelves === 'gave up') return null;
  const places: OvenPlace[] = sorted.map(() => NOWHERE);
  for (const [shelf, held] of shelves.entries()) {
    const answer = shelfAnswer(tinsOf(sorted, held), memory);
    if (answer.fits !== 'yes') continue;
    held.forEach((at, index) => {
      places[at] = { ...(answer.places[index] ?? NOWHERE), shelf };
    });
  }
  return places;
}

const tinsOf = (sorted: readonly Footprint[], held: readonly number[]): Footprint[] =>
  held.map((at) => sorted[at] ?? NOTHING);

const MOST_STEPS = 4000;

/** Tins over shelves, as indices; a shelf is only begun when those before it are. */
function shareOut(
  sorted: readonly Footprint[],
  memory: OvenMemory,
  isGood: (answer: ShelfAnswer) => boolean,
): number[][] | 'no' | 'gave up' {
  const shelves: number[][] = Array.from({ length: memory.room.shelves }, () => []);
  let steps = 0;
  const put = (at: number): boolean => {
    if (at === sorted.length) return true;
    for (const shelf of shelves) {
      if (++steps > MOST_STEPS) return false;
      shelf.push(at);
      if (isGood(shelfAnswer(tinsOf(sorted, shelf), memory)) && put(at + 1)) return true;
      shelf.pop();
      if (shelf.length === 0) return false;
    }
    return false;
  };
  if (put(0)) return shelves;
  return steps > MOST_STEPS ? 'gave up' : 'no';
}
