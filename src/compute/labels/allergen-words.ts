/**
 * By which words an allergen shows in an ingredient's name, and which names a label must spell out: the cereal, the
 * nut, and in the US the fish and the shellfish. Cereals and nuts: Regulation (EU) No 1169/2011 Annex II (seen).
 * US: FALCPA 2004 (from memory), where of the cereals only wheat counts.
 */
import type { Allergen, Ingredient } from '../../domain/ingredient.ts';
import type { LabelRules } from '../../domain/label-settings.ts';

/** Spelt and khorasan are kinds of wheat, and Annex II names them so. */
export const CEREALS: readonly string[] = ['wheat', 'rye', 'barley', 'oats', 'spelt', 'khorasan wheat'];
const WHEATS: readonly string[] = ['wheat', 'spelt', 'khorasan wheat'];
export const NUTS: readonly string[] = [
  'almonds',
  'hazelnuts',
  'walnuts',
  'cashews',
  'pecans',
  'Brazil nuts',
  'pistachios',
  'macadamia nuts',
  'Queensland nuts',
];

/** What a label calls an allergen that needs no further name; cereals and nuts never appear by these. */
const WORD: Record<Allergen, string> = {
  gluten: 'gluten',
  crustaceans: 'crustaceans',
  eggs: 'egg',
  fish: 'fish',
  peanuts: 'peanuts',
  soya: 'soya',
  milk: 'milk',
  nuts: 'nuts',
  celery: 'celery',
  mustard: 'mustard',
  sesame: 'sesame',
  sulphites: 'sulphites',
  lupin: 'lupin',
  molluscs: 'molluscs',
};

const WORD_US: Partial<Record<Allergen, string>> = {
  soya: 'soy',
  crustaceans: 'crustacean shellfish',
  sulphites: 'sulfites',
};

/** Other words that tell of the same allergen. */
const ALSO: Partial<Record<Allergen, readonly string[]>> = {
  soya: ['soya', 'soy', 'soybean'],
  sulphites: ['sulphite', 'sulphur dioxide', 'metabisulphite', 'sulfite', 'sulfur dioxide'],
  crustaceans: ['crustacean', 'prawn', 'crab'],
  molluscs: ['mollusc'],
};

/** Whether the law wants the kind by name. */
export function mustBeNamed(allergen: Allergen, rules: LabelRules): boolean {
  if (allergen === 'gluten' || allergen === 'nuts') return true;
  return rules === 'US' && (allergen === 'fish' || allergen === 'crustaceans');
}

/** 'wheat, barley and oats' as three names. */
export const namesIn = (written: string): string[] =>
  written
    .split(/,|;|\band\b|&/)
    .map((name) => name.trim())
    .filter((name) => name !== '');

/** A word without its plural: 'almonds' is told by 'almond' too. */
export const singular = (word: string): string =>
  word
    .toLowerCase()
    .replace(/(ss)$|ies$/, (end) => (end === 'ies' ? 'y' : end))
    .replace(/([^s])s$/, '$1');

const same = (one: string, other: string): boolean => singular(one) === singular(other);

/** Names of the law's list that may stand for this allergen; empty where any name does. */
export function lawfulNames(allergen: Allergen, rules: LabelRules): readonly string[] {
  if (allergen === 'gluten') return CEREALS;
  return allergen === 'nuts' && rules !== 'US' ? NUTS : [];
}

/** Names given that the law's list does not have: 'coconut' among nuts. */
export function unlawfulNames(allergen: Allergen, written: string, rules: LabelRules): string[] {
  const lawful = lawfulNames(allergen, rules);
  return lawful.length === 0
    ? []
    : namesIn(written).filter((name) => !lawful.some((known) => same(known, name)));
}

/** The names under which an ingredient's allergen must show, by these rules; none where the rules do not know it. */
export function shownNames(
  allergen: Allergen,
  names: Ingredient['allergenNames'],
  rules: LabelRules,
): string[] {
  const written = names?.[allergen];
  if (allergen === 'gluten' && rules === 'US')
    return namesIn(written ?? '').filter((name) => WHEATS.some((wheat) => same(wheat, name)));
  if (written !== undefined && mustBeNamed(allergen, rules)) return namesIn(written);
  return [(rules === 'US' ? WORD_US[allergen] : undefined) ?? WORD[allergen]];
}

/** Words that, found in a text, already tell of this allergen under this name. */
export function tellingWords(allergen: Allergen, name: string): string[] {
  const also = allergen === 'gluten' || allergen === 'nuts' ? [] : (ALSO[allergen] ?? []);
  return [...new Set([name, ...also].map(singular))];
}
