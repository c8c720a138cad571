/**
 * What is dangerous here, each thing once? The chart's cautions without those that the method gives in its own
 * words, and the method without its list of allergens, because the front lists those of the very mix, flavours too.
 */
import type { RecipeCardWords } from '../wording/recipe-card/index.ts';
import type { Caution } from './figure.ts';
import type { MethodPiece } from './method-text.types.ts';

const isAllergen = (code: string): boolean => code.startsWith('allergens') || code === 'made-without';

const plainText = (piece: MethodPiece): string =>
  piece.kind === 'heading' ? piece.text : piece.spans.map(({ text }) => text).join('');

export interface CardCautions {
  allergens: Caution[];
  others: Caution[];
}

/** The chart's cautions, sorted for a card; how to tell that a cake is done stands elsewhere. */
export function cardCautions(
  cautions: readonly Caution[],
  method: readonly MethodPiece[],
  { alreadySaid }: RecipeCardWords,
): CardCautions {
  const own = method.filter((piece) => piece.kind === 'paragraph' && piece.caution).map(plainText);
  const said = ({ code }: Caution): boolean => {
    const patterns = alreadySaid[code];
    return patterns !== undefined && own.some((text) => patterns.every((pattern) => pattern.test(text)));
  };
  return {
    allergens: cautions.filter(({ code }) => isAllergen(code)),
    others: cautions.filter((one) => one.code !== 'ready' && !isAllergen(one.code) && !said(one)),
  };
}

/** 'Allergens: contains wheat and eggs. Wash the bowl.' keeps only what the front does not say. */
export function withoutAllergenList(
  method: readonly MethodPiece[],
  { listsAllergens }: RecipeCardWords,
): MethodPiece[] {
  return method.flatMap((piece): MethodPiece[] => {
    if (piece.kind !== 'paragraph' || !piece.caution) return [piece];
    const [word, next, ...rest] = piece.spans;
    if (!word?.text.startsWith('Allergens') || !next || !listsAllergens.test(next.text)) return [piece];
    const text = next.text.replace(listsAllergens, '');
    const kept = [...(text === '' ? [] : [{ ...next, text }]), ...rest];
    return kept.length === 0 ? [] : [{ ...piece, spans: [{ ...word, text: `${word.text} ` }, ...kept] }];
  });
}
