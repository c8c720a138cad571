/** A flavour's adjustments as a cook would say them. */
import type { Adjustment, Basis, Flavour } from '../domain/flavour.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { FlavourWords } from '../wording/flavour/index.ts';
import { formatGrams } from '../wording/mass.ts';
import { formatNumber } from '../wording/number.ts';

const G_PER_KG = 1000;

const percent = (share: number): string => `${formatNumber(share * 100, 1)} %`;

function basisName(basis: Basis, ingredients: readonly Ingredient[], words: FlavourWords): string {
  if ('role' in basis) return words.roles[basis.role];
  if ('whole' in basis) return words.batter;
  const found = ingredients.find(({ id }) => id === basis.ingredientId);
  return (found?.name ?? basis.ingredientId).toLowerCase();
}

function step(adjustment: Adjustment, ingredients: readonly Ingredient[], words: FlavourWords): string {
  if (adjustment.kind === 'split-self-raising') {
    const { ingredientId, flour, powder, powderShare } = adjustment;
    const flourName = basisName({ ingredientId }, ingredients, words);
    return words.split(flourName, flour.name.toLowerCase(), powder.name.toLowerCase(), percent(powderShare));
  }
  const of = basisName(adjustment.basis, ingredients, words);
  if (adjustment.kind === 'multiply') return words.multiply(percent(adjustment.by), of);
  const entry = adjustment.entry.name.toLowerCase();
  if (adjustment.kind === 'add') {
    return 'whole' in adjustment.basis
      ? words.addPerKg(formatGrams(adjustment.share * G_PER_KG), entry)
      : words.add(percent(adjustment.share), of, entry);
  }
  const portion = percent(adjustment.portion);
  const same = adjustment.portion === 1;
  return adjustment.share === 1
    ? words.replaceAll(of, entry, portion, same)
    : words.replace(percent(adjustment.share), of, entry, portion, same);
}

/** A sentence for each adjustment, in order. */
export function flavourSteps(
  { adjustments }: Flavour,
  ingredients: readonly Ingredient[],
  words: FlavourWords,
): string[] {
  return adjustments.map((adjustment) => step(adjustment, ingredients, words));
}
