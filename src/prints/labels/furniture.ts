/** The running head and foot of a chart or guide: whose it is, what it is, and which edition. */

import type { PrintLabels } from '../../wording/sheets/index.ts';
import type { Furniture } from '../sheet/sheet.ts';

export interface Entitled {
  kitchenName: string;
  title: string;
  edition: string;
}

/** A scale bar is the sheet's own to add. */
export const furnitureOf = ({ kitchenName, title, edition }: Entitled, labels: PrintLabels): Furniture => ({
  kitchenName,
  title,
  edition: labels.edition(labels.date(edition)),
  pageText: labels.page,
});
