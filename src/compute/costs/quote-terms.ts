/**
 * Until when may a quote be accepted, and what is due when? The deposit is its share of the whole, to the penny; the
 * balance is the rest, so that the two add up. Where the balance would be due no later than the deposit, the whole is
 * due at once. Nobody is asked to pay before the quote is dated, and it holds no longer than the balance may wait.
 * Common practice, no source; local rules on deposits come first.
 */
import { daysAfter } from '../../domain/calendar.ts';
import type { QuoteSettings } from '../../domain/costs.ts';
import { type Minor, wholeMinor } from '../../domain/money.ts';

export interface Payment {
  kind: 'deposit' | 'balance' | 'whole';
  minor: Minor;
  /** Share of the whole, of a deposit; else null. */
  share: number | null;
  /** ISO date; null for a deposit that is due when the quote is accepted. */
  on: string | null;
}

export interface QuoteTerms {
  /** ISO date; null where the kitchen does not say. */
  validUntil: string | null;
  /** In the order in which they are due. */
  payments: Payment[];
}

export interface QuoteAsk {
  totalMinor: Minor;
  /** ISO dates. */
  dated: string;
  handOverOn: string;
  settings: QuoteSettings;
}

/** ISO dates compare as text. */
const earlier = (one: string, other: string): string => (one < other ? one : other);
const later = (one: string, other: string): string => (one > other ? one : other);

/** `balanceOn`: the day by which all is paid. */
function paymentsOf({ totalMinor, dated, settings }: QuoteAsk, balanceOn: string): Payment[] {
  const { depositShare = 0, depositDueDays } = settings;
  const depositOn = depositDueDays === undefined ? null : daysAfter(dated, depositDueDays);
  const deposit = wholeMinor(totalMinor * depositShare);
  const atOnce = deposit === 0 || deposit === totalMinor || (depositOn ?? dated) >= balanceOn;
  if (atOnce) return [{ kind: 'whole', minor: totalMinor, share: null, on: balanceOn }];
  return [
    { kind: 'deposit', minor: deposit, share: depositShare, on: depositOn },
    { kind: 'balance', minor: totalMinor - deposit, share: null, on: balanceOn },
  ];
}

/**
 * The terms of a quote; null where nothing is set, or where the quote is dated after the hand-over.
 * @example of 100.00, 25 % deposit, rest 7 days before 28 November: 25.00, then 75.00 by 21 November
 */
export function quoteTerms(ask: QuoteAsk): QuoteTerms | null {
  const { dated, handOverOn, settings } = ask;
  if (Object.keys(settings).length === 0 || dated > handOverOn) return null;
  const { validDays, balanceDueDays = 0 } = settings;
  const balanceOn = later(daysAfter(handOverOn, -balanceDueDays), dated);
  const validUntil = validDays === undefined ? null : earlier(daysAfter(dated, validDays), balanceOn);
  const saysWhen = settings.depositShare !== undefined || settings.balanceDueDays !== undefined;
  return { validUntil, payments: saysWhen ? paymentsOf(ask, balanceOn) : [] };
}
