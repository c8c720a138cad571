import * as z from 'zod';
import { MIXING_METHODS } from '../../domain/recipe.ts';
import { keys, line, mass, paragraph, share } from './keys.ts';

const basis = (): z.ZodString =>
  line('A role (flour, sugar, fat, egg, liquid, raising …), batter, or an ingredient', 'flour');

const replace = keys({
  share: share('How much of it comes out', '15 %'),
  of: basis(),
  with: line('The ingredient that goes in instead', 'cocoa'),
  portion: share('What goes in for what comes out, by weight; 100 % when left out', '100 %').optional(),
});

const add = keys({
  ingredient: line('What is added', 'milk'),
  amount: share('Weight against what stands after of', '100 %').optional(),
  of: basis().optional(),
  per_kg: mass('Weight for each kilogram of batter', '30 g').optional(),
});

const multiply = keys({
  of: basis(),
  by: share('Its new weight against its old', '90 %'),
});

/** Exactly one of these; the parser says so in words. */
const adjustment = keys({
  replace: replace.optional().meta({ description: 'One ingredient for some of another' }),
  add: add.optional().meta({ description: 'Something that was not there' }),
  multiply: multiply.optional().meta({ description: 'More or less of what is there' }),
  split_self_raising: line(
    'A self-raising flour, made into plain flour and powder',
    'self-raising-flour',
  ).optional(),
});

/** content/flavours/ID.yaml */
export const flavourSchema = keys({
  name: line('As it is printed', 'Orange'),
  summary: line('One sentence', 'Zest in the batter, juice for the milk.'),
  suits: keys({
    recipes: z
      .array(line('A recipe', 'vanilla'))
      .min(1)
      .optional()
      .meta({ description: 'These recipes; any of the methods when left out' }),
    methods: z
      .array(z.enum(MIXING_METHODS))
      .min(1)
      .optional()
      .meta({ description: 'All recipes mixed in one of these ways' }),
  }).meta({ description: 'What it is made for' }),
  why: paragraph('Why the formula still balances', 'Juice takes the place of milk, weight for weight.'),
  batter: z.enum(['kept', 'grows']).optional().meta({
    description: 'kept: the whole is brought back to its weight. grows: what is added comes on top',
    default: 'kept',
  }),
  adjustments: z.array(adjustment).min(1).meta({ description: 'In order' }),
  method: paragraph('Words for the card', 'Rub the zest into the sugar.').optional(),
});
