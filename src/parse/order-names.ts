/** One name of something in another file: known, or reported at its place with the nearest. */
import type { KnownNames, NamedKind } from './known-names.ts';
import { suggest } from './nearest.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** The id at a path, or undefined after reporting it; what is there but broken has been reported already. */
export function readName(
  reader: YamlReader,
  path: YamlPath,
  kind: NamedKind,
  { ids, broken }: KnownNames,
): string | undefined {
  const name = reader.text(...path);
  if (name === undefined) return undefined;
  if (ids.includes(name)) return name;
  if (broken !== null && !broken.includes(name)) {
    const hint = suggest(name, [...ids, ...broken], kind.many);
    reader.report(error(kind.code, `There is no ${kind.one} ${quote(name)}`, hint), ...path);
  }
  return undefined;
}
