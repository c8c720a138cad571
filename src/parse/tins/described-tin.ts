/** A tin described on the spot: 'round 6in x 3in' → a tin nobody owns yet. The last length is the depth. */
import type { Outline } from '../../domain/outline.ts';
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import { SHAPE_KINDS, type ShapeKind } from '../../domain/shape.ts';
import type { Tin } from '../../domain/tin.ts';
import type { LengthUnit } from '../../domain/units.ts';
import { suggest } from '../nearest.ts';
import { error, refuse, shiftColumn } from '../problems.ts';
import { quote, withArticle } from '../quote.ts';
import { type LengthAsWritten, parseLength } from '../units/length.ts';
import { parseVolume } from '../units/volume.ts';
import { type ShapeExtras, type SizeKey, type Sizes, shapeOf } from './shape-sizes.ts';
import { specTokens, type Token } from './spec-tokens.ts';
import { SHAPE_NAME, SPEC_FORMS } from './spec-words.ts';
import { tinProblems } from './tin-sense.ts';

export interface OutlineEntry {
  id: string;
  outline: Outline;
}

interface Measured {
  sizes: Sizes;
  extras: ShapeExtras;
  unit: LengthUnit | null;
}

/** An outline's id is a whole word, whatever it is made of: 'outline grid-2x2 x 3in'. */
const SEPARATOR = /\s*×\s*|\s+x\s+|(?<=[a-z0-9"″”])(?<!^\s*outline\s+\S*)x(?=[\d.])/gi;

/** 'round 6in x 3in' → ['round 6in', '3in'] with their offsets. */
function splitAtX(text: string, offset: number): { text: string; at: number }[] {
  const pieces: { text: string; at: number }[] = [];
  let from = 0;
  for (const match of text.matchAll(SEPARATOR)) {
    pieces.push({ text: text.slice(from, match.index), at: offset + from });
    from = match.index + match[0].length;
  }
  pieces.push({ text: text.slice(from), at: offset + from });
  return pieces;
}

function fits(tokens: readonly Token[], order: readonly string[]): boolean {
  return (
    tokens.length === order.length &&
    tokens.every((token, index) => {
      const wanted = order[index] ?? '';
      if (wanted === '<id>') return true;
      return wanted.startsWith('<') ? token.kind === 'measurement' : token.text.toLowerCase() === wanted;
    })
  );
}

function measureTokens(
  tokens: readonly Token[],
  order: readonly string[],
  outlines: readonly OutlineEntry[],
): Result<Measured> {
  const measured: Measured = { sizes: {}, extras: {}, unit: null };
  const problems: Problem[] = [];
  tokens.forEach((token, index) => {
    const wanted = order[index] ?? '';
    if (!wanted.startsWith('<')) return;
    const taken = takeToken(token, wanted.slice(1, -1), measured, outlines);
    problems.push(...taken.map((problem) => shiftColumn(problem, token.at)));
  });
  return problems.length > 0 ? fail(...problems) : succeed(measured);
}

function takeToken(token: Token, name: string, into: Measured, outlines: readonly OutlineEntry[]): Problem[] {
  if (name === 'id') {
    const found = outlines.find((entry) => entry.id === token.text);
    if (found === undefined) return [outlineProblem(token.text, outlines)];
    into.extras = { outlineId: found.id, outline: found.outline };
    return [];
  }
  if (name === 'volume') {
    const volume = parseVolume(token.text);
    if (!volume.ok) return volume.problems;
    into.extras = { volumeMl: volume.value.ml };
    return [];
  }
  const length = parseLength(token.text);
  if (!length.ok) return length.problems;
  into.sizes[name as SizeKey] = length.value.mm;
  into.unit ??= length.value.unit;
  return [];
}

/** The problem of an outline that is not in the outlines folder. */
export function outlineProblem(id: string, outlines: readonly OutlineEntry[]): Problem {
  const known = outlines.map((entry) => entry.id);
  return error('outline-unknown', `There is no outline ${quote(id)}`, suggest(id, known, 'outlines'));
}

function depthOf(
  kind: ShapeKind,
  pieces: readonly { text: string; at: number }[],
  sizes: Sizes,
): Result<LengthAsWritten | null> {
  const example = `Write it like '${SPEC_FORMS[kind].example}': the last length is the depth.`;
  const [first, depth, extra] = pieces;
  if (extra !== undefined) {
    return fail(
      shiftColumn(
        error('spec-depth-repeated', `${quote(extra.text)} is one length too many`, example),
        extra.at,
      ),
    );
  }
  if (depth !== undefined) {
    const length = parseLength(depth.text);
    return length.ok ? length : fail(...length.problems.map((problem) => shiftColumn(problem, depth.at)));
  }
  if (kind === 'dome' && sizes.across !== undefined) return succeed(null);
  const end = (first?.at ?? 0) + (first?.text.length ?? 0);
  return fail(shiftColumn(error('spec-depth-missing', `This ${kind} tin has no depth`, example), end));
}

/** The shape a description starts with, or why it cannot be told. */
function shapeNamed(word: string): Result<{ kind: ShapeKind; petals?: number }> {
  const match = SHAPE_NAME.exec(word);
  const kind = SHAPE_KINDS.find((known) => known === match?.[1]?.toLowerCase());
  const names = SHAPE_KINDS.map((known) => (known === 'petal' ? 'petal6' : known));
  if (kind === undefined || (kind !== 'petal' && match?.[2] !== undefined)) {
    // 'long octagon 12in by …': the hyphen between a shape's two words is missing.
    const begun = names.find((known) => known.startsWith(`${word.toLowerCase()}-`));
    const hint = suggest(begun ?? word, names, 'shapes');
    return refuse('shape-unknown', `${quote(word)} is not a shape of tin`, hint);
  }
  if (kind !== 'petal') return succeed({ kind });
  if (match?.[2] !== undefined) return succeed({ kind, petals: Number(match[2].slice(0, 4)) });
  return refuse(
    'tin-petals',
    'This petal tin does not say how many petals',
    "Write the number: 'petal6 9in x 3in'.",
  );
}

/**
 * A tin from its description, which starts `offset` characters into the list of tins.
 * @example describedTin('round 6in x 3in', 4, []) // a tin 152.4 mm across and 76.2 mm deep, owned: 0
 */
export function describedTin(text: string, offset: number, outlines: readonly OutlineEntry[]): Result<Tin> {
  const [head, ...rest] = splitAtX(text, offset);
  const tokens = specTokens(head?.text ?? '', head?.at ?? offset);
  const name = shapeNamed(tokens[0]?.text ?? text);
  if (!name.ok) return fail(...name.problems.map((problem) => shiftColumn(problem, offset)));
  const { kind, petals } = name.value;
  const form = SPEC_FORMS[kind];
  const sizeTokens = tokens.slice(1);
  const order = form.orders.map((words) => words.split(' ')).find((words) => fits(sizeTokens, words));
  if (order === undefined) {
    const message = `${quote(text)} does not give the measurements of ${withArticle(kind)} tin`;
    return fail(shiftColumn(error('spec-unreadable', message, `Write it like '${form.example}'.`), offset));
  }
  const measured = measureTokens(sizeTokens, order, outlines);
  const depth = depthOf(
    kind,
    [{ text: head?.text ?? '', at: offset }, ...rest],
    measured.ok ? measured.value.sizes : { across: 0 },
  );
  if (!measured.ok || !depth.ok) {
    return fail(...(measured.ok ? [] : measured.problems), ...(depth.ok ? [] : depth.problems));
  }
  return finishTin(
    text,
    offset,
    kind,
    { ...measured.value, extras: withPetals(measured.value.extras, petals) },
    depth.value,
  );
}

function withPetals(extras: ShapeExtras, petals: number | undefined): ShapeExtras {
  return petals === undefined ? extras : { ...extras, petals };
}

function finishTin(
  text: string,
  offset: number,
  kind: ShapeKind,
  measured: Measured,
  depth: LengthAsWritten | null,
): Result<Tin> {
  const { sizes, extras } = measured;
  const depthMm = depth?.mm ?? (sizes.across ?? 0) / 2;
  const shape = shapeOf(kind, sizes, extras);
  const wrong = tinProblems(kind, sizes, depthMm, extras);
  if (shape === null || wrong.length > 0) {
    return fail(...wrong.map(({ problem }) => shiftColumn(problem, offset)));
  }
  const unit = measured.unit ?? depth?.unit ?? 'mm';
  return succeed({ id: slug(text), name: tinName(text), owned: 0, unit, shape, depthMm });
}

function tinName(text: string): string {
  const spaced = text.trim().replace(/\s+/g, ' ').replace(SEPARATOR, ' × ');
  return spaced.charAt(0).toUpperCase() + spaced.slice(1);
}

function slug(text: string): string {
  return text
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
