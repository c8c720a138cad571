import * as z from 'zod';
import { CARD_SIZES, PRINT_KINDS, type PrintKind, WALL_SIZES } from '../../domain/printable.ts';
import { keys, line } from './keys.ts';

const ids = (what: string, example: string, several = `${what.replace(/^An? /, 'The ')}s`) =>
  z
    .array(line(what, example))
    .min(1)
    .optional()
    .meta({ description: `${several}; all when left out` });

const lists = {
  recipes: ids('A recipe', 'vanilla'),
  flavours: z.array(line('A flavour', 'orange')).optional().meta({
    description: 'One combination, in order; [] for the plain recipe',
  }),
  tins: ids('A tin', 'round-6'),
  finishes: ids('A finish', 'vanilla-buttercream', 'The finishes'),
  orders: ids('An order', 'saturday-cake'),
};

/** Which of the lists narrow a kind of print. */
const NARROWED_BY: Record<PrintKind, readonly (keyof typeof lists)[]> = {
  'tin-chart': ['recipes', 'flavours', 'tins'],
  'finishing-chart': ['tins', 'finishes'],
  'bake-guide': ['recipes'],
  'recipe-card': ['recipes', 'flavours', 'tins'],
  'finish-card': ['tins', 'finishes'],
  booklet: ['recipes', 'tins', 'finishes'],
  'wall-reference': ['recipes', 'tins', 'finishes'],
  'cutting-guide': ['recipes', 'tins'],
  label: ['recipes', 'flavours'],
  'order-sheet': ['orders'],
  'stack-sheet': ['orders'],
  'shopping-list': ['orders'],
  quote: ['orders'],
  'day-sheet': ['orders'],
  'oven-plan': ['orders'],
  'lining-template': ['tins'],
};

/** Weighed in the unit of the kitchen's country: with orders, and what they are made from, a mix of units is a mistake waiting. */
const COUNTRYS_OWN: readonly PrintKind[] = [
  'finish-card',
  'order-sheet',
  'stack-sheet',
  'shopping-list',
  'quote',
  'day-sheet',
  'oven-plan',
];

/** Which kinds of print come in sizes of their own. */
const SIZES: Partial<Record<PrintKind, readonly string[]>> = {
  'recipe-card': CARD_SIZES,
  'finish-card': CARD_SIZES,
  'wall-reference': WALL_SIZES,
};

function printable(kind: PrintKind): z.ZodObject<z.core.$ZodLooseShape, z.core.$strict> {
  return keys({
    print: z.literal(kind),
    name: line('Sets these files apart: small letters and hyphens', 'my-four').optional(),
    ...Object.fromEntries(NARROWED_BY[kind].map((key) => [key, lists[key]])),
    ...(SIZES[kind]
      ? {
          sizes: z
            .array(z.enum(SIZES[kind]))
            .min(1)
            .optional()
            .meta({ description: 'Sizes it is made in; the usual ones when left out' }),
        }
      : {}),
    paper: z
      .array(z.enum(['A4', 'Letter']))
      .min(1)
      .optional()
      .meta({ description: 'Paper to print on; the kitchen’s when left out' }),
    ...(COUNTRYS_OWN.includes(kind)
      ? {}
      : {
          mass: z.enum(['g', 'oz']).optional().meta({
            description: 'Unit of weights; the country’s own when left out: ounces in en-US, else grams',
          }),
        }),
  });
}

const [first = 'tin-chart', ...others] = PRINT_KINDS;

/** `printables` in kitchen.yaml: one schema for each kind of print. */
export const printableSchema = z.discriminatedUnion('print', [
  printable(first),
  ...others.map((kind) => printable(kind)),
]);
