/** The first letter of a text as its place in a sentence asks; the rest is left as it is written. */

/** @example capitalised('two eggs') // 'Two eggs' */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** @example uncapitalised('Filling, 8 mm') // 'filling, 8 mm' */
export const uncapitalised = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
