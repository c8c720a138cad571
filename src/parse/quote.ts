/** A value from a file as it is shown in a message: quoted, shortened, without anything that hides or moves text. */
const LONGEST = 60;

export function quote(text: string): string {
  // Other people's control and direction marks must not reach a terminal.
  const visible = text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, '·');
  const short = visible.length > LONGEST ? `${visible.slice(0, LONGEST - 1)}…` : visible;
  return `'${short}'`;
}

/** 'a round', 'an oval'. */
export function withArticle(word: string): string {
  return `${/^[aeiou]/.test(word) ? 'an' : 'a'} ${word}`;
}

/** 'a, b or c'. */
export function orList(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} or ${words[words.length - 1] ?? ''}`;
}
