/** The words of a flavour's page. Shares, weights and names come as text. A missing key does not compile. */
import type { Role } from '../../domain/ingredient.ts';
import type { MixingMethod } from '../../domain/recipe.ts';

export interface FlavourWords {
  roles: Record<Role, string>;
  batter: string;
  methods: Record<MixingMethod, string>;
  /** One adjustment, as a cook would say it; `same` when as much goes in as comes out. */
  replace: (share: string, of: string, entry: string, portion: string, same: boolean) => string;
  replaceAll: (of: string, entry: string, portion: string, same: boolean) => string;
  add: (share: string, of: string, entry: string) => string;
  addPerKg: (grams: string, entry: string) => string;
  multiply: (by: string, of: string) => string;
  split: (selfRaising: string, flour: string, powder: string, share: string) => string;
  kept: string;
  grows: (growth: string) => string;
  alsoMethods: (list: string) => string;
  eggsChange: (before: string, after: string) => string;
  eggsSame: (count: string) => string;
  noEggs: string;
  wetChange: (before: string, after: string) => string;
  added: (names: string) => string;
  leftOut: (names: string) => string;
  noAllergenChange: string;
  title: (flavour: string, recipe: string) => string;
  listTitle: string;
  listAbout: string;
}
