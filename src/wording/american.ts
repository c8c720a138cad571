/**
 * American English from British, where words alone differ: 'tin' is 'pan', 'flavour' is 'flavor'. Whatever differs
 * by more (dates, temperatures, law) is written out in the locale's own files. Names that the baker gave stay as
 * they are: what goes into a sentence is held out while the rest of it is turned.
 */
const SPELLINGS: readonly (readonly [RegExp, string])[] = [
  [/\b([Tt])in(s?)\b/g, 'pan'],
  [/\b([Ff])airy cake(s?)\b/g, 'small cupcake'],
  [/\b([Mm])illimetre(s?)\b/g, 'millimeter'],
  [/\b([Cc])entimetre(s?)\b/g, 'centimeter'],
  [/\b([Mm])illilitre(s?)\b/g, 'milliliter'],
  [/\b([Ff])lavour(ed|ings|ing|less|s|)\b/g, 'flavor'],
  [/\b([Cc])olour(ed|ings|ing|less|s|)\b/g, 'color'],
  [/\b([Cc])entre(d|s|)\b/g, 'center'],
  [/\b([Ff])ibre(s?)\b/g, 'fiber'],
  [/\b([Ll])evell(ing|ed|er)\b/g, 'level'],
  [/\b([Gg])rey(s?)\b/g, 'gray'],
  [/\b([Mm])ould(s?)\b/g, 'mold'],
  [/\b([Ss])oya()\b/g, 'soy'],
  [/\b([Ss])ulphite(s?)\b/g, 'sulfite'],
  [/\b([Mm])ollusc(s?)\b/g, 'mollusk'],
  [/\b([Aa])luminium()\b/g, 'aluminum'],
  [/\b([Bb])aking paper(s?)\b/g, 'parchment paper'],
  [/\b([Nn])eighbour(s?)\b/g, 'neighbor'],
  [/\b([Mm])etre(s?)\b/g, 'meter'],
  [/\b([Ll])itre(s?)\b/g, 'liter'],
  [/\b([Tt])elephone(s?)\b/g, 'phone'],
  [/\b([Aa])fterwards()\b/g, 'afterward'],
  [/\b([Pp])asteurise(d|s|)\b/g, 'pasteurize'],
  [/\b([Pp])acket(s?)(?=\b)/g, 'package'],
  [/\b([Ff])ridge(s?)\b/g, 'refrigerator'],
  [/\b([Ss])ponge(s?)\b/g, 'cake'],
  [/\b([Ss])ugarpaste()\b/g, 'rolled fondant'],
  [/\b([Ww])orktop(s?)\b/g, 'counter'],
  [/\b([Bb])est before()\b/g, 'best by'],
  [/\b([Ff])ilm(?= round| over)()/g, 'plastic wrap'],
  [/\b([Rr])ound()(?= (?:the|a|it|its|every|each|them|which|and over)\b)/g, 'around'],
  [/(?<=\b(?:all|goes) )(r)ound()\b/g, 'around'],
];

const MILLILITRES = /(?<=[\d }][\s\u00a0]?)ml\b/g;

const inCaseOf = (first: string, word: string): string =>
  first === first.toUpperCase() ? word.charAt(0).toUpperCase() + word.slice(1) : word;

/**
 * One sentence in American spelling.
 * @example americanText('Every tin, by flavour') // 'Every pan, by flavor'
 */
export function americanText(text: string): string {
  return SPELLINGS.reduce(
    (turned, [spelling, word]) =>
      turned.replace(spelling, (_all, first: string, ending: string) => `${inCaseOf(first, word)}${ending}`),
    text.replace(MILLILITRES, 'mL'),
  );
}

/** All texts within a value. */
function textsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsIn);
}

/** A single plain word is one of ours, chosen by the program; anything else may be a name that a baker gave. */
const isName = (text: string): boolean => !/^[a-z-]*$/.test(text) && americanText(text) !== text;

/** Signs that no text has, to stand for the names while the sentence around them is turned. */
const HELD = 0xe000;

/**
 * A sentence in American spelling, the names in it as they are.
 * @example americanAround('Ann’s tin: use a deeper tin', ['Ann’s tin']) // 'Ann’s tin: use a deeper pan'
 */
export function americanAround(text: string, names: readonly string[]): string {
  const held = names.reduce((kept, name, at) => kept.replaceAll(name, String.fromCharCode(HELD + at)), text);
  return names.reduce(
    (whole, name, at) => whole.replaceAll(String.fromCharCode(HELD + at), name),
    americanText(held),
  );
}

/** Sentences, lists and groups of them, and what makes them of values; patterns stay. */
function turned(value: unknown, names: readonly string[]): unknown {
  if (typeof value === 'string') return americanAround(value, names);
  if (Array.isArray(value)) return value.map((one) => turned(one, names));
  if (typeof value === 'function') {
    return (...parts: unknown[]) => turned(value(...parts), textsIn(parts).filter(isName));
  }
  if (typeof value !== 'object' || value === null || value instanceof RegExp) return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, turned(one, names)]));
}

/** A locale's words with every sentence turned; what must differ by more is laid over it. */
export const inAmerican = <Words extends object>(words: Words): Words => turned(words, []) as Words;
