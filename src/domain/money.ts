/**
 * Money is a whole number of the currency's minor unit (pence, cents): sums are exact and a quote adds up on
 * paper. Rates (a price per kWh, per gram) may have fractions; what comes of them is rounded once, per line.
 */
export type Minor = number;

/** ISO 4217 code and how many minor units make one major one. */
export interface Currency {
  code: string;
  minorPerMajor: number;
}

export const POUNDS: Currency = { code: 'GBP', minorPerMajor: 100 };

/** ISO 4217 codes and exponents of currencies that kitchens here have asked for (from memory). */
export const CURRENCIES: readonly Currency[] = [
  ...['GBP', 'EUR', 'USD', 'AUD', 'CAD', 'CHF', 'CZK', 'DKK', 'INR', 'NOK', 'NZD', 'PLN', 'SEK', 'ZAR'].map(
    (code) => ({ code, minorPerMajor: 100 }),
  ),
  { code: 'JPY', minorPerMajor: 1 },
];

/** A rate × an amount in whole minor units, half a unit going up. */
export function wholeMinor(exactMinor: number): Minor {
  return Math.floor(Math.round(exactMinor * 1e6) / 1e6 + 0.5);
}

/** Whether a value can be a sum of money that is paid: whole, not negative, and safe to add. */
export function isMoney(minor: number): boolean {
  return Number.isSafeInteger(minor) && minor >= 0;
}
