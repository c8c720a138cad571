import * as z from 'zod';
import { ALLERGENS, ROLES } from '../../domain/ingredient.ts';
import { density, keys, line, mass, share } from './keys.ts';

const ingredient = keys({
  name: line('As it is printed', 'Butter'),
  role: z.enum(ROLES).meta({ description: 'What it does in a cake' }),
  part: z.enum(['egg', 'yolk', 'white']).optional().meta({ description: 'Which part of an egg it is' }),
  allergens: z
    .array(z.enum(ALLERGENS))
    .optional()
    .meta({ description: 'From the packet; [] means none, leaving it out means nobody has looked' }),
  allergen_names: z
    .partialRecord(z.enum(ALLERGENS), line('Name to spell out on a label', 'wheat'))
    .optional(),
  density: density('Weight of a millilitre', '1.03 g/ml').optional(),
  fine: z.boolean().optional().meta({ description: 'Weighed on the fine scale', default: false }),
  water: share('Share of water', '16 %').optional(),
  drinks: share('Share of its own weight in liquid that it takes up', '75 %').optional(),
  self_raising: keys({
    flour: line('The plain flour in it', 'plain-flour'),
    powder: line('The raising agent in it', 'baking-powder'),
    share: share('Powder against the plain flour', '5 %'),
  })
    .optional()
    .meta({ description: 'What a self-raising flour is made of, so that its powder can be changed' }),
  teaspoon: mass('Weight of a level 5 ml spoon', '4 g').optional(),
});

/** content/ingredients.yaml: ingredients by id. */
export const ingredientsSchema = z.record(z.string(), ingredient);
