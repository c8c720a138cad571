/** The room between two glyphs by a font's rules for pairs (OpenType 1.9, GPOS type 2, from memory). */
import { covered, type LayoutRule, led } from './layout-tables.ts';

/** Rules that move one glyph, along the line alone; others are left to the font library. */
const ADVANCE_ALONE: ReadonlySet<number> = new Set([0, 4]);

export const isPlainPair = ({ view }: LayoutRule): boolean =>
  ADVANCE_ALONE.has(view.getUint16(4)) && view.getUint16(6) === 0;

interface PairRule {
  rule: LayoutRule;
  /** Places of the first glyphs in the rule. */
  first: ReadonlyMap<number, number>;
}

/** The class of a glyph; 0 for what no class names. */
function classOf(classes: DataView, glyph: number): number {
  if (classes.getUint16(0) === 1) {
    const index = glyph - classes.getUint16(2);
    return index >= 0 && index < classes.getUint16(4) ? classes.getUint16(6 + 2 * index) : 0;
  }
  let [low, high] = [0, classes.getUint16(2) - 1];
  while (low <= high) {
    const at = (low + high) >> 1;
    if (glyph < classes.getUint16(4 + 6 * at)) high = at - 1;
    else if (glyph > classes.getUint16(6 + 6 * at)) low = at + 1;
    else return classes.getUint16(8 + 6 * at);
  }
  return 0;
}

/** Font units; null where the rule does not speak of the two. */
function roomBy({ rule: { form, view }, first }: PairRule, glyph: number, next: number): number | null {
  const index = first.get(glyph);
  if (index === undefined) return null;
  const moves = view.getUint16(4) !== 0;
  if (form === 2) {
    const column = classOf(led(view, 10), next);
    const at = 16 + 2 * (classOf(led(view, 8), glyph) * view.getUint16(14) + column);
    return moves ? view.getInt16(at) : 0;
  }
  const set = led(view, 10 + 2 * index);
  const size = moves ? 4 : 2;
  for (let pair = 0, at = 2; pair < set.getUint16(0); pair += 1, at += size)
    if (set.getUint16(at) === next) return moves ? set.getInt16(at + 2) : 0;
  return null;
}

const ready = new WeakMap<LayoutRule[], PairRule[]>();

/** A lookup's rules with the places of their first glyphs: found once, whichever text asks. */
function pairRules(rules: LayoutRule[]): PairRule[] {
  const known = ready.get(rules);
  if (known) return known;
  const first = (rule: LayoutRule) => new Map(covered(led(rule.view, 2)).map((id, index) => [id, index]));
  const fresh = rules.map((rule): PairRule => ({ rule, first: first(rule) }));
  ready.set(rules, fresh);
  return fresh;
}

/** Tells the room after a glyph before the next one, font units; lookups add up, of each the first rule counts. */
export function pairKerning(lookups: readonly LayoutRule[][]): (glyph: number, next: number) => number {
  const all = lookups.map(pairRules);
  return (glyph, next) => {
    let room = 0;
    for (const rules of all)
      for (const rule of rules) {
        const by = roomBy(rule, glyph, next);
        if (by === null) continue;
        room += by;
        break;
      }
    return room;
  };
}
