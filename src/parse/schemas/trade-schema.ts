/** The keys of kitchen.yaml that are about orders: money, working hours, labels and portions. */
import * as z from 'zod';
import { PACKAGING_PER } from '../../domain/costs.ts';
import { FINISH_KINDS } from '../../domain/finish.ts';
import { ALLERGENS } from '../../domain/ingredient.ts';
import { KINDS_OF_SALE, LABEL_RULES } from '../../domain/label-settings.ts';
import { CURRENCIES } from '../../domain/money.ts';
import { USES } from '../../domain/order.ts';
import { MIXING_METHODS } from '../../domain/recipe.ts';
import { FINISH_TIMES, METHOD_TIMES, TIME_ENTRIES } from '../../domain/times.ts';
import { STANDINGS } from '../../domain/work-settings.ts';
import { days, duration, keys, length, line, mass, money, rate, share, surface, timeOfDay } from './keys.ts';
import { quoteSchema } from './quote-schema.ts';

const costs = keys({
  labour: rate('An hour of the baker’s own work', '14.00 per h').optional(),
  overhead: rate('Rent, insurance and wear for an hour of work', '1.50 per h').optional(),
  electricity: rate('What the meter costs', '0.27 per kWh').optional(),
  margin: share('Share of the price that is left over the cost', '20 %').optional(),
  round_up_to: money('Prices go up to the next multiple', '0.50').optional(),
  vat: share(
    'On cake; in the UK most cake is zero-rated, and some things sold with it are not',
    '0 %',
  ).optional(),
  packaging: z
    .array(
      keys({
        name: line('What it is', 'Cake box and board'),
        each: money(
          'Price of one as used: what an order is charged, whatever packs it is bought in; with sizes, of one wider than all of them',
          '4.60',
        ),
        sizes: z
          .array(
            keys({
              across: length('How wide it is', '12in'),
              each: money('What one of it costs', '2.60'),
            }),
          )
          .min(1)
          .optional()
          .meta({
            description:
              'Prices of boards and boxes by width: each cake takes the next size up; without packs and on_hand',
          }),
        per: z.enum(PACKAGING_PER).meta({
          description:
            'What it is counted by: once an order, for every cake, box or piece, or as the stack and its boards are counted',
        }),
        packs: z
          .array(
            keys({
              size: z.int().min(1).max(10_000).meta({ description: 'How many are in it' }),
              price: money('What the pack costs', '4.20'),
            }),
          )
          .min(1)
          .optional()
          .meta({
            description:
              'What shops sell it in: shopping takes the packs that cost least together, an order is still charged by each; left out: one by one',
          }),
        on_hand: z
          .int()
          .min(0)
          .max(100_000)
          .optional()
          .meta({ description: 'How many there are', default: 0 }),
      }),
    )
    .optional()
    .meta({ description: 'What cakes leave the house in' }),
  quote: quoteSchema.optional().meta({ description: 'How long quotes hold, and when what is asked is due' }),
});

const label = keys({
  rules: z.enum(LABEL_RULES).optional().meta({ description: 'Whose rules', default: 'UK' }),
  sale: z.enum(KINDS_OF_SALE).optional().meta({ description: 'How it is sold', default: 'made to order' }),
  may_contain: z.array(z.enum(ALLERGENS)).optional().meta({ description: 'What else the kitchen handles' }),
  durability: days('The longest the kitchen promises', '3 days').optional(),
  storage: line('How to keep it', 'Keep cool and dry, in its box.').optional(),
  x_height: length('Height of a lower-case x', '1.2 mm').optional(),
  pack_surface: surface('Largest side of the pack', '120 cm2').optional(),
  sizes: z
    .array(line('Width x height of a label', '85 mm x 110 mm'))
    .min(1)
    .optional()
    .meta({ description: 'Sizes that labels are made in' }),
  sample: keys({
    tin: line('A tin of this kitchen', 'round-8'),
    finishes: z
      .array(
        keys({
          finish: line('A finish', 'raspberry-jam'),
          use: z.enum(USES).meta({ description: 'Where it goes' }),
        }),
      )
      .optional()
      .meta({ description: 'From the inside out' }),
  })
    .optional()
    .meta({ description: 'The cake that labels are shown for while there is no order' }),
  named: z
    .record(
      z.string().regex(/\S/).max(40),
      z.array(line('An ingredient', 'sultanas')).min(1).meta({ description: 'Ingredients counted together' }),
    )
    .optional()
    .meta({
      description:
        'Words of a food’s name that stand for several ingredients: fruit in a fruit cake. Their percentage is told together',
    }),
});

