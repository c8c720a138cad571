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
  teaspoon: mass('Weight of a level 5 ml spoon', '4 g').optional(),
});

/** content/ingredients.yaml: ingredients by id. */
export const ingredientsSchema = z.record(z.string(), ingredient);
