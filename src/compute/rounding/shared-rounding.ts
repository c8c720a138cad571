/**
 * Rounds amounts that share one scale step so that their total stays nearest to what it was: each goes to the
 * step below or above, never more than 2 % from itself, and equal amounts stay equal. Of the choices that
 * keep the total best, the one with the smallest squared moves is taken (largest remainder first).
 */
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { MOST_MOVED } from './scale-step.ts';

/** Equal amounts, rounded as one. */
interface Unit {
  exactG: number;
  size: number;
  steps: number[];
}

interface Choice {
  steps: number;
  cost: number;
  picks: number[];
}

const SLACK = 1e-9;

/** Amounts alike to a microgram are equal: a milligram would tie pinches that are not, and move one past 2 %. */
const amountKey = quantiseRatio;

function unitsOf(amountsG: readonly number[], stepG: number): Map<number, Unit> {
  const units = new Map<number, Unit>();
  for (const amountG of amountsG) {
    const key = amountKey(amountG);
    const unit = units.get(key);
    if (unit) unit.size += 1;
    else units.set(key, { exactG: amountG, size: 1, steps: stepsFor(amountG, stepG) });
  }
  return units;
}

/** The whole numbers of steps an amount may become: below and above, within 2 %; else the nearest. */
function stepsFor(amountG: number, stepG: number): number[] {
  const inSteps = amountG / stepG;
  const nearest = Math.round(inSteps);
  const both = [Math.floor(inSteps + SLACK), Math.ceil(inSteps - SLACK)];
  const allowed = both.filter((n) => Math.abs(n - inSteps) <= MOST_MOVED * inSteps * (1 + SLACK));
  return allowed.length === 0 ? [nearest] : [...new Set(allowed)];
}

function extended(choices: Map<number, Choice>, unit: Unit, stepG: number): Map<number, Choice> {
  const next = new Map<number, Choice>();
  for (const choice of choices.values()) {
    for (const pick of unit.steps) {
      const steps = choice.steps + pick * unit.size;
      const move = pick - unit.exactG / stepG;
      const cost = choice.cost + unit.size * move * move;
      const known = next.get(steps);
      if (!known || cost < known.cost - SLACK)
        next.set(steps, { steps, cost, picks: [...choice.picks, pick] });
    }
  }
  return next;
}

function best(choices: Iterable<Choice>, exactSteps: number): Choice {
  let found: Choice | null = null;
  for (const choice of choices) {
    if (found === null) found = choice;
    const gain = Math.abs(found.steps - exactSteps) - Math.abs(choice.steps - exactSteps);
    if (gain > SLACK || (Math.abs(gain) <= SLACK && choice.cost < found.cost - SLACK)) found = choice;
  }
  return found ?? { steps: 0, cost: 0, picks: [] };
}

/**
 * Amounts in g rounded to `stepG`, same order; the total is the nearest that the rules allow.
 * @example roundTogether([250.2, 250.2, 250.2], 5) // [250, 250, 250]
 * @example roundTogether([202, 202.5, 148], 5) // [200, 205, 150]
 */
export function roundTogether(amountsG: readonly number[], stepG: number): number[] {
  const units = unitsOf(amountsG, stepG);
  let choices = new Map<number, Choice>([[0, { steps: 0, cost: 0, picks: [] }]]);
  for (const unit of units.values()) choices = extended(choices, unit, stepG);
  const exactSteps = amountsG.reduce((sum, amountG) => sum + amountG, 0) / stepG;
  const { picks } = best(choices.values(), exactSteps);
  const roundedG = new Map(
    [...units.keys()].map((key, index) => [key, quantiseG((picks[index] ?? 0) * stepG)]),
  );
  return amountsG.map((amountG) => roundedG.get(amountKey(amountG)) ?? 0);
}
