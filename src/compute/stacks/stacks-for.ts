/**
 * 'I need 60': which stacks of owned tins give at least so many portions? Fewest portions over first, then fewest
 * tiers, then least batter. Chains of tins that may stand on one another are searched from the bottom up; a chain
 * that is already worse than all kept ones is not followed further. Our own method.
 */

/** A tin as a tier: what it yields, and what it costs in batter. */
export interface TierChoice {
  tinId: string;
  /** Portions of the wanted size, whole and nearly whole. */
  portions: number;
  batterG: number;
}

export interface StackAsk {
  wanted: number;
  /** In an order of your own; ties are broken by it. */
  tiers: readonly TierChoice[];
  /** Whether the tier of the first index may stand on that of the second. */
  stands(upper: number, lower: number): boolean;
  mostTiers: number;
  /** The top tier is kept for another day: baked and stacked, not counted. */
  keepsTopTier: boolean;
  /** How many to give back. */
  most: number;
}

export interface TierStack {
  /** Bottom first. */
  tinIds: string[];
  portions: number;
  surplus: number;
  batterG: number;
}

export interface StackAnswer {
  /** Best first. */
  stacks: TierStack[];
  /** More of them reach the number than are given. */
  hasMore: boolean;
  /** False when the search was cut short; the stacks are then good ones, perhaps not the best. */
  complete: boolean;
}

/** Chains looked at before the search is cut short: far beyond what any kitchen's shelf needs. */
const MOST_CHAINS = 400_000;

interface Chain {
  at: number[];
  counted: number;
  batterG: number;
}

function before(a: Chain, b: Chain): boolean {
  if (a.counted !== b.counted) return a.counted < b.counted;
  if (a.at.length !== b.at.length) return a.at.length < b.at.length;
  if (a.batterG !== b.batterG) return a.batterG < b.batterG;
  const differing = a.at.findIndex((at, index) => at !== b.at[index]);
  return (a.at[differing] ?? 0) < (b.at[differing] ?? 0);
}

/** Kept sorted, best first. */
function keep(kept: Chain[], chain: Chain, most: number): void {
  const place = kept.findIndex((other) => before(chain, other));
  if (place === -1) kept.push(chain);
  else kept.splice(place, 0, chain);
  if (kept.length > most) kept.pop();
}

function portionsCounted(at: readonly number[], { tiers, keepsTopTier }: StackAsk): number {
  const counted = keepsTopTier ? at.slice(0, -1) : at;
  return counted.reduce((sum, index) => sum + (tiers[index]?.portions ?? 0), 0);
}

/** The best stacks for an ask; none when nothing that may be stacked reaches the number. */
export function stacksFor(ask: StackAsk): StackAnswer {
  const { tiers, stands, wanted, mostTiers, keepsTopTier, most } = ask;
  const fewest = keepsTopTier ? 2 : 1;
  const upon = tiers.map((_, lower) =>
    tiers.flatMap((_other, upper) => (upper !== lower && stands(upper, lower) ? [upper] : [])),
  );
  const kept: Chain[] = [];
  let [looked, reached] = [0, 0];

  const follow = (at: number[], batterG: number): void => {
    if (looked >= MOST_CHAINS) return;
    looked += 1;
    const counted = portionsCounted(at, ask);
    const isEnough = counted >= wanted && at.length >= fewest;
    if (isEnough) {
      reached += 1;
      keep(kept, { at, counted, batterG }, most);
    }
    // A tier more gives more portions: once past the worst kept, everything above is past it too.
    const worst = kept.length === most ? kept[most - 1] : undefined;
    if (worst !== undefined && counted > worst.counted) return;
    if (at.length >= mostTiers) return;
    for (const upper of upon[at[at.length - 1] ?? -1] ?? [])
      follow([...at, upper], batterG + (tiers[upper]?.batterG ?? 0));
  };
  tiers.forEach((tier, index) => {
    follow([index], tier.batterG);
  });

  return {
    stacks: kept.map(({ at, counted, batterG }) => ({
      tinIds: at.flatMap((index) => tiers[index]?.tinId ?? []),
      portions: counted,
      surplus: counted - wanted,
      batterG,
    })),
    hasMore: reached > kept.length,
    complete: looked < MOST_CHAINS,
  };
}
