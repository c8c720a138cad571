/**
 * A list of tins: '2 x round-6, 1 x square 200mm x 75mm'. Each item is a count, an x and either the id of a tin
 * on the shelf or a description whose last length is the depth. Columns in problems count from the list's start.
 */
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { SHAPE_KINDS } from '../domain/shape.ts';
import type { Tin, TinCount } from '../domain/tin.ts';
import { nearest, suggest } from './nearest.ts';
import { error, refuse, shiftColumn } from './problems.ts';
import { quote } from './quote.ts';
import { describedTin, type OutlineEntry } from './tins/described-tin.ts';
import { plainSpaces } from './units/quantity.ts';

export interface SpecContext {
  tins: readonly Tin[];
  outlines: readonly OutlineEntry[];
  /** Ids of tins that are there but wrong: their own problem is enough. Null when no tin could be read. */
  brokenTins?: readonly string[] | null;
}

const MOST = 500;
const COUNT = /^(\d+)\s*(?:x(?![a-z])|×)\s*/i;
const EXAMPLE = "Write it like '2 x round 6in x 3in'";

function countProblem(item: string): Problem {
  return error(
    'spec-count',
    `${quote(item)} does not start with how many`,
    `${EXAMPLE}: a whole number from 1 to ${MOST}, an x, the tin.`,
  );
}

/** A word with digits after a hyphen, or one alone, is meant as an id; more words as a description. */
function looksLikeId(text: string): boolean {
  return !/\s/.test(text) && !SHAPE_KINDS.some((kind) => kind === text.toLowerCase());
}

function readTin(text: string, at: number, context: SpecContext): Result<Tin> {
  const owned = context.tins.find((tin) => tin.id === text);
  if (owned !== undefined) return succeed(owned);
  if (!looksLikeId(text)) return describedTin(text, at, context.outlines);
  if (context.brokenTins === null || context.brokenTins?.includes(text)) return fail();
  const ids = context.tins.map((tin) => tin.id);
  const near = nearest(text, ids);
  const hint = `${suggest(text, ids, 'tins')}${near === null ? ` Or describe it: '1 x round 6in x 3in'.` : ''}`;
  return fail(shiftColumn(error('tin-unknown', `There is no tin ${quote(text)}`, hint), at));
}

function readItem(item: string, at: number, context: SpecContext): Result<TinCount> {
  const match = COUNT.exec(item);
  const count = Number(match?.[1] ?? 0);
  if (match === null || count < 1 || count > MOST) return fail(shiftColumn(countProblem(item), at));
  const text = item.slice(match[0].length).trimEnd();
  if (text === '') {
    return fail(
      shiftColumn(error('spec-unreadable', `${quote(item)} does not name a tin`, `${EXAMPLE}.`), at),
    );
  }
  const tin = readTin(text, at + match[0].length, context);
  return tin.ok ? succeed({ tin: tin.value, count }) : tin;
}

/**
 * The tins of a list, in its order, or everything that is wrong with it.
 * @example parseSpec('2 x round 6in x 3in, 1 x square-8', { tins, outlines })
 */
export function parseSpec(written: string, context: SpecContext): Result<TinCount[]> {
  const text = plainSpaces(written);
  if (text.trim() === '') return refuse('spec-empty', 'The list of tins is empty', `${EXAMPLE}.`);
  const found: TinCount[] = [];
  let sound = true;
  const problems: Problem[] = [];
  let at = 0;
  for (const piece of text.split(',')) {
    const lead = piece.length - piece.trimStart().length;
    const item = readItem(piece.trim(), at + lead, context);
    sound &&= item.ok;
    if (item.ok) found.push(item.value);
    else problems.push(...item.problems);
    at += piece.length + 1;
  }
  return sound ? succeed(found) : fail(...problems);
}
