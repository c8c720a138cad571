/** Times that differ by name: one figure for all of them, or some of them set and the usual for the rest. */
import { parseDuration } from './units/duration.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

export interface Named<Name extends string> {
  names: readonly Name[];
  usual: Readonly<Record<Name, number>>;
  /** Whether there may be none of it: 0 min. */
  zero: boolean;
}

/**
 * Minutes by name, from `10 min` or `{ creamed: 10 min, whisked: 5 min }`.
 * @example readMinutesBy(reader, ['batter_stands'], { names: STANDINGS, usual, zero: false })
 */
export function readMinutesBy<Name extends string>(
  reader: YamlReader,
  path: YamlPath,
  { names, usual, zero }: Named<Name>,
): Record<Name, number> {
  const parse = (text: string) => parseDuration(text, { zero });
  const forAll = reader.parsed(parse, ...path);
  const all: Record<Name, number> = { ...usual };
  for (const name of names) {
    const own = forAll ?? reader.parsed(parse, ...path, name);
    if (own !== undefined) all[name] = own;
  }
  return all;
}
