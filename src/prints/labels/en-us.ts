import { americanDate } from '../../wording/date.ts';
import { enGb } from './en-gb.ts';
import type { PrintLabels } from './print-labels.ts';

export const enUs: PrintLabels = {
  ...enGb,
  date: americanDate,
  tin: 'Pan',
  filling: 'In the pan, and what is over',
  inTin: (grams) => `${grams}\u00a0g in the pan.`,
  chart: 'Pans and weights',
  ladderLead: 'Start from the eggs in the bowl: what goes with them, and which pans it fills.',
  fills: 'Pans it fills, best first',
  scale: (scale) => `20 cm; pans drawn 1 : ${scale}`,
  holds: (millilitres) => `Holds ${millilitres}\u00a0mL.`,
};