const portion = keys({
  name: line('What it is called', 'Dessert').optional(),
  short: length('Its shorter side', '1in').optional(),
  long: length('Its longer side', '2in').optional(),
});

/** One time for all of some names, or each its own. */
const timeBy = (what: string, names: readonly string[], byWhat: string) =>
  z
    .union([
      duration(what, '20 min'),
      keys(
        Object.fromEntries(names.map((name) => [name, duration(`${what}: ${name}`, '20 min').optional()])),
      ),
    ])
    .optional()
    .meta({ description: `${what}; one time, or one for each ${byWhat}` });

const times = keys(
  Object.fromEntries([
    ...TIME_ENTRIES.map(({ key, what }) => [key, duration(what, '20 min').optional()]),
    ...METHOD_TIMES.map(({ key, what }) => [key, timeBy(what, MIXING_METHODS, 'method of mixing')]),
    ...FINISH_TIMES.map(({ key, what }) => [key, timeBy(what, FINISH_KINDS, 'kind of finish')]),
  ]),
);

/** What kitchen.yaml may say about orders. */
export const tradeKeys = {
  time_zone: line('Zone of the kitchen’s clock, by its IANA name', 'Europe/London').optional(),
  currency: z
    .enum(CURRENCIES.map(({ code }) => code))
    .optional()
    .meta({ description: 'Every sum is in it', default: 'GBP' }),
  business: keys({
    name: line('As it stands on labels and quotes', 'My bakery'),
    address: z
      .array(line('A line of the address', '1 Mill Lane'))
      .min(1)
      .meta({ description: 'Line by line' }),
    contact: line('How to reach it', 'hello@bakery.example.org').optional(),
  })
    .optional()
    .meta({ description: 'Who sells: labels and quotes name it' }),
  working_day: keys({
    from: timeOfDay('When work may begin', '07:00').optional(),
    to: timeOfDay('When it stops; outside is sleep', '21:00').optional(),
  })
    .optional()
    .meta({ description: 'Hours that timetables may use' }),
  hands: z.int().min(1).max(6).optional().meta({ description: 'People who work at once', default: 1 }),
  two_people_lift_above: mass('Weight of a cake above which two people lift it', '8 kg').optional(),
  batter_stands: timeBy(
    'How long mixed batter may wait for the oven',
    STANDINGS,
    'method of mixing, and for batter with bicarbonate',
  ),
  times: times.optional().meta({ description: 'How long each piece of work takes here' }),
  costs: costs.optional().meta({ description: 'What work and things cost, and how a price is made of them' }),
  label: label.optional().meta({ description: 'What labels follow and how they look' }),
  portion_sizes: keys({
    dessert: portion.optional().meta({ description: 'A piece for the plate' }),
    finger: portion.optional().meta({ description: 'A piece for the hand' }),
  })
    .optional()
    .meta({ description: 'How large pieces are cut' }),
  orders: keys({
    publish: z.enum(['yes', 'no']).meta({
      description: 'Whether orders stand on the site: they show what customers pay and what is earned',
      default: 'no',
    }),
  })
    .optional()
    .meta({ description: 'What happens to orders beyond print and data' }),
};
