import * as z from 'zod';
import { FINISH_KINDS } from '../../domain/finish.ts';
import { days, density, keys, length, line, mass, paragraph, perArea, share } from './keys.ts';

/** content/finishes/ID.yaml */
export const finishSchema = keys({
  name: line('As it is printed', 'Vanilla buttercream'),
  kind: z.enum(FINISH_KINDS).meta({ description: 'What it is: decides how it keeps and what it may touch' }),
  density: density('As it goes onto the cake', '1.05 g/ml'),
  formula: z.record(z.string(), z.number()).meta({
    description: 'Ingredient ids and their parts by weight, in order',
    examples: [{ butter: 1, 'icing-sugar': 2 }],
  }),
  filling: keys({ thickness: length('Between two layers', '8 mm') })
    .optional()
    .meta({ description: 'Given where it goes between layers' }),
  coating: keys({
    crumb: length('First thin coat', '2 mm').optional(),
    final: length('Final coat', '6 mm'),
    corners: z
      .enum(['rounded', 'sharp'])
      .optional()
      .meta({ description: 'How its edges are finished', default: 'rounded' }),
  })
    .optional()
    .meta({ description: 'Given where it goes round the cake' }),
  rolled: keys({
    thickness: length('Rolled out', '4 mm'),
    trim: length('Left all round for trimming', '25 mm'),
  })
    .optional()
    .meta({ description: 'Given where it is rolled out and laid over' }),
  brushed: keys({ per_face: perArea('On each cut face', '0.12 g/cm2') })
    .optional()
    .meta({ description: 'Given where it is brushed on' }),
  loss: share('What stays in bowl and bag, over what is on the cake', '10 %').optional(),
  cooking_loss: share('Weight lost in boiling, of what goes in', '5 %').optional(),
  keeps: days('How long it keeps, made', '3 days'),
  chilled: z
    .enum(['yes', 'no'])
    .optional()
    .meta({ description: 'Whether it must stand in the fridge', default: 'no' }),
  pack: mass('Smallest packet it is bought in', '1 kg').optional(),
  method: paragraph('How it is made, in Markdown', 'Beat the butter pale, then add the sugar.'),
});
