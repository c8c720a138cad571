/**
 * JSON whose bytes depend on the values alone: keys in code-unit order at every level, two spaces, one line
 * feed at the end. Two files of equal content compare equal, and a version-control diff shows only changes.
 */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** The text of a JSON file. A number that JSON cannot carry is a bug upstream, and throws. */
export function canonicalJson(value: Json): string {
  return `${JSON.stringify(ordered(value), null, 2)}\n`;
}

function ordered(value: Json): Json {
  if (typeof value === 'number' && !Number.isFinite(value))
    throw new Error(`not a number for JSON: ${value}`);
  if (typeof value !== 'object' || value === null) return value;
  if (isList(value)) return value.map(ordered);
  const keys = Object.keys(value).sort();
  return Object.fromEntries(keys.map((key) => [key, ordered(value[key] ?? null)]));
}

function isList(value: readonly Json[] | { readonly [key: string]: Json }): value is readonly Json[] {
  return Array.isArray(value);
}
