/**
 * Everything of one cake as it was weighed in, and what is left of it: the batter loses its steam in the oven, a
 * finish what boils off in the pan. Added water counts by what is left of it: Regulation (EU) No 1169/2011 Annex
 * VII Part A point 1 (from memory). The loss of a part is taken from that part's own water, so that the water of a
 * syrup brushed on later is never called gone.
 */
import type { Ingredient } from '../../domain/ingredient.ts';
import type { LabelFinish, LabelInput, LabelSponge, WeighedIn } from './label-input.ts';

export interface BowlLine extends WeighedIn {
  ingredient: Ingredient;
  /** What decides its place in the list, g. */
  rankG: number;
}

export interface Bowl {
  lines: BowlLine[];
  bowlG: number;
  finishedG: number;
  /** Added water of which nothing is left, as it was weighed in, g. */
  goneG: number;
}

/** Water, and what is as good as water: coffee from the pot, rose water. Fruit juice and milk are not added water. */
const AS_GOOD_AS_WATER = 0.97;
const waterOf = ({ ingredient, grams }: { ingredient: Ingredient; grams: number }): number => {
  const share = ingredient.waterShare ?? 0;
  return share >= AS_GOOD_AS_WATER ? grams * share : 0;
};

const sumG = (lines: readonly WeighedIn[]): number => lines.reduce((sum, { grams }) => sum + grams, 0);

/** What went into the pan for a finish: its parts share what is on the cake and what boiled off. */
export function finishWeighedIn({ finish, onCakeG }: LabelFinish): WeighedIn[] {
  const all = finish.parts.reduce((sum, { parts }) => sum + parts, 0);
  const inG = onCakeG / (1 - finish.cookingLossShare);
  return finish.parts.map(({ ingredientId, parts }) => ({ ingredientId, grams: (inG * parts) / all }));
}

interface Part {
  lines: readonly WeighedIn[];
  lossG: number;
}

const spongePart = ({ formula, waterLossShare }: LabelSponge): Part => ({
  lines: formula,
  lossG: sumG(formula) * waterLossShare,
});

function finishPart(finish: LabelFinish): Part {
  const lines = finishWeighedIn(finish);
  return { lines, lossG: sumG(lines) - finish.onCakeG };
}

function ranked({ lines, lossG }: Part, shelf: ReadonlyMap<string, Ingredient>): BowlLine[] {
  const known = lines.flatMap((line) => {
    const ingredient = shelf.get(line.ingredientId);
    return ingredient === undefined || line.grams === 0 ? [] : [{ ...line, ingredient }];
  });
  const waterG = known.reduce((sum, line) => sum + waterOf(line), 0);
  const goneShare = waterG > 0 ? Math.min(1, lossG / waterG) : 0;
  return known.map((line) => ({ ...line, rankG: line.grams - waterOf(line) * goneShare }));
}

/** The mixing bowl of a label, in the order things went in. Ids must be on the shelf: see label-problems.ts. */
export function labelBowl({ sponges, finishes, ingredients }: LabelInput): Bowl {
  const shelf = new Map(ingredients.map((one) => [one.id, one]));
  const parts = [...sponges.map(spongePart), ...finishes.map(finishPart)];
  const lines = parts.flatMap((part) => ranked(part, shelf));
  const bowlG = sumG(lines);
  return {
    lines,
    bowlG,
    finishedG: bowlG - parts.reduce((sum, { lossG }) => sum + lossG, 0),
    goneG: sumG(lines.filter(({ rankG }) => rankG === 0)),
  };
}
