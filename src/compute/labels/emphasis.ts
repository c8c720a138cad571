/**
 * Which letters of a text name an allergen? Whole words only: 'whole milk' tells of milk, 'buttermilk' does not and
 * gets '(milk)' after it. Regulation (EU) No 1169/2011 Article 21(1)(b): emphasised by a typeset that clearly sets
 * it apart (seen).
 */
import { tellingWords } from './allergen-words.ts';
import type { TextPiece, ToldAllergen } from './label.types.ts';

interface Found {
  from: number;
  to: number;
  told: ToldAllergen;
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Plural endings of the word belong to it; letters before or after do not. */
function foundIn(text: string, told: ToldAllergen): Found[] {
  return tellingWords(told.allergen, told.name).flatMap((word) => {
    const pattern = new RegExp(`(?<![\\p{L}\\p{N}])${escaped(word)}(?:s|es)?(?![\\p{L}\\p{N}])`, 'giu');
    return [...text.matchAll(pattern)].map((match) => ({
      from: match.index,
      to: match.index + match[0].length,
      told,
    }));
  });
}

export interface Emphasised {
  pieces: TextPiece[];
  /** Those of the allergens that the text names by itself. */
  named: ToldAllergen[];
}

/** The text in pieces, its allergens apart. */
export function emphasised(text: string, allergens: readonly ToldAllergen[]): Emphasised {
  const found = allergens
    .flatMap((told) => foundIn(text, told))
    .sort((a, b) => a.from - b.from || b.to - a.to);
  const pieces: TextPiece[] = [];
  let at = 0;
  for (const { from, to, told } of found) {
    if (from < at) continue;
    if (from > at) pieces.push({ text: text.slice(at, from), allergen: null });
    pieces.push({ text: text.slice(from, to), allergen: told.allergen });
    at = to;
  }
  if (at < text.length) pieces.push({ text: text.slice(at), allergen: null });
  return { pieces, named: allergens.filter((told) => found.some((one) => one.told === told)) };
}

/** 'wheat, milk' as pieces: how allergens follow a name that does not tell of them. */
export function allergenPieces(allergens: readonly ToldAllergen[]): TextPiece[] {
  return allergens.flatMap(({ allergen, name }, index): TextPiece[] => [
    ...(index === 0 ? [] : [{ text: ', ', allergen: null }]),
    { text: name, allergen },
  ]);
}
