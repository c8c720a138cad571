/** What `new` wants to know of a kitchen, and what it takes for granted when nobody answers. */
import type { Locale, PaperName } from '../../domain/kitchen.ts';

/** A recipe that a kitchen can begin with: a file below templates/starter/LOCALE/recipes. */
export type FirstRecipe = 'butter-sponge' | 'cocoa-oil-cake' | 'fruit-cake';

export interface OwnedTin {
  id: string;
  owned: number;
}

export interface KitchenAnswers {
  name: string;
  place: string;
  locale: Locale;
  paper: PaperName[];
  /** As kitchen.yaml has it: 'UK medium'. */
  eggSize: string;
  /** What the mixer's bowl holds to its rim, as the baker wrote it: '4.8 l'. */
  bowl: string;
  /** Ids of USUAL_TINS. */
  tins: OwnedTin[];
  recipe: FirstRecipe;
}

const BY_LOCALE: Record<Locale, Pick<KitchenAnswers, 'paper' | 'eggSize' | 'bowl'>> = {
  'en-GB': { paper: ['A4'], eggSize: 'UK medium', bowl: '4.8 l' },
  'en-US': { paper: ['Letter'], eggSize: 'US large', bowl: '5 us qt' },
};

/** The answers of somebody who only presses Enter. */
export function usualAnswers(locale: Locale = 'en-GB'): KitchenAnswers {
  return {
    name: 'My kitchen',
    place: 'My town',
    locale,
    ...BY_LOCALE[locale],
    tins: [
      { id: 'round-6', owned: 2 },
      { id: 'round-8', owned: 2 },
      { id: 'square-8', owned: 1 },
    ],
    recipe: 'butter-sponge',
  };
}
