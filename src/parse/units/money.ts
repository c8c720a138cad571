/** Sums and rates of money, in the kitchen's own currency and without its sign: 12.50, '14.00 per h'. */
import type { Currency, Minor } from '../../domain/money.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { plainSpaces } from './quantity.ts';

const SUM = /^(\d{1,7})(?:\.(\d{1,6}))?$/;

function decimals({ minorPerMajor }: Currency): number {
  return Math.round(Math.log10(minorPerMajor));
}

function unreadable(text: string, called: string, example: string): Result<never> {
  const hint = `Write figures alone, without a currency sign: ${example}.`;
  return refuse('money-unreadable', `${quote(text)} cannot be read as ${called}`, hint);
}

/**
 * A sum in whole minor units: '12.50' is 1250 pence. Fails on signs, separators, amounts below nothing and more
 * decimals than the currency has.
 * @example parseMoney('1.20', POUNDS) // { ok: true, value: 120 }
 */
export function parseMoney(written: string, currency: Currency): Result<Minor> {
  const text = plainSpaces(written).trim();
  const match = SUM.exec(text);
  const places = decimals(currency);
  const example = (12.5).toFixed(places);
  if (match === null) return unreadable(text, 'a sum of money', example);
  const part = match[2] ?? '';
  if (part.length > places) {
    const message = `${quote(text)} has more decimals than ${currency.code} has`;
    return refuse('money-unreadable', message, `Write it with ${places} decimals: ${example}.`);
  }
  return succeed(Number(match[1]) * currency.minorPerMajor + Number(part.padEnd(places, '0')));
}

/**
 * A rate in minor units, with parts of one: '0.2475 per kWh' is 24.75 pence. Fails as parseMoney does, but for
 * the decimals, and without 'per h' or 'per kWh' after it.
 * @example parseRate('14.00 per h', 'h', POUNDS) // { ok: true, value: 1400 }
 */
export function parseRate(written: string, per: 'h' | 'kWh', currency: Currency): Result<number> {
  const text = plainSpaces(written).trim();
  const tail = ` per ${per}`;
  const example = per === 'h' ? "'14.00 per h'" : "'0.27 per kWh'";
  if (!text.endsWith(tail)) {
    const hint = `Write what one ${per === 'h' ? 'hour' : 'kilowatt-hour'} costs, like ${example}.`;
    return refuse('rate-unreadable', `${quote(text)} does not say what it is a price for`, hint);
  }
  const sum = text.slice(0, -tail.length).trim();
  if (!SUM.test(sum)) return unreadable(sum, 'a rate of money', example);
  return succeed(Math.round(Number(sum) * currency.minorPerMajor * 1e6) / 1e6);
}
