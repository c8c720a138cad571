import * as z from 'zod';
import { BAKE_CLASSES, BAKE_STARTS, MIXING_METHODS } from '../../domain/recipe.ts';
import { day, days, density, keys, length, line, mass, share, spec, temperature } from './keys.ts';

const provenBake = keys({
  tins: spec('Which tins were filled'),
  finished_height: length('How high the cakes came out', '65 mm'),
  batter: mass("What went into them, or 'whole formula'", '1300 g', 'whole formula')
    .meta({ pattern: '^(whole formula|.*\\d.*(g|kg|oz|lb))$' })
    .optional(),
  date: day('When').optional(),
  note: line('Anything worth keeping', 'Slight dome').optional(),
});

/** The keys at the top of content/recipes/ID.md. */
export const recipeSchema = keys({
  name: line('As it is printed', 'Equal-weights vanilla sponge'),
  summary: line('One sentence', 'The sponge everything else is measured against.'),
  method: z.enum(MIXING_METHODS).meta({ description: 'How the batter is mixed' }),
  egg_size: line('The size that counts of eggs in this file mean', 'UK medium').optional(),
  formula: z.record(z.string(), z.union([z.string(), z.number()])).meta({
    description: 'Ingredient ids and amounts, in the order they go into the bowl; eggs as a count',
    examples: [{ butter: '250 g', egg: 5 }],
  }),
  finished_height: length('Height of the baked cake', '65 mm'),
  allowed_rise: length('How far it may stand above the rim', '5 mm').optional(),
  level: length('Cut off the top of every bake to make it level', '3 mm').optional(),
  raw_density: density('Your own weighing of the raw batter', '0.85 g/ml').optional(),
  bake_class: z.enum(BAKE_CLASSES).optional().meta({
    description: 'How it takes the heat, where the method does not tell: a dense butter cake is creamed too',
  }),
  bake_start: z.enum(BAKE_STARTS).optional().meta({
    description:
      'Where bake times start before anything is logged: the kind of cake, or what the batter is made of',
    default: 'class',
  }),
  which_oven: line('The oven it is baked in, by its id; the main one when left out', 'small-oven').optional(),
  batter_temperature: temperature(
    'Temperature of this batter when it goes in, where it is not the kitchen’s',
    '8C',
  ).optional(),
  oven: temperature('Oven temperature', '160C', '140C fan', '350F', 'gas 4'),
  layers: z.int().min(1).max(12).optional().meta({ description: 'Layers it is cut into', default: 2 }),
  baking_loss: share('What the batter loses in the oven, by your own weighing', '10 %').optional(),
  keeps: days('How long the plain cake keeps in a closed box', '4 days').optional(),
  suits: line('What it is good for', 'Stacking and carving').optional(),
  proven_bakes: z
    .array(provenBake)
    .optional()
    .meta({ description: 'Bakes of it that came out right: all amounts follow from these' }),
});
