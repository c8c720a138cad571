/** Every sentence of words, those that take a value with stand-ins for it. */

/** Values of each kind that a sentence may take; the first kinds that it can take are enough. */
const STAND_INS = [7, '7', true, ['7'], {}].map((one) => Array.from({ length: 8 }, () => one));

export interface SpokenWords {
  sentences: [string, string][];
  /** Keys of sentences that none of the stand-ins suits. */
  unheard: string[];
}

/** What a function says of each stand-in that it can take. */
function answers(say: (...values: unknown[]) => unknown): unknown[] {
  return STAND_INS.flatMap((values) => {
    try {
      return [say(...values)];
    } catch {
      return [];
    }
  });
}

export function spokenWords(words: unknown, key = ''): SpokenWords {
  if (typeof words === 'string') return { sentences: [[key, words]], unheard: [] };
  if (typeof words === 'function') {
    const heard = answers((...values) => words(...values));
    const all = heard.map((one) => spokenWords(one, key));
    return { sentences: all.flatMap(({ sentences }) => sentences), unheard: heard.length === 0 ? [key] : [] };
  }
  if (typeof words !== 'object' || words === null || words instanceof RegExp)
    return { sentences: [], unheard: [] };
  const all = Object.entries(words).map(([name, one]) =>
    spokenWords(one, key === '' ? name : `${key}.${name}`),
  );
  return {
    sentences: all.flatMap(({ sentences }) => sentences),
    unheard: all.flatMap(({ unheard }) => unheard),
  };
}
