/**
 * The rules for setting glyphs that a font brings along (OpenType 1.9, tables GSUB and GPOS, from memory), as the
 * font library has read them: only what tells which glyphs a rule can touch.
 */
export type Coverage =
  | { version: 1; glyphs: number[] }
  | { version: 2; rangeRecords: { start: number; end: number }[] };

export interface LayoutSubtable {
  version?: number;
  coverage?: Coverage;
  deltaGlyphID?: number;
  substitute?: { toArray(): number[] };
  alternateSet?: { toArray(): number[][] };
  ligatureSets?: { toArray(): { components: number[] }[][] };
  coverages?: Coverage[];
  backtrackCoverage?: Coverage[];
  inputCoverage?: Coverage[];
  lookaheadCoverage?: Coverage[];
  markCoverage?: Coverage;
  mark1Coverage?: Coverage;
  lookupType?: number;
  extension?: LayoutSubtable;
}

interface LookupFlags {
  flags: { ignoreBaseGlyphs: boolean; ignoreLigatures: boolean };
}

export interface LayoutTable {
  scriptList: { tag: string; script: { defaultLangSys: { featureIndexes: number[] } | null } }[] | null;
  featureList: { tag: string; feature: { lookupListIndexes: number[] } }[];
  lookupList: { get(index: number): { lookupType: number; flags: LookupFlags; subTables: LayoutSubtable[] } };
}

/** One rule, out of the wrapping that large fonts put around it. */
export interface LayoutRule {
  type: number;
  subtable: LayoutSubtable;
  /** Whether the rule looks past some glyphs that are not marks. */
  skips: boolean;
}

/** The number that wraps another rule. */
const EXTENSION = { GSUB: 7, GPOS: 9 } as const;
const SCRIPTS: ReadonlySet<string> = new Set(['latn', 'DFLT', 'dflt']);

/** All glyphs of a coverage table. */
export const covered = (coverage: Coverage | undefined): number[] => {
  if (coverage === undefined) return [];
  if (coverage.version === 1) return coverage.glyphs;
  return coverage.rangeRecords.flatMap(({ start, end }) =>
    Array.from({ length: end - start + 1 }, (_, index) => start + index),
  );
};

/** The rules behind some features, for Latin text and for text of no script. */
export function rulesOf(
  table: LayoutTable | undefined,
  kind: keyof typeof EXTENSION,
  features: ReadonlySet<string>,
): LayoutRule[] {
  if (table === undefined) return [];
  const scripts = (table.scriptList ?? []).filter(({ tag }) => SCRIPTS.has(tag));
  const indexes = scripts.flatMap(({ script }) => script.defaultLangSys?.featureIndexes ?? []);
  const asked = indexes
    .flatMap((index) => table.featureList[index] ?? [])
    .filter(({ tag }) => features.has(tag));
  const lookups = new Set(asked.flatMap(({ feature }) => feature.lookupListIndexes));
  return [...lookups].flatMap((index) => {
    const { lookupType, flags, subTables } = table.lookupList.get(index);
    const skips = flags.flags.ignoreBaseGlyphs || flags.flags.ignoreLigatures;
    return subTables.map((subtable) =>
      lookupType === EXTENSION[kind] && subtable.extension
        ? { type: subtable.lookupType ?? 0, subtable: subtable.extension, skips }
        : { type: lookupType, subtable, skips },
    );
  });
}
