/**
 * What is the batter made of, and what would that do to its time? Shares of water, protein, fat, carbohydrate,
 * fibre and ash by mass: from the packets' figures where an ingredient has them, its water where that is known, and
 * round figures by role else (from memory). Then Choi & Okos, and the time against a plain sponge's batter.
 */
import type { EggPart } from '../../domain/egg.ts';
import type { Ingredient, Role } from '../../domain/ingredient.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import type { Formula, FormulaLine } from '../../domain/recipe.ts';
import { type Composition, compositionTimeFactor } from './composition.ts';

export interface MakeUp {
  shares: Composition;
  /** Each ingredient's grams and shares, in the formula's order. */
  lines: { name: string; grams: number; shares: Composition; from: 'packet' | 'role' }[];
  /** Time against a plain sponge's batter, by diffusivity alone. */
  timeFactor: number;
}

export const COMPONENTS = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const;

/** Equal weights of butter, sugar, eggs and flour, by the round figures below. */
export const PLAIN_SPONGE: Composition = {
  water: 0.265,
  protein: 0.057,
  fat: 0.237,
  carbohydrate: 0.432,
  fibre: 0.005,
  ash: 0.004,
};

type Dry = Omit<Composition, 'water'>;
interface Usual {
  water: number;
  /** Shares of what is left without the water. */
  dry: Dry;
}

const dry = (protein: number, fat: number, carbohydrate: number, fibre: number, ash: number): Dry => ({
  protein,
  fat,
  carbohydrate,
  fibre,
  ash,
});

const BY_ROLE: Record<Exclude<Role, 'egg'>, Usual> = {
  flour: { water: 0.14, dry: dry(0.12, 0.02, 0.83, 0.025, 0.005) },
  sugar: { water: 0, dry: dry(0, 0, 1, 0, 0) },
  fat: { water: 0, dry: dry(0, 1, 0, 0, 0) },
  liquid: { water: 0.9, dry: dry(0.27, 0.29, 0.38, 0, 0.06) },
  raising: { water: 0.05, dry: dry(0, 0, 0.3, 0, 0.7) },
  flavouring: { water: 0.05, dry: dry(0.2, 0.15, 0.45, 0.15, 0.05) },
  inclusion: { water: 0.18, dry: dry(0.04, 0.02, 0.86, 0.07, 0.01) },
};

const BY_EGG_PART: Record<EggPart, Usual> = {
  egg: { water: 0.76, dry: dry(0.53, 0.4, 0.03, 0, 0.04) },
  yolk: { water: 0.52, dry: dry(0.34, 0.58, 0.04, 0, 0.04) },
  white: { water: 0.88, dry: dry(0.89, 0.01, 0.05, 0, 0.05) },
};

function usual({ role, eggPart }: Pick<FormulaLine, 'role' | 'eggPart'>): Usual {
  return role === 'egg' ? BY_EGG_PART[eggPart ?? 'egg'] : BY_ROLE[role];
}

function byRole(line: FormulaLine, waterShare: number | undefined): Composition {
  const { water, dry } = usual(line);
  const wet = waterShare ?? water;
  const rest = 1 - wet;
  return {
    water: quantiseRatio(wet),
    protein: quantiseRatio(rest * dry.protein),
    fat: quantiseRatio(rest * dry.fat),
    carbohydrate: quantiseRatio(rest * dry.carbohydrate),
    fibre: quantiseRatio(rest * dry.fibre),
    ash: quantiseRatio(rest * dry.ash),
  };
}

/** From what the packet says of 100 g; what it does not account for is water. Alcohol boils off and counts so too. */
function byPacket({ nutrients }: Ingredient): Composition | null {
  if (nutrients === undefined) return null;
  const [protein, fat, fibre, ash] = [
    nutrients.proteinG,
    nutrients.fatG,
    nutrients.fibreG,
    nutrients.saltG,
  ].map((grams) => grams / 100);
  if (protein === undefined || fat === undefined || fibre === undefined || ash === undefined) return null;
  const carbohydrate = nutrients.carbohydrateG / 100;
  const known = protein + fat + fibre + ash + carbohydrate;
  // Rounded packets may add up to a little over the whole.
  const whole = Math.max(1, known);
  return {
    water: quantiseRatio(1 - known / whole),
    protein: quantiseRatio(protein / whole),
    fat: quantiseRatio(fat / whole),
    carbohydrate: quantiseRatio(carbohydrate / whole),
    fibre: quantiseRatio(fibre / whole),
    ash: quantiseRatio(ash / whole),
  };
}

/** The make-up of a formula, eggs counted as they are weighed; a RangeError for one that weighs nothing. */
export function makeUp(formula: Formula, ingredients: readonly Ingredient[]): MakeUp {
  const lines = formula.map((line): MakeUp['lines'][number] => {
    const shelf = ingredients.find(({ id }) => id === line.ingredientId);
    const packet = shelf === undefined ? null : byPacket(shelf);
    const shares = packet ?? byRole(line, shelf?.waterShare);
    return { name: line.name, grams: line.grams, shares, from: packet === null ? 'role' : 'packet' };
  });
  const whole = lines.reduce((sum, { grams }) => sum + grams, 0);
  if (!(whole > 0)) throw new RangeError('A formula weighs more than nothing.');
  const shares = sharesOf(lines, whole);
  return { shares, lines, timeFactor: quantiseRatio(compositionTimeFactor(shares, PLAIN_SPONGE)) };
}

function sharesOf(lines: MakeUp['lines'], whole: number): Composition {
  const of = (component: keyof Composition): number =>
    quantiseRatio(lines.reduce((sum, { grams, shares }) => sum + grams * shares[component], 0) / whole);
  return {
    water: of('water'),
    protein: of('protein'),
    fat: of('fat'),
    carbohydrate: of('carbohydrate'),
    fibre: of('fibre'),
    ash: of('ash'),
  };
}
