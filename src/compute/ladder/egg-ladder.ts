/**
 * One egg, two eggs, three eggs: what does each make, and which tins does it fill? Every rung is the formula
 * scaled to a whole number of eggs, rounded like any mix.
 */
import { type CountedEgg, planEggs, scaleForEggs } from '../eggs/whole-eggs.ts';
import { type Fill, fillsFrom, type OpenShelf, openShelf } from '../fills/best-fills.ts';
import { type FillInput, mostFilledG, shelfFor } from '../fills/fillable.ts';
import type { MixKitchen, MixLine } from '../mixes/mix.types.ts';
import { bowlLines, formulaG, sumG } from '../mixes/mix-load.ts';

export interface LadderStep {
  eggs: number;
  parts: CountedEgg[];
  lines: MixLine[];
  /** Σ lines. */
  batterG: number;
  /** Best first. */
  fills: Fill[];
}

export interface LadderInput extends FillInput {
  kitchen: FillInput['kitchen'] & MixKitchen;
  /** Highest rung; default from `ladderHeight`. */
  upTo?: number;
}

const USUAL_RUNGS = 12;
const MOST_RUNGS = 24;
/** A printed ladder shows three fills; on a very large shelf those of many tins are not worth the search. */
const LADDER_CAP = 5000;
const PRINTED_FILLS = 3;

/** How many rungs are worth printing: to a dozen, or to all of the largest tin, but never past every tin owned. */
export function ladderHeight(input: LadderInput): number {
  const shelf = shelfFor(input);
  const inEggs = (batterG: number): number =>
    planEggs(input.formula, batterG / formulaG(input.formula), input.kitchen.egg)?.whole ?? 0;
  const largest = Math.max(0, ...shelf.map((tin) => inEggs(tin.batterG * tin.owned)));
  const all = inEggs(shelf.reduce((sum, tin) => sum + tin.batterG * tin.owned, 0));
  return Math.min(MOST_RUNGS, all, Math.max(USUAL_RUNGS, largest));
}

function rung(input: LadderInput, eggs: number, shelf: OpenShelf, best: number): LadderStep[] {
  const scale = scaleForEggs(input.formula, eggs, input.kitchen.egg);
  if (scale === null) return [];
  const plan = planEggs(input.formula, scale, { ...input.kitchen.egg, otherwise: 'step-up' });
  const lines = bowlLines(input.formula, scale, plan, input.kitchen);
  const batterG = sumG(lines.map((line) => line.grams));
  const mostG = mostFilledG(input, eggs, batterG);
  const { fills } = fillsFrom(shelf, { batterG, mostG, best });
  return [{ eggs, parts: plan?.parts ?? [], lines, batterG, fills }];
}

/** One rung alone, with as many fills as asked for: 'I have 7 eggs'. Null for a formula without eggs. */
export function eggStep(input: LadderInput, eggs: number, best: number): LadderStep | null {
  const scale = scaleForEggs(input.formula, eggs + 1, input.kitchen.egg);
  if (scale === null) return null;
  const shelf = openShelf(shelfFor(input), formulaG(input.formula) * scale, LADDER_CAP);
  return rung(input, eggs, shelf, best)[0] ?? null;
}

/** Rungs for 1, 2, 3 … eggs; null for a formula without eggs. */
export function eggLadder(input: LadderInput): LadderStep[] | null {
  const rungs = input.upTo ?? ladderHeight(input);
  const top = scaleForEggs(input.formula, rungs + 1, input.kitchen.egg);
  if (top === null) return null;
  const shelf = openShelf(shelfFor(input), formulaG(input.formula) * top, LADDER_CAP);
  return Array.from({ length: rungs }, (_, index) => rung(input, index + 1, shelf, PRINTED_FILLS)).flat();
}
