import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { type AmountOptions, parseAmount, type QuantityKind } from './quantity.ts';

type DayUnit = 'days' | 'weeks';

const DAYS: QuantityKind<DayUnit> = {
  called: 'a number of days',
  spellings: { d: 'days', day: 'days', days: 'days', week: 'weeks', weeks: 'weeks' },
  per: { days: 1, weeks: 7 },
  offered: ['days', 'weeks'],
  compound: false,
  example: '3 days or 2 weeks',
  least: 1,
  most: 365,
  range: 'a time from 1 day to 365 days',
};

/**
 * How long something keeps, in whole days: '3 days', '2 weeks'. Fails without a unit, on parts of a day and
 * outside 1 to 365 days, none being let through where zero is allowed.
 * @example parseDays('2 weeks') // { ok: true, value: 14 }
 */
export function parseDays(text: string, options: AmountOptions = {}): Result<number> {
  const amount = parseAmount(text, DAYS, options);
  if (!amount.ok) return amount;
  if (Number.isInteger(amount.value.total)) return succeed(amount.value.total);
  return refuse(
    'quantity-unreadable',
    `${quote(text)} is not a whole number of days`,
    'Write it like 3 days.',
  );
}
