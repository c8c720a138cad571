/**
 * Which allergens are in it? The union over everything that goes in, from what was written down for each
 * ingredient. What nobody has filled in is listed apart: it is not 'none'. What is not in the list may still be
 * in the kitchen, so nothing here says that a cake is free from anything.
 * The fourteen allergens: Regulation (EU) 1169/2011, Annex II.
 */
import type { Allergen, Ingredient } from '../../domain/ingredient.ts';

export interface ContainedAllergen {
  allergen: Allergen;
  /** The name that must be spelt out: wheat, almonds; null where the allergen's own name is enough. */
  name: string | null;
  /** What brings it in. */
  ingredientIds: string[];
}

export interface AllergensFound {
  /** In the order in which they first go in. */
  contained: ContainedAllergen[];
  /** Ids of ingredients whose allergens nobody has filled in, or that are not on the shelf. */
  unknownIds: string[];
}

const sameAs = (one: ContainedAllergen) => (other: ContainedAllergen) =>
  other.allergen === one.allergen && other.name === one.name;

/** The allergens of some ingredients together; repeated ids count once. */
export function allergensOf(ingredientIds: readonly string[], shelf: readonly Ingredient[]): AllergensFound {
  const contained: ContainedAllergen[] = [];
  const unknownIds: string[] = [];
  for (const id of new Set(ingredientIds)) {
    const ingredient = shelf.find((candidate) => candidate.id === id);
    if (ingredient?.allergens === undefined) unknownIds.push(id);
    for (const allergen of ingredient?.allergens ?? []) {
      const found = { allergen, name: ingredient?.allergenNames?.[allergen] ?? null, ingredientIds: [id] };
      const known = contained.find(sameAs(found));
      if (known === undefined) contained.push(found);
      else known.ingredientIds.push(id);
    }
  }
  return { contained, unknownIds };
}

export interface AllergenChange {
  added: ContainedAllergen[];
  /** In the first and not in the second: the second is made without them, which does not mean free from them. */
  leftOut: ContainedAllergen[];
  /** Not known of the second: what they bring, nobody can say. */
  unknownIds: string[];
}

/** What changes from one list of ingredients to another. */
export function allergenChange(before: AllergensFound, after: AllergensFound): AllergenChange {
  return {
    added: after.contained.filter((one) => !before.contained.some(sameAs(one))),
    leftOut: before.contained.filter((one) => !after.contained.some(sameAs(one))),
    unknownIds: after.unknownIds,
  };
}
