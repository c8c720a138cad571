import type { HouseStyle } from './house-style.ts';
import type { Ingredient } from './ingredient.ts';
import type { Kitchen } from './kitchen.ts';
import type { Outline } from './outline.ts';
import type { Recipe } from './recipe.ts';

/** A free page of the baker's own. */
export interface FreePage {
  id: string;
  title: string;
  order: number;
  markdown: string;
}

/** Everything read from the content folder, validated. Lists are sorted by id unless the file gives an order. */
export interface Content {
  kitchen: Kitchen;
  ingredients: Ingredient[];
  outlines: { id: string; outline: Outline }[];
  recipes: Recipe[];
  houseStyle: HouseStyle;
  pages: FreePage[];
}
