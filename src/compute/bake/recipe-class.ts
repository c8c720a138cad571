/**
 * How long does this kind of cake take against a plain sponge, before anything is logged? Time factors by
 * class, each uncertain by some 30 % (house rules). Rich fruit also grows with size: at 140 °C, 3 in deep,
 * practice says 2–2½, 3–3½, 4–5 and 5½–7 h for 6, 8, 10 and 12 in (common practice, no source), which is the
 * series × (across ÷ 8 in) to the power of about 1; the power too stays uncertain until bakes are logged.
 */
import type { BakeClass, MixingMethod } from '../../domain/recipe.ts';

export type ClassId = BakeClass;

export interface RecipeClass {
  id: ClassId;
  /** Time against a plain sponge in an 8 in tin. */
  timeFactor: number;
  /** Power of (across ÷ 8 in), and its standard deviation. */
  sizePower: number;
  sizePowerSd: number;
}

const plain = (id: ClassId, timeFactor: number): RecipeClass => ({
  id,
  timeFactor,
  sizePower: 0,
  sizePowerSd: 0,
});

export const RECIPE_CLASSES: Record<ClassId, RecipeClass> = {
  sponge: plain('sponge', 1),
  'very light': plain('very light', 0.79),
  'dense butter': plain('dense butter', 1.45),
  'dense chocolate': plain('dense chocolate', 1.65),
  'rich fruit': { id: 'rich fruit', timeFactor: 3, sizePower: 1, sizePowerSd: 0.25 },
};

const CLASS_OF: Record<MixingMethod, ClassId> = {
  creamed: 'sponge',
  'all-in-one': 'sponge',
  oil: 'sponge',
  whisked: 'very light',
  angel: 'very light',
  melted: 'dense chocolate',
  'rich fruit': 'rich fruit',
};

/** The class that a mixing method usually belongs to; a dense butter cake must be named as such. */
export function classOfMethod(method: MixingMethod): RecipeClass {
  return RECIPE_CLASSES[CLASS_OF[method]];
}
