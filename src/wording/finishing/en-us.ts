/** US English for the finishing chart. */
import { inAmerican } from '../american.ts';
import { withUsHeads } from '../us-heads.ts';
import { enGbFinishing } from './en-gb.ts';
import type { FinishingWords } from './finishing-words.ts';

const gb = withUsHeads(inAmerican(enGbFinishing));

export const enUsFinishing: FinishingWords = {
  ...gb,
  cautions: { ...gb.cautions, chilled: gb.cautions.chilled.replace('8 °C', '41 °F') },
};
