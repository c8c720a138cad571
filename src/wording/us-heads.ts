/** Headings and labels with a unit in them, in American units: 'Fill to, mm' is 'Fill to, in'. Sentences with values in them stay. */
const UNITS: readonly (readonly [RegExp, string])[] = [
  [/^mm(?= high$|$)|(?<=, )mm$/, 'in'],
  [/^g$|(?<=, )g$/, 'oz'],
  [/^m[lL]$|(?<=, )m[lL]$/, 'cups'],
  [/\bGrams\b/g, 'Ounces'],
  [/\bin grams\b/g, 'in ounces'],
  [/^grams$/, 'ounces'],
];

const headed = (text: string): string =>
  UNITS.reduce((turned, [metric, unit]) => turned.replace(metric, unit), text);

function turned(value: unknown): unknown {
  if (typeof value === 'string') return headed(value);
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one)]));
}

/** A locale's words with inches, ounces and cups at the head of columns; functions are left alone. */
export const withUsHeads = <Words extends object>(words: Words): Words => turned(words) as Words;
