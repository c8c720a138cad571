/** What quotes say of accepting and paying: the kitchen's usual, and one order's own. */
import { day, days, keys, share } from './keys.ts';

const settings = {
  valid: days('How long it may be accepted, from its date', '14 days').optional(),
  deposit: share('Share of the whole that is paid to book; 0 % for none', '25 %').optional(),
  deposit_due: days(
    'When the deposit is due, from the date of the quote; when it is accepted when left out',
    '14 days',
  ).optional(),
  balance_due: days(
    'How long before the hand-over the rest is due; at the hand-over when left out',
    '7 days',
  ).optional(),
};

/** `costs: quote` in kitchen.yaml */
export const quoteSchema = keys(settings);

/** `quote` in an order */
export const orderQuoteSchema = keys({
  dated: day('Date of this quote; the kitchen’s edition when left out').optional(),
  ...settings,
});
