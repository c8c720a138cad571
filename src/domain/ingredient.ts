import type { EggPart } from './egg.ts';
import type { Pack } from './pack.ts';

export type Role = 'flour' | 'sugar' | 'fat' | 'egg' | 'liquid' | 'raising' | 'flavouring' | 'inclusion';
export const ROLES: readonly Role[] = [
  'flour',
  'sugar',
  'fat',
  'egg',
  'liquid',
  'raising',
  'flavouring',
  'inclusion',
];

/** The fourteen of Regulation (EU) 1169/2011 Annex II, by the words this project writes them in. */
export type Allergen =
  | 'gluten'
  | 'crustaceans'
  | 'eggs'
  | 'fish'
  | 'peanuts'
  | 'soya'
  | 'milk'
  | 'nuts'
  | 'celery'
  | 'mustard'
  | 'sesame'
  | 'sulphites'
  | 'lupin'
  | 'molluscs';
export const ALLERGENS: readonly Allergen[] = [
  'gluten',
  'crustaceans',
  'eggs',
  'fish',
  'peanuts',
  'soya',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
];

/** One part of an ingredient that was itself made of several: the strawberries in a jam. */
export interface CompoundPart {
  name: string;
  /** Share of the whole ingredient, 0 to 1. */
  share: number;
  /** Undefined: not said for this part; the whole ingredient's list counts. */
  allergens?: Allergen[];
  allergenNames?: Partial<Record<Allergen, string>>;
}

/** Per 100 g of the ingredient as it goes into the bowl, g. */
export interface Nutrients {
  fatG: number;
  saturatesG: number;
  /** Available, without fibre; polyols included. */
  carbohydrateG: number;
  sugarsG: number;
  polyolsG: number;
  fibreG: number;
  proteinG: number;
  saltG: number;
  alcoholG: number;
}

/** Something on the shelf. */
export interface Ingredient {
  id: string;
  name: string;
  /** What a label calls it when that differs; caster and icing sugar are both 'sugar'. */
  labelName?: string;
  role: Role;
  /** Present for whole eggs, yolks and whites: counted, not weighed. */
  eggPart?: EggPart;
  /** Undefined means nobody has filled it in, which is not the same as 'contains none'. */
  allergens?: Allergen[];
  /** Names that must be spelt out on a label: wheat, almonds. */
  allergenNames?: Partial<Record<Allergen, string>>;
  densityGPerMl?: number;
  /** Weighed on the fine scale: raising agents, salt, spices. */
  fine: boolean;
  /** It lifts as soon as it is wet, as bicarbonate does: the batter may not stand. */
  actsAtOnce?: boolean;
  /** Share of water, 0 to 1, where the formula's balance needs it. */
  waterShare?: number;
  /** Share of its own weight in liquid that it takes up: cocoa 0.75 to 1. */
  drinks?: number;
  /** What self-raising flour is made of, so that its powder can be changed. */
  selfRaising?: { flourId: string; powderId: string; powderShare: number };
  /** Grams in a level 5 mL spoon, printed beside amounts under 5 g. */
  teaspoonG?: number;
  /** What it is made of, where it was made of several: opened in brackets on a label. */
  compound?: CompoundPart[];
  nutrients?: Nutrients;
  /** Sizes it is bought in, smallest first. */
  packs?: Pack[];
}
