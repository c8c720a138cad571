/** Terms of quotes by hand: days counted on a calendar, pence on paper. Every figure is invented. */
import { describe, expect, it } from 'vitest';
import { type QuoteAsk, quoteTerms } from '../../../src/compute/costs/quote-terms.ts';

const USUAL = { validDays: 14, depositShare: 0.25, depositDueDays: 14, balanceDueDays: 7 };
const ask = (changes: Partial<QuoteAsk> = {}): QuoteAsk => ({
  totalMinor: 29_250,
  dated: '2026-11-01',
  handOverOn: '2026-11-28',
  settings: USUAL,
  ...changes,
});

const due = (changes: Partial<QuoteAsk> = {}) =>
  quoteTerms(ask(changes))?.payments.map(({ kind, minor, on }) => [kind, minor, on]);

describe('the terms of a quote', () => {
  it('are a deposit to the penny and the rest: a quarter of 292.50 is 73.125, so 73.13 and 219.37', () => {
    expect(quoteTerms(ask())).toEqual({
      validUntil: '2026-11-15',
      payments: [
        { kind: 'deposit', minor: 7313, share: 0.25, on: '2026-11-15' },
        { kind: 'balance', minor: 21_937, share: null, on: '2026-11-21' },
      ],
    });
    expect(7313 + 21_937).toBe(29_250);
  });

  it('count days over the ends of months and of February', () => {
    expect(
      due({ dated: '2028-02-20', handOverOn: '2028-03-06', settings: { ...USUAL, depositDueDays: 3 } }),
    ).toEqual([
      ['deposit', 7313, '2028-02-23'],
      ['balance', 21_937, '2028-02-28'],
    ]);
  });

  it('ask for the whole at once where the rest would be due no later than the deposit', () => {
    expect(due({ handOverOn: '2026-11-20' })).toEqual([['whole', 29_250, '2026-11-13']]);
    // A week before is gone by: due as the quote is dated, and it holds no longer than that.
    const late = quoteTerms(ask({ handOverOn: '2026-11-04' }));
    expect(late).toMatchObject({ validUntil: '2026-11-01', payments: [{ kind: 'whole', on: '2026-11-01' }] });
  });

  it('ask for no deposit where it is nothing, and for the rest at the hand-over where nothing is said', () => {
    expect(due({ settings: { depositShare: 0 } })).toEqual([['whole', 29_250, '2026-11-28']]);
    expect(due({ settings: { depositShare: 0.5 } })).toEqual([
      ['deposit', 14_625, null],
      ['balance', 14_625, '2026-11-28'],
    ]);
  });

  it('are silent of what the kitchen does not say, and of a quote dated after the hand-over', () => {
    expect(quoteTerms(ask({ settings: {} }))).toBeNull();
    expect(quoteTerms(ask({ settings: { validDays: 10 } }))).toEqual({
      validUntil: '2026-11-11',
      payments: [],
    });
    expect(quoteTerms(ask({ dated: '2026-11-29' }))).toBeNull();
  });
});
