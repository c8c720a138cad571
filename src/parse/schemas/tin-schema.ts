import * as z from 'zod';
import { SHAPE_KINDS, type ShapeKind } from '../../domain/shape.ts';
import { TIN_MATERIALS } from '../../domain/tin.ts';
import { SHAPE_SIZES } from '../tins/shape-sizes.ts';
import { keys, length, line, volume } from './keys.ts';

const SIZE_WORDS = {
  across: 'Inside width at the rim (heart: across the lobes)',
  base_across: 'Inside width at the base, where the wall tapers',
  side: 'Inside length of a side at the rim',
  base_side: 'Inside length of a side at the base',
  length: 'Inside length at the rim',
  width: 'Inside width at the rim',
  base_length: 'Inside length at the base',
  base_width: 'Inside width at the base',
  flats: 'Across the flat sides',
  corners: 'Across the corners',
  point: 'From the point to the top of the lobes',
  tube: 'Outside width of the tube at the rim',
  base_tube: 'Outside width of the tube at the base',
  slant: 'Inside length of the wall across a corner, at 45° to the others',
} as const;

const OWN_KEYS: Partial<Record<ShapeKind, z.core.$ZodLooseShape>> = {
  petal: { petals: z.int().meta({ description: 'How many petals, 3 to 24', examples: [8] }) },
  outline: { outline: line('Name of a drawing in the outlines folder, without .svg', 'numeral-5') },
  measured: { volume: volume('Water it holds, level with the rim', '1850ml') },
};

function tinShape(kind: ShapeKind): z.core.$ZodLooseShape {
  const { required, oneOf, optional } = SHAPE_SIZES[kind];
  const depth = length('Inside depth', '3in');
  return {
    id: line('Short name, small letters and hyphens; used in lists of tins and in addresses', 'round-6'),
    name: line('What you call it', 'Six-inch round'),
    shape: z.literal(kind),
    ...Object.fromEntries(required.map((key) => [key, length(SIZE_WORDS[key], '6in')])),
    ...Object.fromEntries(
      [...oneOf, ...optional].map((key) => [key, length(SIZE_WORDS[key], '6in').optional()]),
    ),
    ...OWN_KEYS[kind],
    depth: kind === 'dome' ? depth.optional() : depth,
    owned: z.int().min(0).max(99).optional().meta({ description: 'How many are on the shelf', default: 1 }),
    unit: z.enum(['in', 'cm', 'mm']).optional().meta({ description: 'The unit printed first' }),
    material: z
      .enum(TIN_MATERIALS)
      .optional()
      .meta({ description: 'What it is made of: it moves the bake times' }),
    note: line('Anything worth printing beside it', 'Leaks a little').optional(),
    ...(kind === 'measured'
      ? {}
      : {
          measured_volume: volume('Water it was seen to hold; wins over the formula', '1890 ml').optional(),
        }),
  };
}

const tinOf = (kind: ShapeKind): z.ZodObject<z.core.$ZodLooseShape, z.core.$strict> => keys(tinShape(kind));

const [first = 'round', ...others] = SHAPE_KINDS;

/** One schema per shape, told apart by the key `shape`. */
export const tinSchema = z.discriminatedUnion('shape', [tinOf(first), ...others.map(tinOf)]);
