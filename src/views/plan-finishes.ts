/** What goes between and around all cakes of a plan: each chosen finish for all of them together, and cake by cake. */
import { finishAmount } from '../compute/finishes/amount.ts';
import { type FinishAmount, type FinishUseName, finishingFor } from '../compute/finishes/finishing.ts';
import { useAmount } from '../compute/finishes/use-amount.ts';
import { weighedPartsG } from '../compute/finishes/weighed-parts.ts';
import type { Finish } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseG, quantiseRatio } from '../domain/quantise.ts';
import type { TinCount } from '../domain/tin.ts';
import { finishingWordsFor } from '../wording/finishing/index.ts';
import { planWordsFor } from '../wording/plan/index.ts';
import { totalFigure } from './figures.ts';
import { finishingColumns } from './finishing-columns.ts';
import { partAmount } from './part-amount.ts';
import type { PlanFinish } from './plan.types.ts';

export interface FinishChoice {
  finishId: string;
  use: FinishUseName;
}

export interface PlanFinishInput {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
  finishes: readonly Finish[];
  finishing: FinishingSettings;
}

/** A cake's own height and layers, where they are not the kitchen's usual ones. */
export interface CakeToFinish extends TinCount {
  settings: FinishingSettings;
}

/** The sum over cakes; packets are counted once for all of them. */
function summed(finish: Finish, use: FinishUseName, amounts: { amount: FinishAmount; count: number }[]) {
  const total = (of: (amount: FinishAmount) => number): number =>
    quantiseG(amounts.reduce((sum, { amount, count }) => sum + count * of(amount), 0));
  const makeG = total((amount) => amount.makeG);
  const packG = finish.packG;
  return {
    neededG: total((amount) => amount.neededG),
    makeG,
    buyG: packG === undefined ? null : quantiseG(Math.ceil(quantiseRatio(makeG / packG)) * packG),
    // The parts of what is made for all: rounded once, not cake by cake.
    partsG: finishAmount(finish, use, makeG / (1 + finish.lossShare) / finish.densityGPerMl).partsG,
  };
}

/** One finish in one use; null where no cake takes any of it. */
function planFinish(
  { finishId, use }: FinishChoice,
  cakes: readonly CakeToFinish[],
  input: PlanFinishInput,
): PlanFinish | null {
  const { kitchen, finishes, finishing } = input;
  const finish = finishes.find(({ id }) => id === finishId);
  if (finish === undefined) return null;
  const amounts = cakes.flatMap((cake) => {
    const finishing = finishingFor(cake.tin, [finish], cake.settings);
    const amount = finishing && useAmount(finishing, finish, use, cake.settings);
    return amount !== null && amount.makeG > 0 ? [{ amount, count: cake.count, name: cake.tin.name }] : [];
  });
  if (amounts.length === 0) return null;
  const { neededG, makeG, buyG, partsG } = summed(finish, use, amounts);
  const words = finishingWordsFor(kitchen.locale);
  const column = finishingColumns([finish], finishing, words).find((one) => one.use === use);
  const weighed = weighedPartsG(finish, partsG, kitchen.scale);
  const own = planWordsFor(kitchen.locale);
  return {
    id: `${finish.id}--${use}`,
    finish: { id: finish.id, name: finish.name },
    useText: column?.useText ?? '',
    needed: totalFigure(neededG),
    make: totalFigure(makeG),
    buy: buyG === null ? null : totalFigure(buyG),
    parts: finish.parts.map((part, at) => ({
      name: part.name,
      amount: partAmount(part, weighed[at] ?? 0, input),
    })),
    perCake:
      cakes.length < 2 && (cakes[0]?.count ?? 1) < 2
        ? []
        : amounts.map(({ amount, name }) => ({
            name,
            text: own.perCake(name, totalFigure(amount.makeG).text),
          })),
  };
}

/** All chosen finishes that come to something, in the order chosen. */
export function planFinishes(
  choices: readonly FinishChoice[],
  cakes: readonly CakeToFinish[],
  input: PlanFinishInput,
): PlanFinish[] {
  return choices.flatMap((choice) => planFinish(choice, cakes, input) ?? []);
}

/** Tins whose cakes cannot be finished by sum, in words. */
export function unfinishedTins(cakes: readonly CakeToFinish[], { kitchen }: PlanFinishInput): string[] {
  return cakes
    .filter((cake) => finishingFor(cake.tin, [], cake.settings) === null)
    .map(({ tin }) => planWordsFor(kitchen.locale).unfinished(tin.name));
}
