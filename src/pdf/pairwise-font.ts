/**
 * Which text a font sets pair by pair: each letter's glyph is its own, some letters join, and the room after a glyph
 * depends on the next one alone. Such text is set here, from the font's own rules; a letter that may set off any
 * other rule is left to the font library, and so is every text of a font that cannot be judged.
 */
import type { Font } from 'fontkit';
import {
  covered,
  everyRule,
  type LayoutRule,
  type LayoutTable,
  type Ligature,
  layoutTable,
  led,
  ligatures,
  places,
  replacements,
  rulesOf,
  type Script,
} from './layout-tables.ts';
import { isPlainPair, pairKerning } from './pair-kerning.ts';
import type { TrueTypeGlyphs } from './pdfkit-internals.ts';

/** Latin text as it stands on sheets. Left out: combining marks, soft hyphen, fraction slash. */
const PLAIN_TEXT: readonly (readonly [first: number, last: number])[] = [
  [0x20, 0x7e],
  [0xa1, 0xac],
  [0xae, 0x17f],
  [0x2010, 0x2027],
  [0x2030, 0x203a],
  [0x20ac, 0x20ac],
  [0x2122, 0x2122],
  [0x2150, 0x215e],
  [0x2190, 0x2193],
  [0x2212, 0x2212],
  [0x2248, 0x2248],
  [0x2260, 0x2260],
  [0x2264, 0x2265],
];

/** What the font library asks of a font for text that runs to the right. */
const FEATURES = 'rvrn ltra ltrm ccmp locl rlig mark mkmk calt clig liga rclt curs kern'.split(' ');
/** And for the digits of columns. */
const COLUMNS: ReadonlySet<string> = new Set([...FEATURES, 'tnum', 'lnum']);
const PLAIN: ReadonlySet<string> = new Set(FEATURES);

/** Rules by number: one glyph for one, glyphs that join, rules over several places, two glyphs at a time. */
const SINGLE: ReadonlySet<number> = new Set([1, 3]);
const JOIN = 4;
const CONTEXT = { GSUB: 5, GPOS: 7 } as const;
const PAIR = 2;

type Glyphs = ReadonlySet<number>;

export type Joins = ReadonlyMap<number, readonly Ligature[]>;

export interface PairRules {
  glyphOf(code: number): number;
  /** Lookup by lookup what a glyph begins, in the order in which it is tried. */
  joins: readonly Joins[];
  /** Font units. */
  kerning(glyph: number, next: number): number;
}

export interface PairwiseText {
  /** Code points that only ever act on their neighbours. */
  codes: ReadonlySet<number>;
  rules(script: Script, columns: boolean): PairRules;
}

const isContext = ({ type }: LayoutRule, kind: LayoutTable['kind']): boolean =>
  type === CONTEXT[kind] || type === CONTEXT[kind] + 1;

/** The glyphs at which a rule may begin to act, none when some other place of it takes no plain glyph. */
function triggers(rule: LayoutRule, kind: LayoutTable['kind'], glyphs: Glyphs): number[] {
  if (!isContext(rule, kind) || rule.form !== 3) return covered(led(rule.view, 2));
  const { input, around } = places(rule, CONTEXT[kind]);
  const [first, ...more] = input.map(covered);
  const others = [...more, ...around.map(covered)];
  return others.every((place) => place.some((id) => glyphs.has(id))) ? (first ?? []) : [];
}

/** What each letter may look like, by the rules that replace one glyph by one. */
function glyphsOfCodes(font: Font, singles: readonly LayoutRule[]): Map<number, Set<number>> {
  const byCode = new Map<number, Set<number>>();
  for (const [first, last] of PLAIN_TEXT)
    for (let code = first; code <= last; code += 1)
      if (font.hasGlyphForCodePoint(code)) byCode.set(code, new Set([font.glyphForCodePoint(code).id]));
  const changes = singles.flatMap(replacements);
  for (const ids of byCode.values()) for (const [from, to] of changes) if (ids.has(from)) ids.add(to);
  return byCode;
}

interface Judged {
  acting: Glyphs;
  glyphs: Glyphs;
}

