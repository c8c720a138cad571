import { inAmerican } from '../american.ts';
import { americanDate } from '../date.ts';
import { enGb } from './en-gb.ts';
import type { PrintLabels } from './print-labels.ts';

export const enUs: PrintLabels = {
  ...inAmerican(enGb),
  date: americanDate,
  scale: (scale) => `8 in; pans drawn 1 : ${scale}`,
  holds: (cups) => `Holds ${cups}\u00a0cups.`,
  fillDeep: (inches, share) => `Fill ${inches}\u00a0in deep (${share}).`,
  bakesTo: (inches) => `Bakes to ${inches}\u00a0in.`,
};
