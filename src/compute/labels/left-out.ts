/** What a name says is left out: 'made without egg', 'without milk or egg ingredients'. */

const LEFT_OUT = /\bwithout\b(?:[^,;()]*?\bingredients\b|\s+\S+)/gi;

/** The parts of a name that say so; empty for most names. */
export const leftOutIn = (foodName: string): string[] =>
  [...foodName.matchAll(LEFT_OUT)].map(([text]) => text);

/** The name without them: what it promises. */
export const promisedIn = (foodName: string): string => foodName.replace(LEFT_OUT, ' ');
