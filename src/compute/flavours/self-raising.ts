/** How self-raising flours on the shelf are taken apart, so that their powder can be changed. */
import type { Adjustment } from '../../domain/flavour.ts';
import { formulaEntry } from '../../domain/formula-entry.ts';
import type { Ingredient } from '../../domain/ingredient.ts';

/** The split of one flour; null when it does not say what it is made of, or that is not on the shelf. */
export function selfRaisingSplit(flour: Ingredient, shelf: readonly Ingredient[]): Adjustment | null {
  if (flour.selfRaising === undefined) return null;
  const { flourId, powderId, powderShare } = flour.selfRaising;
  const plain = shelf.find((ingredient) => ingredient.id === flourId);
  const powder = shelf.find((ingredient) => ingredient.id === powderId);
  if (plain === undefined || powder === undefined) return null;
  return {
    kind: 'split-self-raising',
    ingredientId: flour.id,
    flour: formulaEntry(plain),
    powder: formulaEntry(powder),
    powderShare,
  };
}

/** The splits of every self-raising flour on a shelf. */
export function selfRaisingSplits(shelf: readonly Ingredient[]): Adjustment[] {
  return shelf.map((flour) => selfRaisingSplit(flour, shelf)).filter((split) => split !== null);
}
