/**
 * The shape that every quantity with a unit shares: a number, a unit, and for some a second, smaller pair
 * (1 lb 2 oz). What differs between lengths, masses and the rest is told by a QuantityKind.
 */
import type { Problem } from '../../domain/problem.ts';
import type { Result } from '../../domain/result.ts';
import { error, refuse, shiftColumn } from '../problems.ts';
import { orList, quote } from '../quote.ts';
import { leadingNumber, tidy } from './number.ts';

export interface QuantityKind<U extends string> {
  /** 'a length' */
  called: string;
  /** Spellings, lower case, to the unit they mean. */
  spellings: Readonly<Record<string, U>>;
  /** Size of each unit in the one used inside. */
  per: Readonly<Record<U, number>>;
  /** The units worth naming in a message. */
  offered: readonly U[];
  /** Spellings that could mean two things, with what to write instead. */
  ambiguous?: Readonly<Record<string, string>>;
  /** Whether '1 lb 2 oz' is a way of writing it. */
  compound: boolean;
  /** An example that can be read. */
  example: string;
  /** Smallest and largest value, inside unit, and how they are said. */
  least: number;
  most: number;
  range: string;
}

export interface Amount<U extends string> {
  /** In the unit used inside. */
  total: number;
  /** The unit of the first part. */
  unit: U;
}

export interface AmountOptions {
  /** Whether 0 is a sensible value here. */
  zero?: boolean;
}

interface Part<U extends string> {
  value: number;
  unit: U;
}

/** Odd spaces become plain ones; length and columns stay as they are. */
export function plainSpaces(text: string): string {
  return text.replace(/[\u00a0\u2009\u202f\t]/g, ' ');
}

const UNIT_WORD = /^ *([^\d\s.,;+-]+(?: (?:fl|oz|pint|qt|quarts?)\b\.?)*)/i;

function unitProblem<U extends string>(spelling: string, number: string, kind: QuantityKind<U>): Problem {
  const choice = kind.ambiguous?.[spelling.toLowerCase()];
  if (choice !== undefined) {
    return error('unit-ambiguous', `${quote(spelling)} can mean two different units`, `Write ${choice}.`);
  }
  return error(
    'unit-unknown',
    `${quote(spelling)} is not a unit of ${kind.called.replace(/^an? /, '')}`,
    `Use ${orList(kind.offered)}, for example ${number}${kind.offered[0] ?? ''}.`,
  );
}

function nextPart<U extends string>(
  rest: string,
  kind: QuantityKind<U>,
): Result<Part<U> & { length: number }> {
  const number = leadingNumber(rest);
  if (number === null) return unreadable(rest, kind);
  const digits = rest.slice(0, number.length);
  const after = rest.slice(number.length);
  const word = UNIT_WORD.exec(after);
  if (word === null) {
    if (after.trim() !== '') return unreadable(rest, kind);
    const fixes = kind.offered.map((unit) => `${digits} ${unit}`);
    return refuse('unit-missing', `${quote(digits)} has no unit`, `Write ${orList(fixes)}.`);
  }
  const spelling = (word[1] ?? '').trim();
  const unit = Object.hasOwn(kind.spellings, spelling.toLowerCase())
    ? kind.spellings[spelling.toLowerCase()]
    : undefined;
  if (unit === undefined) return { ok: false, problems: [unitProblem(spelling, digits, kind)] };
  return { ok: true, value: { value: number.value, unit, length: number.length + word[0].length } };
}

function unreadable<U extends string>(text: string, kind: QuantityKind<U>): Result<never> {
  const comma = /\d,\d/.test(text) ? ' Use a point for decimals and nothing between thousands.' : '';
  return refuse(
    'quantity-unreadable',
    `${quote(text.trim())} cannot be read as ${kind.called}`,
    `Write it like ${kind.example}.${comma}`,
  );
}

function readParts<U extends string>(text: string, kind: QuantityKind<U>): Result<Part<U>[]> {
  const parts: Part<U>[] = [];
  let at = 0;
  while (at < text.length) {
    const part = nextPart(text.slice(at), kind);
    if (!part.ok) return { ok: false, problems: part.problems.map((problem) => shiftColumn(problem, at)) };
    const before = parts[parts.length - 1];
    if (before !== undefined && (!kind.compound || kind.per[part.value.unit] >= kind.per[before.unit])) {
      return refuse(
        'quantity-order',
        `${quote(text)} does not run from a larger unit to a smaller one`,
        `Write ${kind.called} like ${kind.example}.`,
      );
    }
    parts.push(part.value);
    at += part.value.length;
    while (text[at] === ' ') at += 1;
  }
  return { ok: true, value: parts };
}

function rangeProblem<U extends string>(text: string, total: number, kind: QuantityKind<U>): Problem | null {
  if (total <= 0) {
    return error('quantity-not-positive', `${quote(text)} is not more than nothing`, `Use ${kind.range}.`);
  }
  if (total >= kind.least && total <= kind.most) return null;
  return error(
    'quantity-out-of-range',
    `${quote(text)} is too ${total < kind.least ? 'small' : 'large'} for ${kind.called}`,
    `Use ${kind.range}. Check the unit.`,
  );
}

/** A quantity in the unit used inside, or what is wrong with it. Columns count from the start of the text. */
export function parseAmount<U extends string>(
  written: string,
  kind: QuantityKind<U>,
  options: AmountOptions = {},
): Result<Amount<U>> {
  const text = plainSpaces(written).trim();
  if (/^[-−]/.test(text)) {
    return refuse('quantity-not-positive', `${quote(text)} is below nothing`, `Use ${kind.range}.`);
  }
  if (text === '') return unreadable(text, kind);
  const parts = readParts(text, kind);
  if (!parts.ok) return parts;
  const total = tidy(parts.value.reduce((sum, part) => sum + part.value * kind.per[part.unit], 0));
  const unit = parts.value[0]?.unit;
  if (unit === undefined) return unreadable(text, kind);
  if (total === 0 && options.zero === true) return { ok: true, value: { total, unit } };
  const wrong = rangeProblem(text, total, kind);
  return wrong ? { ok: false, problems: [wrong] } : { ok: true, value: { total, unit } };
}
