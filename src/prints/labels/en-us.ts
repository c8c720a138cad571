import { inAmerican } from '../../wording/american.ts';
import { americanDate } from '../../wording/date.ts';
import { enGb } from './en-gb.ts';
import type { PrintLabels } from './print-labels.ts';

export const enUs: PrintLabels = {
  ...inAmerican(enGb),
  date: americanDate,
  holds: (millilitres) => `Holds ${millilitres}\u00a0mL.`,
};
