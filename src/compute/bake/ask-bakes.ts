/**
 * Which three bakes would teach most? For every three of the candidates: the expected information, ½·ln of how
 * much smaller the joint uncertainty of the factor and of its drift with size becomes. The drift is allowed for
 * here only (sd 0.15 per e-fold of width, house rule): with it the ends of the range tell most, which is what
 * a careful baker would do. Smallest first, then largest, then the one between.
 */
import { quantiseRatio } from '../../domain/quantise.ts';
import type { BakeConstants } from './constants.ts';
import { expectedMinutes, type FactorBelief, type Observation, scatterVariance } from './time-factor.ts';
import { windowSdMin } from './window.ts';

export interface CandidateBake {
  /** Index or id that the caller knows the bake by. */
  id: string;
  bake: Omit<Observation, 'minutes'>;
}

export interface AskedBakes {
  ids: string[];
  /** Expected information, nats. */
  nats: number;
  /** Mean width of all candidates' windows afterwards against now, 0 to 1. */
  narrowedTo: number;
}

const DRIFT_SD = 0.15;
const ASKED = 3;

/** The three (or fewer) candidates that would narrow the windows most. */
export function bakesToAskFor(
  belief: FactorBelief,
  candidates: readonly CandidateBake[],
  constants: BakeConstants,
): AskedBakes {
  const drifting = { ...belief, varSizePower: Math.max(belief.varSizePower, DRIFT_SD * DRIFT_SD) };
  let best: { chosen: CandidateBake[]; after: FactorBelief; nats: number } = {
    chosen: [],
    after: drifting,
    nats: 0,
  };
  for (const chosen of subsets(candidates, Math.min(ASKED, candidates.length))) {
    const after = beliefAfter(drifting, chosen, constants);
    const nats = quantiseRatio(Math.log(determinant(drifting) / determinant(after)) / 2);
    if (nats > best.nats) best = { chosen, after, nats };
  }
  const width = (held: FactorBelief): number =>
    candidates.reduce((sum, { bake }) => sum + windowSdMin(held, bake, constants), 0);
  return {
    ids: smallestLargestBetween(best.chosen).map(({ id }) => id),
    nats: best.nats,
    narrowedTo: candidates.length === 0 ? 1 : quantiseRatio(width(best.after) / width(drifting)),
  };
}

/** The covariance expected after some bakes; the means stay, since nobody knows yet what will be logged. */
function beliefAfter(belief: FactorBelief, bakes: CandidateBake[], constants: BakeConstants): FactorBelief {
  const det = determinant(belief);
  let aa = belief.varSizePower / det;
  let ap = -belief.covariance / det;
  let pp = belief.varLnFactor / det;
  for (const { bake } of bakes) {
    const minutes = expectedMinutes(belief, bake, constants.lagMin);
    const slope = minutes - constants.lagMin;
    const information = (slope * slope) / scatterVariance(minutes, constants);
    aa += information;
    ap += information * bake.lnSize;
    pp += information * bake.lnSize * bake.lnSize;
  }
  const after = aa * pp - ap * ap;
  return { ...belief, varLnFactor: pp / after, covariance: -ap / after, varSizePower: aa / after };
}

function determinant({ varLnFactor, varSizePower, covariance }: FactorBelief): number {
  return varLnFactor * varSizePower - covariance * covariance;
}

/** All subsets of a size, in the order of the list. */
function* subsets<T>(list: readonly T[], size: number, from = 0): Generator<T[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let index = from; index <= list.length - size; index++) {
    const first = list[index];
    if (first === undefined) return;
    for (const rest of subsets(list, size - 1, index + 1)) yield [first, ...rest];
  }
}

function smallestLargestBetween(chosen: CandidateBake[]): CandidateBake[] {
  const bySize = [...chosen].sort((a, b) => quantiseRatio(a.bake.lnSize) - quantiseRatio(b.bake.lnSize));
  const smallest = bySize.slice(0, 1);
  const largest = bySize.length > 1 ? bySize.slice(-1) : [];
  return [...smallest, ...largest, ...bySize.slice(1, -1)];
}
