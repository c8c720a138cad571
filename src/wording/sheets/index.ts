/** The fixed words of printed sheets by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGb } from './en-gb.ts';
import { enUs } from './en-us.ts';
import type { PrintLabels } from './print-labels.ts';

export type { PrintLabels } from './print-labels.ts';

const LOCALES: Record<Locale, PrintLabels> = { 'en-GB': enGb, 'en-US': enUs };

/** The fixed words of sheets in a locale. */
export const labelsFor = (locale: Locale): PrintLabels => LOCALES[locale];
