import * as z from 'zod';
import { duration, keys, length, line, temperature, volume } from './keys.ts';

/** Minutes of small cakes, by the baker's own watch. */
export const smallBakeSchema = keys({
  look: duration('When to look first', '18 min'),
  by: duration('When the last of them is out', '22 min'),
  oven: temperature('As set for them; the recipe’s when left out', '170C').optional(),
});

/** A tin of several cups: a muffin tin, a bun tin, a tray of mini moulds. */
export const bunTinSchema = keys({
  id: line('Short name, small letters and hyphens; orders name it', 'muffin-12'),
  name: line('What you call it', 'Twelve-cup muffin tin'),
  cups: z
    .int()
    .min(1)
    .max(60)
    .meta({ description: 'How many cakes it bakes at once', examples: [12] }),
  across: length('Inside width of a cup at the rim', '70 mm').optional(),
  base_across: length('Inside width of a cup at its base', '50 mm').optional(),
  cup_volume: volume('Water one cup holds, level with the rim; wins over its size', '100 ml').optional(),
  cup_depth: length('Inside depth of a cup', '32 mm'),
  length: length('Outside length, handles and all: what the oven has to take', '350 mm'),
  width: length('Outside width', '265 mm'),
  owned: z.int().min(1).max(99).optional().meta({ description: 'How many are on the shelf', default: 1 }),
  bake: smallBakeSchema.optional().meta({ description: 'How small cakes bake in it, by your own watch' }),
  note: line('Anything worth printing beside it', 'Browns at the corners').optional(),
});
