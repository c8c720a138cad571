/**
 * Which text a font sets pair by pair: each letter's glyph is its own, and the room after it depends on the next
 * letter alone. Such a text can be put together from pairs already seen. Judged by the font's own rules: a letter
 * that may set off a rule over more glyphs than two is left out. A font that cannot be judged is shaped whole.
 */
import type { Font } from 'fontkit';
import {
  type Coverage,
  covered,
  type LayoutRule,
  type LayoutSubtable,
  type LayoutTable,
  rulesOf,
} from './layout-tables.ts';

/** Latin text as it stands on sheets. Left out: combining marks, soft hyphen, fraction slash. */
const PLAIN_TEXT =
  /^[\x20-\x7e\u00a1-\u00ac\u00ae-\u017f\u2010-\u2027\u2030-\u203a\u20ac\u2122\u2150-\u215e\u2190-\u2193\u2212\u2248\u2260\u2264\u2265]$/;

/** What the font library asks of a font for text that runs to the right, and the digits of columns. */
const FEATURES: ReadonlySet<string> = new Set(
  'rvrn ltra ltrm ccmp locl rlig mark mkmk calt clig liga rclt curs kern tnum lnum'.split(' '),
);

/** Rules by number: one glyph for one, two glyphs at a time, glyphs that join. */
const SINGLE = { GSUB: [1, 3], GPOS: [1] };
const PAIR = 2;
const JOIN = 4;

interface FontTables {
  GSUB?: LayoutTable;
  GPOS?: LayoutTable;
  morx?: unknown;
}

type Glyphs = ReadonlySet<number>;

export interface PairwiseText {
  /** Code points that only ever act on their neighbours. */
  codes: ReadonlySet<number>;
  /** Two glyphs that with a third may join: no pair tells. */
  undecided: ReadonlySet<number>;
}

/** Two glyph numbers as one. */
export const glyphPair = (first: number, second: number): number => first * 0x10000 + second;

const meets = (coverage: Coverage, glyphs: Glyphs): boolean => covered(coverage).some((id) => glyphs.has(id));

function replacements({
  coverage,
  deltaGlyphID,
  substitute,
  alternateSet,
}: LayoutSubtable): [number, number][] {
  const others = substitute?.toArray() ?? alternateSet?.toArray().map(([first]) => first);
  return covered(coverage).map((id, index) => [id, others?.[index] ?? (id + (deltaGlyphID ?? 0)) & 0xffff]);
}

/** What each letter may look like, by the rules that replace one glyph by one. */
function glyphsOfCodes(font: Font, rules: LayoutRule[]): Map<number, Set<number>> {
  const plain = font.characterSet.filter((code) => PLAIN_TEXT.test(String.fromCodePoint(code)));
  const glyphs = new Map(plain.map((code) => [code, new Set([font.glyphForCodePoint(code).id])]));
  const single = rules.filter(({ type }) => SINGLE.GSUB.includes(type));
  for (const [from, to] of single.flatMap(({ subtable }) => replacements(subtable)))
    for (const ids of glyphs.values()) if (ids.has(from)) ids.add(to);
  return glyphs;
}

/** The glyphs at which a rule may begin to act, none when some other place of it takes no plain glyph. */
function triggers({ subtable }: LayoutRule, glyphs: Glyphs): number[] {
  const { version, coverage, markCoverage, mark1Coverage, coverages, inputCoverage } = subtable;
  if (version !== 3 || (!inputCoverage && !coverages))
    return covered(coverage ?? markCoverage ?? mark1Coverage);
  const input = inputCoverage ?? coverages ?? [];
  const places = [...(subtable.backtrackCoverage ?? []), ...input, ...(subtable.lookaheadCoverage ?? [])];
  return places.every((place) => meets(place, glyphs)) ? covered(input[0]) : [];
}

/** The first two of each three or more that join: on their own they may stay two. */
function longJoins({ coverage, ligatureSets }: LayoutSubtable, glyphs: Glyphs): number[] {
  const sets = ligatureSets?.toArray() ?? [];
  return covered(coverage).flatMap((first, index) =>
    (sets[index] ?? [])
      .filter(({ components }) => components.length > 1 && components.every((id) => glyphs.has(id)))
      .map(({ components }) => glyphPair(first, components[0] ?? 0)),
  );
}

/** Null where nothing can be said. */
export function pairwiseText(font: Font): PairwiseText | null {
  const { GSUB, GPOS, morx } = font as Font & FontTables;
  if (morx !== undefined && morx !== null) return null;
  const substitutions = rulesOf(GSUB, 'GSUB', FEATURES);
  const placements = rulesOf(GPOS, 'GPOS', FEATURES);
  const joins = substitutions.filter(({ type }) => type === JOIN);
  const pairs = placements.filter(({ type }) => type === PAIR);
  if ([...joins, ...pairs].some(({ skips }) => skips)) return null;
  const byCode = glyphsOfCodes(font, substitutions);
  const glyphs = new Set([...byCode.values()].flatMap((ids) => [...ids]));
  const wide = [
    ...substitutions.filter(({ type }) => type !== JOIN && !SINGLE.GSUB.includes(type)),
    ...placements.filter(({ type }) => type !== PAIR && !SINGLE.GPOS.includes(type)),
  ];
  const acting = new Set(wide.flatMap((rule) => triggers(rule, glyphs)));
  const codes = [...byCode].filter(([, ids]) => ![...ids].some((id) => acting.has(id))).map(([code]) => code);
  return {
    codes: new Set(codes),
    undecided: new Set(joins.flatMap(({ subtable }) => longJoins(subtable, glyphs))),
  };
}
