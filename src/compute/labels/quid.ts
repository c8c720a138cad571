/**
 * How much of what the name promises is in it? Mixing-bowl weight over finished weight where water is lost in
 * baking; past 100 % it is told as grams that went into 100 g. Regulation (EU) No 1169/2011 Article 22 and Annex
 * VIII, Commission Notice 2017/C 393/05 (title seen, rule from memory). Flavourings in small amounts are exempt.
 */
import type { Ingredient } from '../../domain/ingredient.ts';
import { quantiseG, quantiseRatio } from '../../domain/quantise.ts';
import { singular } from './allergen-words.ts';
import type { Bowl } from './bowl.ts';
import { labelNameOf } from './ingredient-list.ts';
import type { LabelEntry, LooseQuid } from './label.types.ts';
import type { LabelInput } from './label-input.ts';
import { promisedIn } from './left-out.ts';

/** Words of a name that say how a thing is, not what it is. */
const NOT_NAMING_TEXT =
  'and the with for from made without cake sponge layer tier cut little equal weight ' +
  'dark light white whole plain fine strong hot cold golden ground chopped grated bought ripe fresh dried ' +
  'powder extract flour sugar syrup egg free range one two all';
const NOT_NAMING: ReadonlySet<string> = new Set(NOT_NAMING_TEXT.split(' '));

const wordsOf = (text: string): string[] =>
  text
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .map(singular)
    .filter((word) => word.length > 2 && !NOT_NAMING.has(word));

const shares = (words: ReadonlySet<string>, text: string): boolean =>
  wordsOf(text).some((word) => words.has(word));

/** What the words of the food's name point at; flavourings weighed on the fine scale are left out. */
function namedIn(input: LabelInput, bowl: Bowl): string[] {
  const { foodName, finishes, settings } = input;
  const promised = wordsOf(promisedIn(foodName));
  const kinds = Object.keys(settings.named ?? {}).filter((word) => promised.includes(singular(word)));
  const words = new Set(promised.filter((word) => !kinds.some((kind) => singular(kind) === word)));
  const used = new Map(bowl.lines.map(({ ingredient }) => [ingredient.id, ingredient]));
  const bulky = [...used.values()].filter(({ fine, role }) => !fine && role !== 'raising');
  const things = [
    ...bulky.map((one) => ({ id: one.id, name: labelNameOf(one) })),
    ...finishes
      .filter(({ finish }) => finish.kind !== 'syrup')
      .map(({ finish }) => ({ id: finish.id, name: finish.name })),
  ].filter(({ name }) => shares(words, name));
  // A part of a bought ingredient counts where nothing whole answers to the word.
  const answered = new Set(things.flatMap(({ name }) => wordsOf(name)));
  const open = new Set([...words].filter((word) => !answered.has(word)));
  const parts = bulky.flatMap(({ compound = [] }) =>
    compound.map(({ name }) => name).filter((name) => shares(open, name)),
  );
  return [...new Set([...kinds, ...things.map(({ id }) => id), ...parts])];
}

const sameName = (one: string, other: string): boolean => singular(one) === singular(other);

/** Of a kind of ingredients, all together, g; null for what is no kind. */
function kindG({ settings }: LabelInput, bowl: Bowl, name: string): number | null {
  const ids = settings.named?.[name];
  if (ids === undefined) return null;
  return bowl.lines.reduce(
    (sum, { ingredient, grams }) => sum + (ids.includes(ingredient.id) ? grams : 0),
    0,
  );
}

function partG(bowl: Bowl, name: string): number {
  const inIngredient = ({ compound = [] }: Ingredient): number =>
    compound.filter((part) => sameName(part.name, name)).reduce((sum, { share }) => sum + share, 0);
  return bowl.lines.reduce((sum, { ingredient, grams }) => sum + grams * inIngredient(ingredient), 0);
}

/** 'Dark ganache, 2 to 1' is dark ganache to whoever eats it. */
export const shortName = (name: string): string => name.split(',')[0] ?? name;

export interface Quids {
  entries: LabelEntry[];
  loose: LooseQuid[];
}

/** The list with its percentages, and those that no entry carries. */
export function withQuids(entries: readonly LabelEntry[], input: LabelInput, bowl: Bowl): Quids {
  const named = input.named ?? namedIn(input, bowl);
  const single = named.filter((one) => kindG(input, bowl, one) === null);
  const isNamed = ({ name, ingredientIds }: LabelEntry): boolean =>
    single.some((one) => ingredientIds.includes(one) || sameName(one, name));
  const carried = entries.map((entry) =>
    isNamed(entry) ? { ...entry, quid: quantiseRatio(entry.bowlG / bowl.finishedG) } : entry,
  );
  const per100G = (grams: number): number => quantiseG((grams / bowl.finishedG) * 100);
  const loose = named.flatMap((name): LooseQuid[] => {
    const kind = kindG(input, bowl, name);
    if (kind !== null) return kind > 0 ? [{ name, per100G: per100G(kind) }] : [];
    const uses = input.finishes.filter(({ finish }) => finish.id === name);
    const first = uses[0];
    // A finish that is one bought thing stands in the list with its percentage already.
    if (first !== undefined && entries.some((entry) => sameName(entry.name, first.finish.name))) return [];
    if (first !== undefined)
      return [
        {
          name: shortName(first.finish.name),
          per100G: per100G(uses.reduce((sum, { onCakeG }) => sum + onCakeG, 0)),
        },
      ];
    if (entries.some((entry) => entry.ingredientIds.includes(name) || sameName(name, entry.name))) return [];
    const grams = partG(bowl, name);
    return grams > 0 ? [{ name, per100G: per100G(grams) }] : [];
  });
  return { entries: carried, loose };
}
