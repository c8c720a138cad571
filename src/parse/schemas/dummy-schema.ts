import * as z from 'zod';
import { DUMMY_SHAPES, DUMMY_SIZES, type DummyShape } from '../tins/dummy-sizes.ts';
import { keys, length, money, share } from './keys.ts';

const dummyOf = (kind: DummyShape): z.ZodObject<z.core.$ZodLooseShape, z.core.$strict> =>
  keys({
    shape: z.literal(kind),
    ...Object.fromEntries(DUMMY_SIZES[kind].map((key) => [key, length('Before it is covered', '6in')])),
    ...(kind === 'petal'
      ? {
          petals: z
            .int()
            .min(3)
            .max(24)
            .meta({ description: 'How many petals, 3 to 24', examples: [8] }),
        }
      : {}),
    height: length('Before it is covered', '4in'),
    supply: z.enum(['bought', 'hired']).meta({ description: 'Bought for the order, or hired out with it' }),
    each: money('What it costs you where it is bought; what the customer pays where it is hired', '6.00'),
    vat: share('On a hire, which is not cake', '20 %').optional(),
  });

const [first = 'round', ...others] = DUMMY_SHAPES;

/** A polystyrene tier, told apart by its shape as tins are. */
export const dummySchema = z.discriminatedUnion('shape', [dummyOf(first), ...others.map(dummyOf)]);
