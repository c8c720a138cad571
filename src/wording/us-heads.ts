/** Headings and labels with a unit in them, in American units: 'Fill to, mm' is 'Fill to, in'. Sentences with values in them stay. */
type Heads = readonly (readonly [RegExp, string])[];

const SIZES: Heads = [
  [/^mm(?= high$|$)|(?<=, )mm$/, 'in'],
  [/\bin millim(?:eters|etres)\b/g, 'in inches'],
  [/^m[lL]$|(?<=, )m[lL]$/, 'cups'],
];
const WEIGHTS: Heads = [
  [/^g(?=,|$)|(?<=, )g$/, 'oz'],
  [/\bGrams\b/g, 'Ounces'],
  [/\bin grams\b/g, 'in ounces'],
  [/^grams$/, 'ounces'],
];

function turned(value: unknown, heads: Heads): unknown {
  if (typeof value === 'string')
    return heads.reduce((text, [metric, unit]) => text.replace(metric, unit), value);
  if (Array.isArray(value)) return value.map((one) => turned(one, heads));
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one, heads)]));
}

/** A locale's words with inches, ounces and cups at the head of columns; functions are left alone. */
export const withUsHeads = <Words extends object>(words: Words): Words =>
  turned(words, [...SIZES, ...WEIGHTS]) as Words;

/** The same where the view says what it weighs in. */
export const withUsSizeHeads = <Words extends object>(words: Words): Words => turned(words, SIZES) as Words;
