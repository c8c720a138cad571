/**
 * Baking high up: less powder, a little less sugar, more liquid, as one more flavour on the formula.
 * 3,000 ft: powder −1/8, sugar −0 to 1 tbsp a cup, liquid +1 to 2 tbsp a cup; 5,000 ft: −1/8 to 1/4, −0 to 2,
 * +2 to 4; 7,000 ft: −1/4, −1 to 3, +3 to 4. USDA and US state extension services' high-altitude tables, seen
 * on several public pages, which differ slightly. Middles are taken, 16 tbsp to a cup, linear between;
 * nothing below 3,000 ft, the last row beyond 7,000 ft.
 */
import type { Adjustment, Flavour } from '../../domain/flavour.ts';

export interface AltitudeShares {
  powder: number;
  sugar: number;
  liquid: number;
}

interface AltitudeRow extends AltitudeShares {
  feet: number;
}

const TBSP_PER_CUP = 16;
const ALTITUDE_ROWS: readonly AltitudeRow[] = [
  { feet: 3000, powder: -1 / 8, sugar: -0.5 / TBSP_PER_CUP, liquid: 1.5 / TBSP_PER_CUP },
  { feet: 5000, powder: -3 / 16, sugar: -1 / TBSP_PER_CUP, liquid: 3 / TBSP_PER_CUP },
  { feet: 7000, powder: -1 / 4, sugar: -2 / TBSP_PER_CUP, liquid: 3.5 / TBSP_PER_CUP },
];
const MM_PER_FOOT = 304.8;

const between = (a: number, b: number, at: number): number => a + (b - a) * at;

/** Shares by which powder, sugar and liquid change at an altitude in m; null below 3,000 ft. */
export function altitudeShares(metres: number): AltitudeShares | null {
  const feet = (metres * 1000) / MM_PER_FOOT;
  const above = ALTITUDE_ROWS.findIndex((row) => row.feet >= feet);
  const high = ALTITUDE_ROWS[above];
  const low = ALTITUDE_ROWS[above - 1];
  const last = ALTITUDE_ROWS[ALTITUDE_ROWS.length - 1];
  if (above === 0 && high !== undefined && high.feet > feet) return null;
  if (high === undefined) return last === undefined ? null : last;
  if (low === undefined) return high;
  const at = (feet - low.feet) / (high.feet - low.feet);
  return {
    powder: between(low.powder, high.powder, at),
    sugar: between(low.sugar, high.sugar, at),
    liquid: between(low.liquid, high.liquid, at),
  };
}

/**
 * The flavour that adapts a formula to an altitude in m; null where none is needed.
 * @param splits how each self-raising flour on the shelf is split, so that its powder can be cut
 */
export function altitudeFlavour(metres: number, splits: Adjustment[]): Flavour | null {
  const shares = altitudeShares(metres);
  if (shares === null) return null;
  return {
    id: 'altitude',
    name: `Baked at ${Math.round(metres)} m`,
    summary: 'Less powder and sugar, more liquid, for thinner air.',
    suits: {
      recipeIds: [],
      methods: ['creamed', 'all-in-one', 'whisked', 'oil', 'melted', 'rich fruit', 'angel'],
    },
    why: 'Thin air lets gas swell and water leave sooner: less powder keeps the crumb from bursting, more liquid and less sugar let it set.',
    batter: 'grows',
    adjustments: [
      ...splits,
      { kind: 'multiply', basis: { role: 'raising' }, by: 1 + shares.powder },
      { kind: 'multiply', basis: { role: 'sugar' }, by: 1 + shares.sugar },
      { kind: 'multiply', basis: { role: 'liquid' }, by: 1 + shares.liquid },
    ],
  };
}
