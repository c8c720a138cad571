/** The words of orders by locale. */
import type { Locale } from '../../domain/kitchen.ts';
import { enGbOrders } from './en-gb.ts';
import { enUsOrders } from './en-us.ts';
import type { OrderWords } from './order-words.ts';

export type { OrderWords } from './order-words.ts';

const LOCALES: Record<Locale, OrderWords> = { 'en-GB': enGbOrders, 'en-US': enUsOrders };

/** The words of orders in a locale. */
export const orderWordsFor = (locale: Locale): OrderWords => LOCALES[locale];
