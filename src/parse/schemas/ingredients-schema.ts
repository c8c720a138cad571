import * as z from 'zod';
import { ALLERGENS, ROLES } from '../../domain/ingredient.ts';
import { density, keys, line, mass, money, share } from './keys.ts';

const amount = (description: string, example: string) => mass(description, example).optional();

const nutrients = keys({
  fat: amount('Fat', '82.2 g'),
  saturates: amount('Saturates', '52.1 g'),
  carbohydrate: amount('Available carbohydrate, without fibre', '0.6 g'),
  sugars: amount('Sugars', '0.6 g'),
  polyols: amount('Polyols, within the carbohydrate', '0 g'),
  fibre: amount('Fibre', '0 g'),
  protein: amount('Protein', '0.6 g'),
  salt: amount('Salt', '1.2 g'),
  alcohol: amount('Alcohol', '0 g'),
});

const compoundPart = z.union([
  z.string(),
  keys({
    share: share('Share of the whole', '45 %'),
    allergens: z.array(z.enum(ALLERGENS)).optional().meta({ description: 'From the packet; [] means none' }),
    allergen_names: z
      .partialRecord(z.enum(ALLERGENS), line('Name to spell out', 'wheat'))
      .optional()
      .meta({ description: 'Which cereal, which nut' }),
  }),
]);

const ingredient = keys({
  name: line('As it is printed', 'Butter'),
  label: line('What a label calls it, when that differs', 'sugar').optional(),
  role: z.enum(ROLES).meta({ description: 'What it does in a cake' }),
  part: z.enum(['egg', 'yolk', 'white']).optional().meta({ description: 'Which part of an egg it is' }),
  allergens: z
    .array(z.enum(ALLERGENS))
    .optional()
    .meta({ description: 'From the packet; [] means none, leaving it out means nobody has looked' }),
  allergen_names: z
    .partialRecord(z.enum(ALLERGENS), line('Name to spell out on a label', 'wheat'))
    .optional()
    .meta({ description: 'Which cereal, which nut: a label names it' }),
  density: density('Weight of a millilitre', '1.03 g/ml').optional(),
  fine: z.boolean().optional().meta({ description: 'Weighed on the fine scale', default: false }),
  acts_at_once: z.boolean().optional().meta({
    description:
      'It lifts as soon as it is wet, as bicarbonate does: a batter with it may not stand for long',
    default: false,
  }),
  water: share('Share of water', '16 %').optional(),
  drinks: share('Share of its own weight in liquid that it takes up', '75 %').optional(),
  self_raising: keys({
    flour: line('The plain flour in it', 'plain-flour'),
    powder: line('The raising agent in it', 'baking-powder'),
    share: share('Powder against the plain flour', '5 %'),
  })
    .optional()
    .meta({ description: 'What a self-raising flour is made of, so that its powder can be changed' }),
  compound: z
    .record(z.string(), compoundPart)
    .optional()
    .meta({ description: 'What it is made of, with shares; opened in brackets on a label' }),
  nutrients: keys({ per_100_g: nutrients.meta({ description: 'In 100 g; what is left out is not known' }) })
    .optional()
    .meta({ description: 'From the packet or a food table; energy is worked out from these' }),
  packs: z
    .array(
      keys({
        size: z.union([z.string(), z.number()]).meta({
          description: 'What is in it; whole eggs by count',
          examples: ['1 kg', 12],
        }),
        price: money('What it costs', '1.20'),
      }),
    )
    .min(1)
    .optional()
    .meta({ description: 'Sizes it is bought in' }),
  teaspoon: mass('Weight of a level 5 ml spoon', '4 g').optional(),
});

/** content/ingredients.yaml: ingredients by id. */
export const ingredientsSchema = z.record(z.string(), ingredient);
