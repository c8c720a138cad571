/**
 * One egg, two eggs, three eggs: what does each make, and which tins does it fill? Every rung is the formula
 * scaled to a whole number of eggs, rounded like any mix.
 */
import { quantiseG } from '../../domain/quantise.ts';
import { type CountedEgg, mostServedBy, planEggs } from '../eggs/whole-eggs.ts';
import { bestFills, type Fill } from '../fills/best-fills.ts';
import { batterForEggsG, type FillInput, shelfFor } from '../fills/fillable.ts';
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

/** How many rungs are worth printing: to a dozen, or to all of the largest tin, but never past every tin owned. */
export function ladderHeight(input: LadderInput): number {
  const shelf = shelfFor(input);
  const inEggs = (batterG: number): number =>
    Math.ceil(planEggs(input.formula, batterG / formulaG(input.formula), input.kitchen.egg)?.exact ?? 0);
  const largest = Math.max(0, ...shelf.map((tin) => inEggs(tin.batterG * tin.owned)));
  const all = inEggs(shelf.reduce((sum, tin) => sum + tin.batterG * tin.owned, 0));
  return Math.min(MOST_RUNGS, all, Math.max(USUAL_RUNGS, largest));
}

function rung(input: LadderInput, eggs: number, shelf: ReturnType<typeof shelfFor>): LadderStep[] {
  const exactG = batterForEggsG(input, eggs);
  if (exactG === null) return [];
  const scale = exactG / formulaG(input.formula);
  const plan = planEggs(input.formula, scale, { ...input.kitchen.egg, otherwise: 'step-up' });
  const lines = bowlLines(input.formula, scale, plan, input.kitchen);
  const batterG = sumG(lines.map((line) => line.grams));
  const stretch = mostServedBy(eggs, input.kitchen.egg) / eggs;
  const mostG = quantiseG(Math.max(batterG, Math.floor(exactG * stretch * 1000) / 1000));
  const { fills } = bestFills(shelf, { batterG, mostG, best: 3 });
  return [{ eggs, parts: plan?.parts ?? [], lines, batterG, fills }];
}

/** Rungs for 1, 2, 3 … eggs; null for a formula without eggs. */
export function eggLadder(input: LadderInput): LadderStep[] | null {
  if (planEggs(input.formula, 1, input.kitchen.egg) === null) return null;
  const shelf = shelfFor(input);
  const rungs = input.upTo ?? ladderHeight(input);
  return Array.from({ length: rungs }, (_, index) => rung(input, index + 1, shelf)).flat();
}
