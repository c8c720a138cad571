/**
 * Egg sizes and what is left when the shell is off.
 * US: USDA FoodData Central SR Legacy, household portions (from memory).
 * UK and EU: middle of the in-shell grade (Regulation (EC) 589/2008 Art. 4: M 53–63 g, L 63–73 g) × 0.88
 * (USDA refuse 12 %, from memory) — derived. The open-ended grades have no middle: S is taken at 48 g and
 * XL at 78 g in shell (our choice). The kitchen's own weighing wins over all of these.
 */
export type EggScheme = 'UK' | 'US';
export type EggGrade = 'small' | 'medium' | 'large' | 'extra large' | 'jumbo';
export type EggPart = 'egg' | 'yolk' | 'white';

export interface EggSize {
  scheme: EggScheme;
  grade: EggGrade;
}

const SHELL_SHARE = 0.12;

const SHELLED_G: Record<EggScheme, Partial<Record<EggGrade, number>>> = {
  UK: {
    small: 48 * (1 - SHELL_SHARE),
    medium: 58 * (1 - SHELL_SHARE),
    large: 68 * (1 - SHELL_SHARE),
    'extra large': 78 * (1 - SHELL_SHARE),
  },
  US: { small: 38, medium: 44, large: 50, 'extra large': 56, jumbo: 63 },
};

/** Share of the shelled mass: 33 g of white and 17 g of yolk in a 50 g egg (USDA, from memory). */
export const PART_SHARE: Record<EggPart, number> = { egg: 1, yolk: 0.34, white: 0.66 };

/** Shelled mass of one egg, g; null when the scheme has no such grade. */
export function tableShelledG(size: EggSize): number | null {
  return SHELLED_G[size.scheme][size.grade] ?? null;
}

/** The grades that a scheme has, smallest first. */
export function gradesOf(scheme: EggScheme): EggGrade[] {
  return Object.keys(SHELLED_G[scheme]) as EggGrade[];
}
