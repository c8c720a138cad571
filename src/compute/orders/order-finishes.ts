/** Each finish of an order made in one go: the sum over its tiers, weighed to the scale's step once. */
import { PART_SHARE } from '../../domain/egg.ts';
import type { Finish } from '../../domain/finish.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { weighedPartsG } from '../finishes/weighed-parts.ts';
import type { FinishLine, PlannedFinish, TierFinish } from './planned-order.types.ts';

const sum = (values: readonly number[]): number => quantiseG(values.reduce((all, one) => all + one, 0));

/** Whole eggs, yolks or whites to crack for a part weighed in g. */
function eggsFor(part: Finish['parts'][number], grams: number, kitchen: Kitchen): number | null {
  if (part.eggPart === undefined) return null;
  return Math.ceil(quantiseRatio(grams / (kitchen.egg.shelledG * PART_SHARE[part.eggPart])));
}

/** So much in each colour, in the order in which they go on; empty where nothing is tinted. */
function coloursOf(uses: readonly TierFinish[]): PlannedFinish['colours'] {
  if (uses.every(({ colour }) => colour === undefined)) return [];
  return [...new Set(uses.map(({ colour = null }) => colour))].map((colour) => {
    const own = uses.filter((one) => (one.colour ?? null) === colour);
    return {
      colour,
      neededG: sum(own.map(({ amount }) => amount.neededG)),
      makeG: sum(own.map(({ amount }) => amount.makeG)),
    };
  });
}

function made(finish: Finish, uses: readonly TierFinish[], kitchen: Kitchen): PlannedFinish {
  const partsG = finish.parts.map((_, at) => sum(uses.map(({ amount }) => amount.partsG[at] ?? 0)));
  const grams = weighedPartsG(finish, partsG, kitchen.scale);
  const lines: FinishLine[] = finish.parts.map((part, at) => ({
    ingredientId: part.ingredientId,
    name: part.name,
    grams: grams[at] ?? 0,
    eggs: eggsFor(part, grams[at] ?? 0, kitchen),
  }));
  return {
    finish,
    neededG: sum(uses.map(({ amount }) => amount.neededG)),
    makeG: sum(uses.map(({ amount }) => amount.makeG)),
    colours: coloursOf(uses),
    lines,
  };
}

/** The finishes of some tiers, in the order in which they first go on. */
export function finishesOf(uses: readonly TierFinish[], kitchen: Kitchen): PlannedFinish[] {
  const ids = [...new Set(uses.map(({ finish }) => finish.id))];
  return ids.flatMap((id) => {
    const own = uses.filter(({ finish }) => finish.id === id);
    const [first] = own;
    return first === undefined ? [] : [made(first.finish, own, kitchen)];
  });
}
