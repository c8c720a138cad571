/** A line of a formula without its weight, from the ingredient on the shelf. */
import type { FormulaEntry } from './flavour.ts';
import type { Ingredient } from './ingredient.ts';

/** What a formula keeps of an ingredient. */
export function formulaEntry({ id, name, role, fine, eggPart, drinks }: Ingredient): FormulaEntry {
  return {
    ingredientId: id,
    name,
    role,
    fine,
    ...(eggPart === undefined ? {} : { eggPart }),
    ...(drinks === undefined ? {} : { drinks }),
  };
}
