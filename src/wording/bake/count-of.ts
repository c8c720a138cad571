/** Counts in running text: words to twelve, figures above. */
const NUMBERS = [
  'no',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
];

/** @example countOf(3, 'bake', 'bakes') // 'three bakes' */
export const countOf = (count: number, one: string, many: string): string =>
  `${NUMBERS[count] ?? String(count)} ${count === 1 ? one : many}`;
