import * as z from 'zod';
import { MOST_BAKES } from '../../compute/orders/tier-bakes.ts';
import { BOX_SIZES, PLACE_KINDS, SMALL_KINDS, USES } from '../../domain/order.ts';
import { smallBakeSchema } from './bun-tin-schema.ts';
import { dummySchema } from './dummy-schema.ts';
import { day, keys, length, line, mass, moment, money, paragraph, share } from './keys.ts';
import { orderQuoteSchema } from './quote-schema.ts';

const yesNo = (description: string) => z.enum(['yes', 'no']).optional().meta({ description, default: 'no' });

const flavours = z
  .array(line('A flavour', 'orange'))
  .optional()
  .meta({ description: 'In order; none when left out' });

const finishes = z
  .array(
    keys({
      finish: line('A finish', 'vanilla-buttercream'),
      use: z.enum(USES).meta({ description: 'Where it goes' }),
      colour: line('What it is tinted; as it is made when left out', 'sage').optional(),
    }),
  )
  .optional()
  .meta({ description: 'From the inside out' });

const cake = {
  tin: line('A tin of this kitchen', 'round-8'),
  recipe: line('A recipe', 'vanilla-equal-weights'),
  flavours,
  count: z.int().min(1).max(50).optional().meta({ description: 'How many such cakes', default: 1 }),
  finished_height: length('Baked height; the recipe’s when left out', '65 mm').optional(),
  layers: z
    .int()
    .min(1)
    .max(12)
    .optional()
    .meta({ description: 'Layers of sponge; the recipe’s when left out' }),
  bakes: z.int().min(1).max(MOST_BAKES).optional().meta({
    description: 'Shallower bakes of the tin that make one cake; as few as it asks for when left out',
  }),
  finishes,
};

// Which of the two it is, a cake or a dummy, and what each then needs is judged where it is read.
const tier = keys({
  ...cake,
  tin: cake.tin.optional(),
  recipe: cake.recipe.optional(),
  dummy: dummySchema.optional().meta({ description: 'A tier of polystyrene in place of cake' }),
});

const smallCakes = keys({
  kind: z.enum(SMALL_KINDS).meta({ description: 'What they are called' }),
  pieces: z
    .int()
    .min(1)
    .max(2000)
    .meta({ description: 'How many', examples: [24] }),
  tin: line('A bun tin, or a small tin of this kitchen', 'muffin-12'),
  recipe: line('A recipe', 'vanilla-equal-weights'),
  flavours,
  case: mass('Batter in one case; by the volume of the cup when left out', '45 g').optional(),
  finished_height: length('Baked height; level with the rim when left out', '35 mm').optional(),
  bake: smallBakeSchema.optional().meta({ description: 'By your own watch; the tin’s when left out' }),
  finishes: z
    .array(keys({ finish: line('A finish', 'vanilla-buttercream'), each: mass('On each piece', '30 g') }))
    .optional()
    .meta({ description: 'In the order in which they go on' }),
  box: z
    .literal([...BOX_SIZES])
    .optional()
    .meta({ description: 'How many to a box', default: 12 }),
});

const extra = keys({
  name: line('What it is', 'Stand hire'),
  count: z.int().min(1).max(1000).optional().meta({ description: 'How many', default: 1 }),
  each: money('Price of one', '12.00'),
  inedible: yesNo('Must come off before the cake is eaten'),
  comes_back: yesNo('Hired out, and comes back: named so on sheets and quote'),
  back_by: day('When what is hired is to be back').optional(),
  delivery: yesNo('It pays for the drive'),
  vat: share('On this line; as on cake when left out', '20 %').optional(),
});

const decision = keys({
  question: line('What is to be settled', 'Ribbon colour'),
  answer: line('What was settled; leave it out while it is open', 'sage').optional(),
  by: day('When it must be settled').optional(),
});

/** content/orders/ID.yaml */
export const orderSchema = keys({
  title: line('What it is', 'Three tiers for sixty'),
  reference: line('The customer as a code, never a name', 'R-1042'),
  hand_over: keys({
    at: moment('Day and time', '2026-11-28 14:00'),
    zone: line('Where the clock differs from the kitchen’s', 'Europe/Dublin').optional(),
    place: z.enum(PLACE_KINDS).meta({ description: 'Where it changes hands' }),
  }).meta({ description: 'When and where the customer gets it' }),
  portions: keys({
    wanted: z
      .int()
      .min(1)
      .max(5000)
      .meta({ description: 'How many pieces', examples: [60] }),
    size: z.enum(['dessert', 'finger']).meta({ description: 'How large a piece is' }),
  })
    .optional()
    .meta({ description: 'How many it shall serve; the sheet says whether it does' }),
  arrangement: z.enum(['stacked', 'separate']).optional().meta({
    description: 'One on the other, or side by side',
    default: 'separate',
  }),
  travels_assembled: yesNo('Whether a stack is put together before it travels'),
  keep_top_tier: yesNo('Whether the top tier is kept and not counted'),
  tiers: z.array(tier).min(1).optional().meta({ description: 'Bottom first' }),
  cutting_cakes: z
    .array(keys(cake))
    .min(1)
    .optional()
    .meta({ description: 'Plain cakes beside the tiers, cut in the kitchen' }),
  small_cakes: z
    .array(smallCakes)
    .min(1)
    .optional()
    .meta({ description: 'Cakes by the piece: cupcakes, fairy cakes, muffins, minis' }),
  extras: z.array(extra).optional().meta({ description: 'What goes with the cake: hire, delivery, flowers' }),
  quote: orderQuoteSchema.optional().meta({
    description: 'Where this order’s quote differs from the kitchen’s',
  }),
  decisions: z.array(decision).optional().meta({ description: 'What is settled and what is open' }),
  notes: paragraph('Anything worth keeping', 'Fetch at the back door.').optional(),
});