/** Glyphs that may set off what is not set here: rules over several places, or joins of what is replaced as well. */
function judged(gsub: LayoutRule[], gpos: LayoutRule[], plain: Glyphs): Judged {
  const singles = gsub.filter(({ type }) => SINGLE.has(type));
  const replaced = new Set(singles.flatMap(replacements).flat());
  const joins = gsub
    .filter(({ type }) => type === JOIN)
    .flatMap(ligatures)
    .filter(([first, { components }]) => [first, ...components].every((id) => plain.has(id)));
  const glyphs = new Set([...plain, ...joins.map(([, { glyph }]) => glyph)]);
  const acting = new Set<number>();
  const other = (rules: LayoutRule[], kind: LayoutTable['kind'], own: (type: number) => boolean) => {
    for (const rule of rules)
      if (!own(rule.type)) for (const id of triggers(rule, kind, glyphs)) acting.add(id);
  };
  other(gsub, 'GSUB', (type) => type === JOIN || SINGLE.has(type));
  other(gpos, 'GPOS', (type) => type === PAIR);
  for (const [first, { components, glyph }] of joins)
    if (
      components.length === 0 ||
      acting.has(glyph) ||
      [first, ...components, glyph].some((id) => replaced.has(id))
    )
      acting.add(first);
  return { acting, glyphs };
}

const knownJoins = new WeakMap<LayoutRule[], Joins>();

/** What a lookup joins among these glyphs, which are the same for all texts of its font. */
function joinsOf(rules: LayoutRule[], glyphs: Glyphs): Joins {
  const known = knownJoins.get(rules);
  if (known) return known;
  const joins = new Map<number, Ligature[]>();
  for (const [first, ligature] of rules.flatMap(ligatures)) {
    if (![first, ...ligature.components].every((id) => glyphs.has(id))) continue;
    joins.set(first, [...(joins.get(first) ?? []), ligature]);
  }
  knownJoins.set(rules, joins);
  return joins;
}

/** The last glyph of a row of replacements, lookup after lookup. */
function replacing(font: Font, lookups: LayoutRule[][]): (code: number) => number {
  const changes = lookups
    .filter(([rule]) => rule !== undefined && SINGLE.has(rule.type))
    .map((rules) => new Map(rules.flatMap(replacements).reverse()));
  return (code) => {
    let { id } = font.glyphForCodePoint(code);
    for (const change of changes) id = change.get(id) ?? id;
    return id;
  };
}

/** Null where nothing can be said. */
export function pairwiseText(font: Font): PairwiseText | null {
  const raw = font as unknown as TrueTypeGlyphs;
  // Rules of other kinds than these tables hold.
  if (['morx', 'kern'].some((tag) => raw.directory.tables[tag] !== undefined)) return null;
  const [substitutions, placements] = [layoutTable(raw, 'GSUB'), layoutTable(raw, 'GPOS')];
  const [gsub, gpos] = [everyRule(substitutions, COLUMNS), everyRule(placements, COLUMNS)];
  const pairs = gpos.filter(({ type }) => type === PAIR);
  const joining = gsub.filter(({ type }) => type === JOIN);
  if ([...pairs, ...joining].some(({ skips }) => skips) || !pairs.every(isPlainPair)) return null;
  const byCode = glyphsOfCodes(
    font,
    gsub.filter(({ type }) => SINGLE.has(type)),
  );
  const plain = new Set([...byCode.values()].flatMap((ids) => [...ids]));
  const { acting, glyphs } = judged(gsub, gpos, plain);
  const codes = [...byCode].filter(([, ids]) => ![...ids].some((id) => acting.has(id))).map(([code]) => code);
  return {
    codes: new Set(codes),
    rules(script, columns) {
      const features = columns ? COLUMNS : PLAIN;
      const lookups = rulesOf(substitutions, script, features);
      const kerning = rulesOf(placements, script, features).filter(([rule]) => rule?.type === PAIR);
      return {
        glyphOf: replacing(font, lookups),
        joins: lookups
          .filter(([rule]) => rule?.type === JOIN)
          .map((rules) => joinsOf(rules, glyphs))
          .filter(({ size }) => size > 0),
        kerning: pairKerning(kerning),
      };
    },
  };
}
