/**
 * Every choice of tins from one half of the shelf, by what it takes. Fewest tins first, so that when a very
 * large shelf has more choices than the cap, what is left out are only the fills of many tins.
 */
import type { Fillable } from './best-fills.ts';

export interface Choice {
  /** Batter it takes, mg. */
  mg: number;
  tins: number;
  /** How many of each of this half's tins. */
  counts: readonly number[];
}

export interface HalfShelf {
  /** Lightest first. */
  choices: Choice[];
  /** False when the cap was reached. */
  complete: boolean;
}

export interface HeldTin extends Fillable {
  mg: number;
}

/** Choices one tin larger than `from`, adding only at or after the last tin used, so that none comes twice. */
function grown(from: Choice, held: readonly HeldTin[], mostMg: number): Choice[] {
  const last = from.counts.length - 1;
  return held.flatMap((tin, index) => {
    if (index < last || from.mg + tin.mg > mostMg) return [];
    const counts = held.slice(0, index + 1).map((_, at) => from.counts[at] ?? 0);
    const count = (counts[index] ?? 0) + 1;
    if (count > tin.owned) return [];
    counts[index] = count;
    return [{ mg: from.mg + tin.mg, tins: from.tins + 1, counts }];
  });
}

/** All choices one tin larger, or null as soon as there are more than `room`. */
function nextRound(round: Choice[], held: readonly HeldTin[], mostMg: number, room: number): Choice[] | null {
  const next: Choice[] = [];
  for (const choice of round) {
    next.push(...grown(choice, held, mostMg));
    if (next.length > room) return null;
  }
  return next;
}

const byWeight = (a: Choice, b: Choice): number => a.mg - b.mg || a.tins - b.tins;

/** All choices of at most `mostMg`, the empty one among them. */
export function halfShelf(held: readonly HeldTin[], mostMg: number, cap: number): HalfShelf {
  const choices: Choice[] = [{ mg: 0, tins: 0, counts: [] }];
  let round: Choice[] = choices.slice();
  let complete = true;
  while (round.length > 0) {
    const next = nextRound(round, held, mostMg, cap - choices.length);
    if (next === null) {
      complete = false;
      break;
    }
    choices.push(...next);
    round = next;
  }
  return { choices: choices.sort(byWeight), complete };
}
