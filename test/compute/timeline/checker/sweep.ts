/** How much of something is in use at once: every stretch in which it is more than there is. */
export interface Use {
  from: number;
  to: number;
  count: number;
  who: string;
}

/** One sentence for each instant at which more is used than there is. */
export function overuse(code: string, uses: readonly Use[], most: number): string[] {
  const instants = [...new Set(uses.map(({ from }) => from))].sort((a, b) => a - b);
  return instants.flatMap((instant) => {
    const busy = uses.filter(({ from, to }) => from <= instant && instant < to);
    const sum = busy.reduce((total, { count }) => total + count, 0);
    return sum > most
      ? [`${code}: ${sum} of ${most} at ${instant} by ${busy.map(({ who }) => who).join(', ')}`]
      : [];
  });
}
