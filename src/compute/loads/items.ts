/**
 * Tins as the search sees them: whole milligrams, so that sums are exact, and equal ones counted together, so
 * that swapping two alike is never tried. A tin that alone exceeds the bowl becomes the fewest equal parts
 * that fit. Two such parts never fit one load: each is more than half the bowl.
 */
export interface BatterAsk {
  batterG: number;
  count: number;
}

/** One tin, or one part of a split tin. */
export interface Piece {
  ask: number;
  mg: number;
  /** Parts that the tin was split into; 1 for a whole tin. */
  parts: number;
}

/** Pieces of one mass, in the order of the asks. */
export interface Group {
  mg: number;
  pieces: Piece[];
}

export interface LoadItems {
  /** Heaviest first. */
  groups: Group[];
  limitMg: number;
  totalMg: number;
}

/** How many pieces of each group a load holds. */
export type GroupCounts = readonly number[];

/** Pieces for the search; a limit or mass in g is taken to the milligram. */
export function loadItems(asks: readonly BatterAsk[], limitG: number): LoadItems {
  const limitMg = Math.round(limitG * 1000);
  const byMass = new Map<number, Piece[]>();
  let totalMg = 0;
  asks.forEach((ask, index) => {
    for (let tin = 0; tin < ask.count; tin++) {
      for (const piece of pieces(index, Math.round(ask.batterG * 1000), limitMg)) {
        byMass.set(piece.mg, [...(byMass.get(piece.mg) ?? []), piece]);
        totalMg += piece.mg;
      }
    }
  });
  const groups = [...byMass].map(([mg, list]) => ({ mg, pieces: list })).sort((a, b) => b.mg - a.mg);
  return { groups, limitMg, totalMg };
}

function pieces(ask: number, mg: number, limitMg: number): Piece[] {
  const parts = Math.max(1, Math.ceil(mg / limitMg));
  const share = Math.floor(mg / parts);
  const odd = mg - share * parts;
  return Array.from({ length: parts }, (_, part) => ({ ask, mg: share + (part < odd ? 1 : 0), parts }));
}

/** Batter of one load, mg. */
export function loadMg(items: LoadItems, counts: GroupCounts): number {
  return items.groups.reduce((sum, group, index) => sum + group.mg * (counts[index] ?? 0), 0);
}
