/** The page of one flavour: why it works, what it changes step by step, and the weights for each recipe. */
import type { Flavour } from '../domain/flavour.ts';
import { type FlavourWords, flavourWordsFor } from '../wording/flavour/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import type { FlavourView } from './flavour.types.ts';
import { type FlavourContent, flavourChange } from './flavour-change.ts';
import { flavourSteps } from './flavour-steps.ts';

export type { FlavourView } from './flavour.types.ts';
export type { FlavourContent } from './flavour-change.ts';

function alsoText({ suits }: Flavour, words: FlavourWords, and: string): string {
  if (suits.methods.length === 0) return '';
  return words.alsoMethods(
    listInWords(
      suits.methods.map((method) => words.methods[method]),
      and,
    ),
  );
}

/** One flavour of the content. */
function flavourView(flavour: Flavour, content: FlavourContent): FlavourView {
  const words = flavourWordsFor(content.kitchen.locale);
  const { and } = wordsFor(content.kitchen.locale);
  const recipes = content.recipes.filter(({ id }) => flavour.suits.recipeIds.includes(id));
  const changes = recipes.map((recipe) => flavourChange(flavour, recipe, content));
  return {
    id: flavour.id,
    name: flavour.name,
    summary: flavour.summary,
    why: flavour.why,
    steps: flavourSteps(flavour, content.ingredients, words),
    batterText: changes[0]?.growthText ?? (flavour.batter === 'kept' ? words.kept : ''),
    method: flavour.method ?? null,
    alsoText: alsoText(flavour, words, and),
    changes,
  };
}

/** Every flavour of the content, in the order of their ids. */
export function flavourViews(content: FlavourContent): FlavourView[] {
  return content.flavours.map((flavour) => flavourView(flavour, content));
}
