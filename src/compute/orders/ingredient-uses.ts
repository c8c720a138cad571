/** How much of every ingredient do these mixes and finishes take? As weighed, and eggs by count. */
import { quantiseG } from '../../domain/quantise.ts';
import type { IngredientUse, PlannedFinish, PlannedMix } from './planned-order.types.ts';

function mixUses({ mix }: Pick<PlannedMix, 'mix'>): IngredientUse[] {
  return mix.lines.map(({ ingredientId, grams, eggPart }) => ({
    ingredientId,
    grams,
    eggs:
      eggPart === undefined
        ? null
        : (mix.eggs?.parts.find((part) => part.ingredientId === ingredientId)?.whole ?? 0),
  }));
}

/** Uses of one ingredient added up, by id. */
export function summedUses(uses: readonly IngredientUse[]): IngredientUse[] {
  const all = new Map<string, IngredientUse>();
  for (const { ingredientId, grams, eggs } of uses) {
    const before = all.get(ingredientId);
    const counted = before?.eggs === null || before === undefined ? eggs : before.eggs + (eggs ?? 0);
    all.set(ingredientId, {
      ingredientId,
      grams: quantiseG((before?.grams ?? 0) + grams),
      eggs: counted,
    });
  }
  return [...all.values()].sort((a, b) => (a.ingredientId < b.ingredientId ? -1 : 1));
}

/** Everything that goes into bowls and pans, by ingredient. */
export function usesOf(
  mixes: readonly Pick<PlannedMix, 'mix'>[],
  finishes: readonly PlannedFinish[],
): IngredientUse[] {
  return summedUses([
    ...mixes.flatMap(mixUses),
    ...finishes.flatMap(({ lines }) =>
      lines.map(({ ingredientId, grams, eggs }) => ({ ingredientId, grams, eggs })),
    ),
  ]);
}
