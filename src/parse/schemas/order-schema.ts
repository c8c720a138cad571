import * as z from 'zod';
import { PLACE_KINDS, USES } from '../../domain/order.ts';
import { day, keys, length, line, moment, money, paragraph, share } from './keys.ts';

const yesNo = (description: string) => z.enum(['yes', 'no']).optional().meta({ description, default: 'no' });

const tier = keys({
  tin: line('A tin of this kitchen', 'round-8'),
  recipe: line('A recipe', 'vanilla-equal-weights'),
  flavours: z
    .array(line('A flavour', 'orange'))
    .optional()
    .meta({ description: 'In order; none when left out' }),
  count: z.int().min(1).max(50).optional().meta({ description: 'How many such cakes', default: 1 }),
  finished_height: length('Baked height; the recipe’s when left out', '65 mm').optional(),
  layers: z
    .int()
    .min(1)
    .max(12)
    .optional()
    .meta({ description: 'Layers of sponge; the recipe’s when left out' }),
  finishes: z
    .array(keys({ finish: line('A finish', 'vanilla-buttercream'), use: z.enum(USES) }))
    .optional()
    .meta({ description: 'From the inside out' }),
});

const extra = keys({
  name: line('What it is', 'Stand hire'),
  count: z.int().min(1).max(1000).optional().meta({ default: 1 }),
  each: money('Price of one', '12.00'),
  inedible: yesNo('Must come off before the cake is eaten'),
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
  }),
  portions: keys({
    wanted: z
      .int()
      .min(1)
      .max(5000)
      .meta({ description: 'How many pieces', examples: [60] }),
    size: z.enum(['dessert', 'finger']),
  }).optional(),
  arrangement: z.enum(['stacked', 'separate']).optional().meta({
    description: 'One on the other, or side by side',
    default: 'separate',
  }),
  travels_assembled: yesNo('Whether a stack is put together before it travels'),
  keep_top_tier: yesNo('Whether the top tier is kept and not counted'),
  tiers: z.array(tier).min(1).meta({ description: 'Bottom first' }),
  extras: z.array(extra).optional(),
  decisions: z.array(decision).optional(),
  notes: paragraph('Anything worth keeping', 'Fetch at the back door.').optional(),
});
