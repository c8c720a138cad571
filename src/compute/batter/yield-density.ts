/**
 * How heavy is a millilitre of finished cake? The recipe's proven bakes answer: batter ÷ finished volume, by
 * least squares through the origin, ρ = Σ m·V ÷ Σ V², so that a bake in big tins counts for more. Bakes of the log
 * that were measured join the sums, each with a weight 1 ÷ (1 + (r ÷ 3s)²), r its departure as a logarithm and s
 * 4 % (house rule): the proven bakes hold the value, a wild row pulls little. Valid for finished heights near
 * those proven. Rule: common practice, no source.
 */
import { quantiseG, quantiseMl, quantiseRatio } from '../../domain/quantise.ts';
import type { LoggedFill, ProvenBake, Recipe } from '../../domain/recipe.ts';
import { volumeToHeightMl } from '../shapes/index.ts';

export interface ProvenYield {
  bake: ProvenBake;
  /** Finished volume of all its tins, mL. */
  volumeMl: number;
  /** This bake alone, g/mL. */
  gPerMl: number;
  /** Its batter against what the joint density foretells, as a share: 0.02 is 2 % more. */
  residual: number;
}

export interface LoggedYield extends ProvenYield {
  /** How much it counts for against a proven bake of the same size, 0 to 1. */
  weight: number;
}

export interface YieldDensity {
  /** Batter per millilitre of finished cake, g/mL. */
  gPerMl: number;
  bakes: ProvenYield[];
  /** Largest residual of a proven bake, as a share; 0 for a single bake. */
  spread: number;
  /** The proven bakes alone, g/mL: the same as `gPerMl` where the log says nothing. */
  provenGPerMl: number;
  /** Bakes of the log that joined in; none while there are too few. */
  logged: LoggedYield[];
}

const SCATTER = 0.04;
const ROUNDS = 40;

/** Finished volume of a proven bake's tins, mL. */
export function provenVolumeMl(bake: Pick<ProvenBake, 'tins' | 'finishedHeightMm'>): number {
  return quantiseMl(
    bake.tins.reduce((sum, { tin, count }) => sum + count * volumeToHeightMl(tin, bake.finishedHeightMm), 0),
  );
}

interface Measured {
  bake: ProvenBake;
  volumeMl: number;
}

const measured = (bake: ProvenBake): Measured => ({ bake, volumeMl: provenVolumeMl(bake) });

const asBake = ({ tin, count, finishedHeightMm, batterG, date }: LoggedFill): ProvenBake => ({
  tins: [{ tin, count }],
  finishedHeightMm,
  batterG,
  date,
});

/** Σ weight·m·V ÷ Σ weight·V². */
function leastSquares(seen: readonly (Measured & { weight: number })[]): number {
  const crossed = seen.reduce((sum, { bake, volumeMl, weight }) => sum + weight * bake.batterG * volumeMl, 0);
  const squared = seen.reduce((sum, { volumeMl, weight }) => sum + weight * volumeMl * volumeMl, 0);
  return crossed / squared;
}

function weightOf({ bake, volumeMl }: Measured, gPerMl: number): number {
  const departure = Math.log(bake.batterG / (gPerMl * volumeMl)) / (3 * SCATTER);
  return quantiseRatio(1 / (1 + departure * departure));
}

function yielded({ bake, volumeMl }: Measured, gPerMl: number): ProvenYield {
  return {
    bake,
    volumeMl,
    gPerMl: quantiseRatio(bake.batterG / volumeMl),
    residual: quantiseRatio(bake.batterG / (gPerMl * volumeMl) - 1),
  };
}

type Yielding = Pick<Recipe, 'provenBakes' | 'loggedFills'>;

/** The last answer for some proven bakes: a long log takes milliseconds, and every mix of every order asks. */
const known = new WeakMap<
  Yielding['provenBakes'],
  { fills: Yielding['loggedFills']; density: YieldDensity }
>();

/**
 * Yield density of a recipe in g/mL; null when it has no proven bake.
 * @example yieldDensity(sponge)?.gPerMl // 0.431
 */
export function yieldDensity(recipe: Yielding): YieldDensity | null {
  const { provenBakes, loggedFills: fills } = recipe;
  if (provenBakes.length === 0) return null;
  const before = known.get(provenBakes);
  if (before !== undefined && before.fills === fills) return before.density;
  const density = jointDensity(recipe);
  known.set(provenBakes, { fills, density });
  return density;
}

function jointDensity(recipe: Yielding): YieldDensity {
  const proven = recipe.provenBakes.map((bake) => ({ ...measured(bake), weight: 1 }));
  const provenGPerMl = quantiseRatio(leastSquares(proven));
  const fills = (recipe.loggedFills ?? []).map((fill) => measured(asBake(fill)));
  let weighed = fills.map((fill) => ({ ...fill, weight: 1 }));
  for (let round = 0; round < ROUNDS; round++) {
    const held = leastSquares([...proven, ...weighed]);
    weighed = fills.map((fill) => ({ ...fill, weight: weightOf(fill, held) }));
  }
  const gPerMl = quantiseRatio(leastSquares([...proven, ...weighed]));
  const bakes = proven.map((bake) => yielded(bake, gPerMl));
  const spread = bakes.length === 1 ? 0 : Math.max(...bakes.map(({ residual }) => Math.abs(residual)));
  const logged = weighed.map(({ weight, ...fill }) => ({ ...yielded(fill, gPerMl), weight }));
  return { gPerMl, bakes, spread, provenGPerMl, logged };
}

/** Batter for a finished volume in mL, g, unrounded but for the last thousandth. */
export function batterG(gPerMl: number, finishedVolumeMl: number): number {
  return quantiseG(gPerMl * finishedVolumeMl);
}
