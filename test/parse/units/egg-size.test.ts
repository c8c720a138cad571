import { describe, expect, it } from 'vitest';
import { parseEggCount, parseEggSize, parseEggWeight } from '../../../src/parse/units/egg-size.ts';

const ukLarge = { ok: true, value: { scheme: 'UK', grade: 'large' } };

describe('parseEggSize', () => {
  it('reads country and grade, in any of the usual spellings', () => {
    for (const text of ['UK large', 'uk-large', 'UK L', 'EU large', 'eu l'])
      expect(parseEggSize(text)).toEqual(ukLarge);
    expect(parseEggSize('US extra-large')).toEqual({
      ok: true,
      value: { scheme: 'US', grade: 'extra large' },
    });
    expect(parseEggSize('xl', 'US')).toEqual({ ok: true, value: { scheme: 'US', grade: 'extra large' } });
  });

  it("uses the kitchen's country for a grade alone, and asks when there is none", () => {
    expect(parseEggSize('large', 'UK')).toEqual(ukLarge);
    expect(parseEggSize('M', 'US')).toEqual({ ok: true, value: { scheme: 'US', grade: 'medium' } });
    const result = parseEggSize('large');
    expect(result.ok ? '' : result.problems[0]?.hint).toBe("Write 'UK large' or 'US large'.");
  });

  it.each([
    ['UK jumbo', 'egg-grade-not-in-scheme'],
    ['UK huge', 'egg-size-unknown'],
    ['constructor', 'egg-size-unknown'],
    ['', 'egg-size-unknown'],
  ])('refuses %s: %s', (text, code) => {
    const result = parseEggSize(text);
    expect(result.ok ? '' : result.problems[0]?.code).toBe(code);
  });
});

describe('parseEggWeight and parseEggCount', () => {
  it('takes a weighed egg for its own size', () => {
    expect(parseEggWeight('52 g')).toEqual({
      ok: true,
      value: { size: null, shelledG: 52, source: 'weighed' },
    });
    const kilo = parseEggWeight('1 kg');
    expect(kilo.ok ? '' : kilo.problems[0]?.code).toBe('quantity-out-of-range');
  });

  it('counts eggs, yolks and whites at the size that is named, else at the size that is given', () => {
    const each = { shelledG: 50, scheme: 'US' as const };
    expect(parseEggCount('5', 'egg', each)).toEqual({ ok: true, value: 250 });
    expect(parseEggCount('2½', 'egg', each)).toEqual({ ok: true, value: 125 });
    expect(parseEggCount('3', 'yolk', each)).toEqual({ ok: true, value: 51 });
    expect(parseEggCount('2 medium', 'egg', each)).toEqual({ ok: true, value: 88 });
    expect(parseEggCount('2 UK medium', 'white', each)).toEqual({ ok: true, value: 67.3728 });
  });

  it.each([
    ['0', 'quantity-not-positive'],
    ['some', 'quantity-unreadable'],
    ['5000', 'quantity-out-of-range'],
    ['2 brown', 'egg-size-unknown'],
  ])('refuses %s eggs: %s', (text, code) => {
    const result = parseEggCount(text, 'egg', { shelledG: 50, scheme: 'US' });
    expect(result.ok ? '' : result.problems[0]?.code).toBe(code);
  });
});
