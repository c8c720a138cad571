import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { type AmountOptions, parseAmount, type QuantityKind } from './quantity.ts';

type DurationUnit = 'min' | 'h' | 'd';

const DURATION: QuantityKind<DurationUnit> = {
  called: 'a time',
  spellings: {
    min: 'min',
    mins: 'min',
    minute: 'min',
    minutes: 'min',
    h: 'h',
    hr: 'h',
    hrs: 'h',
    hour: 'h',
    hours: 'h',
    d: 'd',
    day: 'd',
    days: 'd',
  },
  per: { min: 1, h: 60, d: 1440 },
  offered: ['min', 'h'],
  compound: true,
  example: '45 min or 1 h 30 min',
  least: 1,
  most: 30 * 1440,
  range: 'a time from 1 min to 30 days',
};

/**
 * A time in whole minutes: '45 min', '1 h 30 min', '1½ h', '2 days'. Fails without a unit, on parts of a
 * minute and outside 1 minute to 30 days, nothing being let through where zero is allowed.
 * @example parseDuration('1 h 30 min') // { ok: true, value: 90 }
 */
export function parseDuration(text: string, options: AmountOptions = {}): Result<number> {
  const amount = parseAmount(text, DURATION, options);
  if (!amount.ok) return amount;
  if (Number.isInteger(amount.value.total)) return succeed(amount.value.total);
  return refuse(
    'quantity-unreadable',
    `${quote(text)} is not a whole number of minutes`,
    'Write it like 45 min.',
  );
}
