import * as z from 'zod';
import { day, keys, line, mass, share, volume } from './keys.ts';
import { tinSchema } from './tin-schema.ts';

const eggs = keys({
  size: line('Country and grade of the eggs in use', 'UK medium').optional(),
  weighed: mass('Mean weight of one of your own eggs, shelled; wins over the table', '51 g').optional(),
  tolerance: share('How far a whole number of eggs may be from the exact one', '6 %').optional(),
  otherwise: z.enum(['step up', 'weigh']).optional().meta({
    description: 'Beyond the tolerance: step up to the next whole egg, or weigh beaten egg',
    default: 'step up',
  }),
});

const scale = keys({
  step: mass('Smallest step of the scale for most ingredients', '5 g').optional(),
  fine_step: mass('Step for raising agents, salt and spices', '0.5 g').optional(),
});

const mixer = keys({
  bowl: volume('What the bowl holds to its rim', '4.8 l'),
  max_fill: share('Largest share of the bowl that mixed batter may fill', '55 %').optional(),
  min_fill: share('Smallest share that the whisk still reaches', '12 %').optional(),
});

/** content/kitchen.yaml */
export const kitchenSchema = keys({
  name: line('The bakery', 'My bakery'),
  place: line('Where it is', 'My town'),
  baker: line('Who bakes', 'My name').optional(),
  edition: day('Dates every page and print'),
  locale: z.enum(['en-GB', 'en-US']),
  site_url: line('Where the site will stand', 'https://bakery.example.org').optional(),
  paper: z.array(z.enum(['A4', 'Letter'])).min(1),
  eggs,
  scale: scale.optional(),
  mixer,
  fairy_case: mass('Batter for one fairy-cake case', '25 g').optional(),
  tins: z.array(tinSchema).min(1),
});
