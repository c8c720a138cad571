/** US English for the lining templates: sizes in inches, everything else as the rules of American English turn it. */
import { inAmerican } from '../american.ts';
import { withUsUnits } from '../us-units.ts';
import { enGbTemplates } from './en-gb.ts';
import type { TemplateWords } from './template-words.ts';

export const enUsTemplates: TemplateWords = withUsUnits(inAmerican(enGbTemplates));
