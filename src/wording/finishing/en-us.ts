/** US English for the finishing chart. */
import { enGbFinishing } from './en-gb.ts';
import type { FinishingWords } from './finishing-words.ts';

export const enUsFinishing: FinishingWords = {
  ...enGbFinishing,
  summary: (height, layers) => enGbFinishing.summary(height, layers).replace('tin by tin', 'pan by pan'),
  notes: {
    ...enGbFinishing.notes,
    cake: enGbFinishing.notes.cake.replace('its tin', 'its pan').replace('millimetres', 'millimeters'),
  },
};
