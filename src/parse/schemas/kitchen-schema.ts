import * as z from 'zod';
import { bunTinSchema } from './bun-tin-schema.ts';
import { altitude, day, duration, keys, length, line, mass, share, temperature, volume } from './keys.ts';
import { printableSchema } from './printables-schema.ts';
import { tinSchema } from './tin-schema.ts';
import { tradeKeys } from './trade-schema.ts';

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

const heat = {
  name: line('What it is called at home', 'The left-hand oven').optional(),
  heat: z.enum(['conventional', 'fan', 'convection']).optional().meta({
    description: 'Whether a fan runs while cakes bake; ‘convection’ is the same',
    default: 'conventional',
  }),
  dial: z
    .enum(['C', 'F', 'gas'])
    .optional()
    .meta({ description: 'What its dial says; the country’s own when left out: F in en-US, else C' }),
};

const furtherOven = keys({
  id: line('What the bake log and recipes call it', 'small-oven'),
  ...heat,
});

const oven = keys({
  id: line('What the bake log and recipes call it; main when left out', 'range').optional(),
  ...heat,
  core: z.enum(['none', 'hollow', 'solid']).optional().meta({
    description: 'The heating core in the drawer; a hollow one is open to the oven at both ends',
    default: 'none',
  }),
  band: z.boolean().optional().meta({ description: 'Whether there are insulated bands', default: false }),
  shelves: z.int().min(1).max(10).optional().meta({ description: 'Shelves in use at once', default: 2 }),
  width: length('Width of a shelf', '440 mm').optional(),
  depth: length('From the door to the back wall', '360 mm').optional(),
  air_gap: length('Air between two tins', '25 mm').optional(),
  wall_gap: length('Air between a tin and the wall, the door or the fan', '20 mm').optional(),
  recovery: duration('From the door closing to the set heat again', '10 min').optional(),
  kwh_to_heat: z.number().min(0).max(20).optional().meta({
    description: 'Kilowatt-hours to heat it up, by your own meter',
    default: 0.4,
  }),
  kwh_per_hour: z.number().min(0).max(20).optional().meta({
    description: 'Kilowatt-hours for an hour of baking',
    default: 0.8,
  }),
});

const finishing = keys({
  cake_height: length('Sponge height of a finished tier', '4in', '100 mm').optional(),
  layers: z.int().min(1).max(12).optional().meta({ description: 'Layers of sponge in a tier', default: 3 }),
  dam: length('Bead piped round the edge to hold a filling; 0 mm for none', '10 mm').optional(),
  undercoat: length('Coat that a rolled sheet goes over', '8 mm').optional(),
  ribbon_overlap: length('How far the ends of a ribbon lap', '20 mm').optional(),
  board_margin: length('Board over cake, across', '75 mm').optional(),
  board_thickness: length('Thickness of the board', '12 mm').optional(),
  box_clearance: length('Air over the cake in its box', '50 mm').optional(),
});

const booklet = keys({
  edition_note: line('Beside the date', 'Second edition').optional(),
  licence: line('Who may copy it', 'For the buyer’s own kitchen; please do not copy.').optional(),
  prepared_for: line('Printed on the imprint', 'A name').optional(),
  hundred_sheets: length('How high a hundred sheets of your paper stand: for the fold', '10 mm').optional(),
});

/** content/kitchen.yaml */
export const kitchenSchema = keys({
  name: line('The bakery', 'My bakery'),
  place: line('Where it is', 'My town'),
  baker: line('Who bakes', 'My name').optional(),
  edition: day('Dates every page and print'),
  locale: z.enum(['en-GB', 'en-US']).meta({ description: 'Whose words and units pages and prints use' }),
  site_url: line('Where the site will stand', 'https://bakery.example.org').optional(),
  paper: z
    .array(z.enum(['A4', 'Letter']))
    .min(1)
    .meta({ description: 'Paper to print on: one or both' }),
  eggs: eggs.meta({ description: 'The eggs in use, and when a whole number of them is near enough' }),
  scale: scale.optional().meta({ description: 'What the scale can weigh' }),
  mixer: mixer.meta({ description: 'What the mixer holds' }),
  fairy_case: mass('Batter for one fairy-cake case', '25 g').optional(),
  altitude: altitude('Height above the sea; from 900 m up the recipes are adjusted', '1600 m').optional(),
  oven: oven.optional().meta({ description: 'The main oven' }),
  further_ovens: z.array(furtherOven).min(1).optional().meta({
    description: 'Other ovens; each learns from its own bakes',
  }),
  batter_temperature: temperature(
    'Temperature of batter when it goes in; 22C when left out',
    '20C',
    '68F',
  ).optional(),
  finishing: finishing.optional().meta({ description: 'Usual sizes of tiers, boards and boxes' }),
  house_styles: z
    .array(line('A file below house-styles, without .yaml', 'slate-and-apricot'))
    .min(1)
    .optional()
    .meta({ description: 'Further styles to print in' }),
  printables: z
    .array(printableSchema)
    .min(1)
    .optional()
    .meta({ description: 'What to print; all when left out' }),
  booklet: booklet
    .optional()
    .meta({ description: 'What stands on the imprint, and the paper it is folded from' }),
  ...tradeKeys,
  tins: z
    .array(tinSchema)
    .min(1)
    .meta({ description: 'Every tin, with its inside size; its keys go by its shape' }),
  bun_tins: z
    .array(bunTinSchema)
    .min(1)
    .optional()
    .meta({ description: 'Tins of several cups, for small cakes in orders' }),
});
