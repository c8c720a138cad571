/** What goes between and around all cakes of a plan, as they are baked: for all of them together, and cake by cake. */
import { finishingFor } from '../compute/finishes/finishing.ts';
import { weighedPartsG } from '../compute/finishes/weighed-parts.ts';
import type { TierFinish } from '../compute/orders/planned-order.types.ts';
import { finishedTier } from '../compute/orders/tier-finishes.ts';
import type { Finish, FinishUse } from '../domain/finish.ts';
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
  use: keyof FinishUse;
}

export interface PlanFinishInput {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
  finishes: readonly Finish[];
  finishing: FinishingSettings;
}

/** A cake of the plan as it is baked and cut into layers. */
export interface CakeToFinish extends TinCount {
  heightMm: number;
  layers: number;
}

/** What goes on the cakes of one tin: what is chosen, and the bead that a soft filling needs. */
export interface FinishedCakes {
  cake: CakeToFinish;
  finishes: TierFinish[];
}

/** As an order finishes a tier, so that its sheet says the same. */
export function finishedCakes(
  choices: readonly FinishChoice[],
  cakes: readonly CakeToFinish[],
  { finishes, finishing }: Pick<PlanFinishInput, 'finishes' | 'finishing'>,
): FinishedCakes[] {
  const known = choices.filter(({ finishId }) => finishes.some(({ id }) => id === finishId));
  return cakes.map((cake) => ({
    cake,
    finishes: finishedTier({ finishes: known }, cake, finishes, finishing).finishes,
  }));
}

const sum = (values: readonly number[]): number => quantiseG(values.reduce((all, one) => all + one, 0));

/** One finish in one use, over all cakes that take any of it. */
function planFinish(
  { finish, use }: TierFinish,
  cakes: readonly FinishedCakes[],
  input: PlanFinishInput,
): PlanFinish {
  const { kitchen, finishing } = input;
  const on = cakes.flatMap(({ cake, finishes }) =>
    finishes
      .filter((one) => one.finish.id === finish.id && one.use === use)
      .map(({ amount }) => ({ amount, cake })),
  );
  const makeG = sum(on.map(({ amount }) => amount.makeG));
  const partsG = finish.parts.map((_, at) => sum(on.map(({ amount }) => amount.partsG[at] ?? 0)));
  const weighed = weighedPartsG(finish, partsG, kitchen.scale);
  const { packG } = finish;
  const words = finishingWordsFor(kitchen.locale);
  const column = finishingColumns([finish], finishing, words).find((one) => one.use === use);
  const own = planWordsFor(kitchen.locale);
  const onlyOne = cakes.length < 2 && (cakes[0]?.cake.count ?? 1) < 2;
  return {
    id: `${finish.id}--${use}`,
    finish: { id: finish.id, name: finish.name },
    useText: column?.useText ?? '',
    needed: totalFigure(sum(on.map(({ amount }) => amount.neededG))),
    make: totalFigure(makeG),
    // Packets are counted once for all cakes.
    buy: packG === undefined ? null : totalFigure(quantiseG(Math.ceil(quantiseRatio(makeG / packG)) * packG)),
    parts: finish.parts.map((part, at) => ({
      name: part.name,
      amount: partAmount(part, weighed[at] ?? 0, input),
    })),
    perCake: onlyOne
      ? []
      : on.map(({ amount, cake: { tin, count } }) => ({
          name: tin.name,
          text: own.perCake(tin.name, totalFigure(quantiseG(amount.makeG / count)).text),
        })),
  };
}

/** All finishes that come to something, in the order in which they go on. */
export function planFinishes(cakes: readonly FinishedCakes[], input: PlanFinishInput): PlanFinish[] {
  const uses = new Map<string, TierFinish>();
  for (const one of cakes.flatMap(({ finishes }) => finishes)) {
    const key = `${one.finish.id}--${one.use}`;
    if (one.amount.makeG > 0 && !uses.has(key)) uses.set(key, one);
  }
  return [...uses.values()].map((one) => planFinish(one, cakes, input));
}

/** Tins whose cakes cannot be finished by sum, in words. */
export function unfinishedTins(
  cakes: readonly FinishedCakes[],
  { kitchen, finishing }: PlanFinishInput,
): string[] {
  return cakes
    .filter(({ cake }) => finishingFor(cake.tin, [], finishing) === null)
    .map(({ cake: { tin } }) => planWordsFor(kitchen.locale).unfinished(tin.name));
}
