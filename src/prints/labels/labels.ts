import type { Locale } from '../../domain/kitchen.ts';
import { enGb } from './en-gb.ts';
import { enUs } from './en-us.ts';
import type { PrintLabels } from './print-labels.ts';

const byLocale: Record<Locale, PrintLabels> = { 'en-GB': enGb, 'en-US': enUs };

export const labelsFor = (locale: Locale): PrintLabels => byLocale[locale];
