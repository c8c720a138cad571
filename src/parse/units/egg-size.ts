import type { EggGrade, EggPart, EggScheme, EggSize } from '../../domain/egg.ts';
import { gradesOf, PART_SHARE, tableShelledG } from '../../domain/egg.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { refuse } from '../problems.ts';
import { orList, quote } from '../quote.ts';
import { parseMass } from './mass.ts';
import { leadingNumber, tidy } from './number.ts';
import { plainSpaces } from './quantity.ts';

const GRADES: Readonly<Record<string, EggGrade>> = {
  s: 'small',
  small: 'small',
  m: 'medium',
  medium: 'medium',
  l: 'large',
  large: 'large',
  xl: 'extra large',
  'extra large': 'extra large',
  'very large': 'extra large',
  jumbo: 'jumbo',
};

/** The EU's grades are the UK's. */
const SCHEMES: Readonly<Record<string, EggScheme>> = { uk: 'UK', eu: 'UK', us: 'US' };

/**
 * An egg size: 'UK medium', 'us-large', 'EU M', or 'large' alone where the kitchen's scheme is known.
 * Fails on an unknown grade, on a grade the scheme does not have, and without a scheme.
 * @example parseEggSize('us-large') // { ok: true, value: { scheme: 'US', grade: 'large' } }
 */
export function parseEggSize(text: string, kitchenScheme?: EggScheme): Result<EggSize> {
  const words = plainSpaces(text).trim().toLowerCase().split(/[ -]+/);
  const named = lookUp(SCHEMES, words[0] ?? '');
  const grade = lookUp(GRADES, (named === undefined ? words : words.slice(1)).join(' '));
  if (grade === undefined) {
    return refuse(
      'egg-size-unknown',
      `${quote(text)} is not an egg size`,
      "Write it like 'UK medium' or 'US large': small, medium, large, extra large, and jumbo in the US.",
    );
  }
  const scheme = named ?? kitchenScheme;
  if (scheme === undefined) {
    return refuse(
      'egg-scheme-missing',
      `${quote(text)} means different eggs in the UK and the US`,
      `Write 'UK ${grade}' or 'US ${grade}'.`,
    );
  }
  if (tableShelledG({ scheme, grade }) !== null) return succeed({ scheme, grade });
  return refuse(
    'egg-grade-not-in-scheme',
    `${scheme} eggs are not sold as '${grade}'`,
    `Use ${orList(gradesOf(scheme).map((known) => `'${scheme} ${known}'`))}.`,
  );
}

function lookUp<T>(table: Readonly<Record<string, T>>, key: string): T | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}

/** What one egg gives, shelled. */
export interface EggWeight {
  /** Null when the eggs were weighed and no grade was named. */
  size: EggSize | null;
  shelledG: number;
  source: 'table' | 'weighed';
}

const LIGHTEST_G = 20;
const HEAVIEST_G = 120;

/** The mean shelled mass of one egg, g: '51 g'. Fails outside 20 to 120 g. */
export function parseShelledMass(text: string): Result<number> {
  const grams = parseMass(text);
  if (!grams.ok || (grams.value >= LIGHTEST_G && grams.value <= HEAVIEST_G)) return grams;
  return refuse(
    'quantity-out-of-range',
    `${quote(text)} is too ${grams.value < LIGHTEST_G ? 'light' : 'heavy'} for one egg without its shell`,
    `Weigh a few eggs without shell and write the mean, from ${LIGHTEST_G} g to ${HEAVIEST_G} g.`,
  );
}

/**
 * An egg size or the baker's own shelled mass: 'UK medium', 'L', '52 g'.
 * @example parseEggWeight('52 g') // { ok: true, value: { size: null, shelledG: 52, source: 'weighed' } }
 */
export function parseEggWeight(text: string, kitchenScheme?: EggScheme): Result<EggWeight> {
  if (/^\s*[\d.]/.test(text)) {
    const grams = parseShelledMass(text);
    return grams.ok ? succeed({ size: null, shelledG: grams.value, source: 'weighed' }) : grams;
  }
  const size = parseEggSize(text, kitchenScheme);
  if (!size.ok) return size;
  return succeed({ size: size.value, shelledG: tableShelledG(size.value) ?? 0, source: 'table' });
}

const HALF_THOUSAND = 500;

/**
 * Shelled grams of a count of eggs, yolks or whites: '5', '2 large', '2½'. The size named wins over `each`.
 * Fails on anything else than a number with an optional size.
 */
export function parseEggCount(
  text: string,
  part: EggPart,
  each: { shelledG: number; scheme?: EggScheme },
): Result<number> {
  const plain = plainSpaces(text).trim();
  const number = leadingNumber(plain);
  if (number === null || number.value > HALF_THOUSAND) {
    return refuse(
      number === null ? 'quantity-unreadable' : 'quantity-out-of-range',
      `${quote(plain)} cannot be read as a number of eggs`,
      "Write a count like 5 or '2 UK large', at most 500, or a shelled weight like 250 g.",
    );
  }
  if (number.value <= 0) {
    return refuse(
      'quantity-not-positive',
      `${quote(plain)} is no eggs`,
      'Leave the line out, or write a count.',
    );
  }
  const named = plain.slice(number.length).trim();
  if (named === '') return succeed(tidy(number.value * each.shelledG * PART_SHARE[part]));
  const size = parseEggSize(named, each.scheme);
  if (!size.ok) return size;
  return succeed(tidy(number.value * (tableShelledG(size.value) ?? 0) * PART_SHARE[part]));
}
