/** Small numbers in English, from none. */
export const ENGLISH_NUMBERS: readonly string[] = [
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
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
];

/** A count in running text: a word up to `most`, figures above. `numberInWords(3, 12)` is 'three'. */
export const numberInWords = (count: number, most: number): string =>
  (count <= most ? ENGLISH_NUMBERS[count] : undefined) ?? String(count);
