/** Sums of money as they are printed: the sign before it where the currency has a usual one, its code otherwise. */
import type { Currency, Minor } from '../domain/money.ts';
import { formatFixed } from './number.ts';

const SIGNS: Readonly<Record<string, string>> = { GBP: '£', EUR: '€', USD: '$', JPY: '¥' };

/** '£12.50', 'CHF 12.50', '¥500'; below nothing with a true minus before the sign. */
export function formatMoney(minor: Minor, { code, minorPerMajor }: Currency): string {
  const decimals = Math.round(Math.log10(minorPerMajor));
  const amount = formatFixed(Math.abs(minor) / minorPerMajor, decimals);
  const sign = SIGNS[code] ?? `${code}\u00a0`;
  return `${minor < 0 ? '−' : ''}${sign}${amount}`;
}

/** A rate, with as many decimals as it needs beyond the currency's own: '£0.2475'. */
export function formatRate(minor: number, { code, minorPerMajor }: Currency): string {
  const least = Math.round(Math.log10(minorPerMajor));
  const major = minor / minorPerMajor;
  const text = formatFixed(major, least + 4);
  const kept = text.replace(/0{1,4}$/, '');
  return `${SIGNS[code] ?? `${code}\u00a0`}${kept.endsWith('.') ? kept.slice(0, -1) : kept}`;
}
