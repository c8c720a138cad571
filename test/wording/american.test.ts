import { describe, expect, it } from 'vitest';
import { americanAround, americanText, inAmerican } from '../../src/wording/american.ts';
import { americanDate, britishDate } from '../../src/wording/date.ts';
import { allWords, sentencesOf } from '../../src/wording/review/all-words.ts';
import { enGbSite } from '../../src/wording/site/en-gb.ts';
import type { SiteWords } from '../../src/wording/site/index.ts';
import { BRITISH_TERMS, termsIn } from '../american/british-terms.ts';
import { spokenWords } from '../american/spoken-words.ts';

/** Addresses are made of them. */
const IDS = /^glossary\.terms\.\d+\.id$/;
/** American dials have none. */
const NO_GAS_MARKS = 'bake.dial.gas';

describe('American English', () => {
  it('says pan, flavor and color, in either case', () => {
    expect(americanText('Tins by flavour; the colour of one tin')).toBe(
      'Pans by flavor; the color of one pan',
    );
    expect(americanText('Tinted, tinned, within')).toBe('Tinted, tinned, within');
  });

  it('leaves the names that a baker gave', () => {
    expect(americanAround('Ann’s tin: use a deeper tin', ['Ann’s tin'])).toBe('Ann’s tin: use a deeper pan');
    const words = inAmerican({ into: (tin: string) => `Into the tin ‘${tin}’` });
    expect(words.into('Old Tin')).toBe('Into the pan ‘Old Tin’');
  });

  it('writes dates as Americans read them', () => {
    expect(americanDate('2026-11-01')).toBe('November 1, 2026');
    expect(britishDate('2026-11-01')).toBe('1 November 2026');
  });

  it('has no British word in any sentence of any area, and every key that British English has', () => {
    const { sentences, unheard } = spokenWords(allWords('en-US'));
    const ours = sentences.filter(([key]) => !IDS.test(key));
    expect(
      ours.flatMap(([key, text]) => termsIn(text, BRITISH_TERMS).map((found) => `${key}: ${found}`)),
    ).toEqual([]);
    // 'Aaround': turned again where it was turned already.
    expect(ours.filter(([, text]) => /\baa/i.test(text))).toEqual([]);
    expect(unheard.length).toBeLessThan(6);
    const american = sentencesOf(allWords('en-US'));
    expect(american.map(([key]) => key).sort()).toEqual(
      sentencesOf(allWords('en-GB'))
        .map(([key]) => key)
        .filter((key) => key !== NO_GAS_MARKS)
        .sort(),
    );
    expect(american.length).toBeGreaterThan(800);
  });
});

describe('A third locale', () => {
  it('does not compile with a sentence missing', () => {
    const { skip: _left, ...frame } = enGbSite.frame;
    // @ts-expect-error one sentence of the frame is missing
    const third: SiteWords = { ...enGbSite, frame };
    expect(Object.keys(third.frame)).not.toContain('skip');
  });
});
