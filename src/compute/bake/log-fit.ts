/**
 * The bake log of one recipe in one oven, turned into beliefs. Bakes with a core are a group of their own: they
 * start from what the others taught, loosened by the core's own scatter, and teach only the core's windows. A
 * row that cannot be reckoned (no height to go by, core in a tiny tin) is reported, and hides no other. What
 * another oven taught may be given as the start, loosened by the scatter between ovens. How regularly this baker calls
 * it done is learned too: 5 min to start with, worth eight bakes, then what the log's own bakes scatter by.
 */
import type { BakeLogRow } from '../../domain/bake-log.ts';
import type { Problem } from '../../domain/problem.ts';
import { quantiseMin, quantiseRatio } from '../../domain/quantise.ts';
import { type BakeCase, neutralBake } from './bake-case.ts';
import type { BakeConstants } from './constants.ts';
import type { RecipeClass } from './recipe-class.ts';
import {
  evidenceOf,
  expectedMinutes,
  type FactorBelief,
  type FactorFit,
  fitFactor,
  type Observation,
  priorBelief,
} from './time-factor.ts';
import { windowSdMin } from './window.ts';

export interface LoggedBake {
  row: BakeLogRow;
  observation: Observation;
}

/** What the log says, with and without a core. */
export interface BakeGroup {
  belief: FactorBelief;
  /** Most probable time factor against a plain sponge in an 8 in tin, and how uncertain its logarithm is. */
  timeFactor: number;
  logSd: number;
  /** Logged bakes behind it. */
  bakes: number;
  /** Those bakes, in the log's order. */
  logged: LoggedBake[];
  /** What was believed before them. */
  prior: FactorBelief;
}

/** A row that disagrees with the rest by more than two standard deviations. */
export interface OddBake {
  row: BakeLogRow;
  expectedMin: number;
  /** Logged less expected, min. */
  lateByMin: number;
  /** How much the fit heeded it, 0 to 1. */
  weight: number;
}

export interface LogFit {
  plain: BakeGroup;
  withCore: BakeGroup;
  /** Scatter of the done test as the log has it, min: windows of bakes to come are made with it. */
  doneSdMin: number;
  odd: OddBake[];
  problems: Problem[];
}

/** What a log is fitted to. */
export interface LoggedRecipe {
  recipeClass: RecipeClass;
  /** Finished height of a row that has none of its own, mm. */
  heightMm: number;
  /** Believed before these rows; that of the class when left out. */
  prior?: FactorBelief;
}

const ODD_FROM_SD = 2;
/** Steam holds the crumb at its boiling point: a probe this far past done cannot tell how long ago it was. */
const PROBE_PAST_DONE_C = 2;

/** Where an oven with no bakes of its own starts: at what another taught, less surely. */
export const priorFromElsewhere = ({ plain }: LogFit, { ovenLogSd }: BakeConstants): FactorBelief =>
  loosened(plain.belief, ovenLogSd);

/** Fits the log's rows of one recipe in one oven. */
export function fitLog(rows: readonly BakeLogRow[], recipe: LoggedRecipe, constants: BakeConstants): LogFit {
  const problems: Problem[] = [];
  const logged = rows.flatMap((row) => {
    const bake = neutralBake(caseOfRow(row, recipe.heightMm, constants), constants);
    if (bake.ok) return [{ row, observation: { ...bake.value, minutes: row.minutes } }];
    problems.push(...bake.problems.map((problem) => atRow(problem, row)));
    return [];
  });
  const plain = logged.filter(({ row }) => row.core === 'none');
  const cored = logged.filter(({ row }) => row.core !== 'none');
  const prior = recipe.prior ?? priorBelief(recipe.recipeClass, constants);
  const plainFit = fitGroup(plain, prior, constants);
  const corePrior = loosened(beliefOf(plainFit), constants.coreLogSd);
  const coreFit = fitGroup(cored, corePrior, constants);
  const groups = { plain: bakeGroup(plainFit, plain, prior), withCore: bakeGroup(coreFit, cored, corePrior) };
  return {
    ...groups,
    doneSdMin: quantiseMin(doneSd([groups.plain, groups.withCore], constants)),
    odd: [...oddBakes(plain, plainFit, constants), ...oddBakes(cored, coreFit, constants)],
    problems,
  };
}

/** The bake that a row describes; a probe's reading takes the place of 'done' while it still tells something. */
export function caseOfRow(row: BakeLogRow, heightMm: number, constants: BakeConstants): BakeCase {
  const bake = {
    tin: row.tin,
    heightMm: row.finishedHeightMm ?? heightMm,
    ovenC: row.ovenC,
    core: row.core,
    band: row.band,
    ...(row.batterC === undefined ? {} : { batterC: row.batterC }),
  };
  const tells = row.probeC !== undefined && row.probeC <= constants.centreC + PROBE_PAST_DONE_C;
  return tells && row.probeC !== undefined ? { ...bake, doneC: row.probeC } : bake;
}

function fitGroup(logged: LoggedBake[], prior: FactorBelief, constants: BakeConstants): FactorFit {
  const seen = logged.map(({ observation }) => observation);
  return fitFactor(prior, seen, constants);
}

/** The usual scatter and the log's, each by how many bakes it is worth; wild rows count for little. */
function doneSd(groups: readonly BakeGroup[], constants: BakeConstants): number {
  const seen = groups.flatMap(({ belief, logged }) =>
    logged.map(({ observation }) => evidenceOf(belief, observation, constants)),
  );
  const off = seen.reduce((sum, { off, weight }) => sum + weight * off, constants.doneSdBakes);
  const worth = seen.reduce((sum, { weight }) => sum + weight, constants.doneSdBakes);
  return constants.doneSdMin * Math.sqrt(off / worth);
}

function bakeGroup(fit: FactorFit, logged: LoggedBake[], prior: FactorBelief): BakeGroup {
  const timeFactor = quantiseRatio(Math.exp(fit.lnFactor));
  const logSd = quantiseRatio(Math.sqrt(fit.varLnFactor));
  return { belief: beliefOf(fit), timeFactor, logSd, bakes: logged.length, logged, prior };
}

function beliefOf({ weights: _, ...belief }: FactorFit): FactorBelief {
  return belief;
}

function loosened(belief: FactorBelief, logSd: number): FactorBelief {
  return { ...belief, varLnFactor: belief.varLnFactor + logSd * logSd };
}

function oddBakes(logged: LoggedBake[], fit: FactorFit, constants: BakeConstants): OddBake[] {
  return logged.flatMap(({ row, observation }, index) => {
    const expected = expectedMinutes(fit, observation, constants.lagMin);
    const late = observation.minutes - expected;
    if (quantiseRatio(Math.abs(late) / windowSdMin(fit, observation, constants)) <= ODD_FROM_SD) return [];
    const weight = quantiseRatio(fit.weights[index] ?? 0);
    return [{ row, expectedMin: quantiseMin(expected), lateByMin: quantiseMin(late), weight }];
  });
}

function atRow(problem: Problem, row: BakeLogRow): Problem {
  const place = row.line === undefined ? {} : { line: row.line };
  return { ...problem, ...place, message: `Bake of ${row.date} in ${row.tin.name}: ${problem.message}` };
}
