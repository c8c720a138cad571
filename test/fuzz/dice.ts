/** Repeatable chance: the n-th input of a reader is always the same, so that a failure can be called by its number. */
export interface Dice {
  /** A whole number from 0 to below `sides`. */
  below(sides: number): number;
  /** One of some things. */
  pick<T>(things: readonly T[]): T;
}

/** Mulberry32 (public domain, from memory), started from a name and a number. */
export function diceOf(name: string, number: number): Dice {
  let state = [...name].reduce(
    (sum, sign) => Math.imul(sum ^ (sign.codePointAt(0) ?? 0), 0x01000193),
    number,
  );
  const below = (sides: number): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296) * sides);
  };
  return {
    below,
    pick(things) {
      const found = things[below(things.length)];
      if (found === undefined) throw new Error('nothing to pick from');
      return found;
    },
  };
}
