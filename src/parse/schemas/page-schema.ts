import * as z from 'zod';
import { keys, line } from './keys.ts';

/** The keys at the top of content/pages/ID.md. */
export const pageSchema = keys({
  title: line('Title of the page', 'About the bakery'),
  order: z
    .int()
    .min(0)
    .max(9999)
    .meta({ description: 'Place among the pages, smallest first', examples: [10] }),
});
