/** The words of a sheet for those who weigh in ounces: the same, with the other unit. */
import type { PrintLabels } from '../../wording/sheets/index.ts';

const ounces = (text: string): string => text.replace(/\u00a0g\b/, '\u00a0oz').replace(/^g\b/, 'oz');

/** Labels whose weights are given in ounces. */
export function labelsInOunces(labels: PrintLabels): PrintLabels {
  return {
    ...labels,
    grams: 'oz',
    beaten: ounces(labels.beaten),
    inEach: (weight) => ounces(labels.inEach(weight)),
    inTin: (weight) => ounces(labels.inTin(weight)),
    gramsLeft: (weight) => ounces(labels.gramsLeft(weight)),
    gramsShort: (weight) => ounces(labels.gramsShort(weight)),
  };
}
