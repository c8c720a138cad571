import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';

const ID = /^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/;
const LONGEST_ID = 60;

/** 'Eight inch, Round' → 'eight-inch-round': an id that could be meant. */
function asId(text: string): string {
  const plain = text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^[^a-z]+|-$/g, '')
    .slice(0, LONGEST_ID)
    .replace(/-$/, '');
  return plain === '' ? 'round-8' : plain;
}

/**
 * An id: small letters and digits in words joined by hyphens, starting with a letter, at most 60 characters.
 * @example parseId('round-8') // { ok: true, value: 'round-8' }
 */
export function parseId(text: string): Result<string> {
  if (ID.test(text) && text.length <= LONGEST_ID) return succeed(text);
  return refuse(
    'id-not-kebab',
    `${quote(text)} cannot be used as a short name`,
    `Use small letters, digits and hyphens, starting with a letter: '${asId(text)}'.`,
  );
}

/** A web address that links can start from: https or http, nothing secret in it. */
export function parseSiteUrl(text: string): Result<string> {
  const plain = /^https?:\/\/[a-z0-9.-]+(?::\d{1,5})?(?:\/[\w.~%/-]*)?$/i;
  if (text.length <= 200 && plain.test(text)) return succeed(text);
  return refuse(
    'url-unreadable',
    `${quote(text)} is not a web address`,
    'Write it like https://bakery.example.org/cakes/.',
  );
}

/**
 * A file below the content folder: 'assets/logo.svg'. Fails on '..', on absolute paths, and on signs that mean
 * something else on another system.
 */
export function parseContentPath(text: string): Result<string> {
  const parts = text.split('/');
  const safe = parts.every((part) => /^[\w][\w .,()-]*$/u.test(part) && !part.endsWith('.'));
  if (safe && text.length <= 200) return succeed(text);
  return fail(pathProblem(text));
}

function pathProblem(text: string): Problem {
  const hint = "Put the file below the content folder and write its path from there: 'assets/logo.svg'.";
  return error('path-outside-content', `${quote(text)} is not a path below the content folder`, hint);
}
