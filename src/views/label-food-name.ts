/** What the food on a label is called: the recipe, its flavours, and what goes with it. */
import { shortName } from '../compute/labels/quid.ts';
import type { Finish } from '../domain/finish.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { labelWordsFor } from '../wording/label/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';

interface NamedFood {
  recipe: { name: string };
  flavours: readonly { name: string }[];
  finishes: readonly { finish: Pick<Finish, 'name'> }[];
}

/** 'Equal-weights vanilla sponge, Orange with raspberry jam and vanilla buttercream'. */
export function labelFoodName(
  { recipe, flavours, finishes }: NamedFood,
  { locale }: Pick<Kitchen, 'locale'>,
): string {
  const words = labelWordsFor(locale);
  const food = words.flavoured(
    recipe.name,
    flavours.map(({ name }) => name),
  );
  const names = [...new Set(finishes.map(({ finish }) => shortName(finish.name).toLowerCase()))];
  return names.length === 0 ? food : words.foodWith(food, listInWords(names, wordsFor(locale).and));
}
