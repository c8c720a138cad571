/** US English for the finishing chart. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbFinishing } from './en-gb.ts';
import type { FinishingWords } from './finishing-words.ts';

const gb = withUsHeads(inAmerican(enGbFinishing));

export const enUsFinishing: FinishingWords = {
  ...gb,
  notes: {
    ...gb.notes,
    cake: gb.notes.cake.replace('the few millimeters', 'the little'),
    parts: (step, fineStep) =>
      gb.notes.parts(step, fineStep).replace('a gram or two', 'a few hundredths of an ounce'),
  },
  cautions: { ...gb.cautions, chilled: gb.cautions.chilled.replace('8 °C', '41 °F') },
};
