/** Every kind of content file that an editor can check as one types. */
import type * as z from 'zod';
import { finishSchema } from './finish-schema.ts';
import { flavourSchema } from './flavour-schema.ts';
import { houseStyleSchema } from './house-style-schema.ts';
import { ingredientsSchema } from './ingredients-schema.ts';
import { kitchenSchema } from './kitchen-schema.ts';
import { orderSchema } from './order-schema.ts';
import { pageSchema } from './page-schema.ts';
import { recipeSchema } from './recipe-schema.ts';

export const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  kitchen: kitchenSchema,
  ingredients: ingredientsSchema,
  recipe: recipeSchema,
  flavour: flavourSchema,
  finish: finishSchema,
  'house-style': houseStyleSchema,
  order: orderSchema,
  page: pageSchema,
};
