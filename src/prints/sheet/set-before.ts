/**
 * What was set before in the same type and look: when one recipe has changed, all others are as they were. It is found
 * by the text of everything it was set from.
 */
import type { SheetContext } from './sheet-context.ts';
import type { Metrics } from './surface.ts';

/** `told` is all that `set` sets from but the context. */
export type SetBefore<T> = (told: unknown, context: SheetContext, set: () => T) => T;

/**
 * Keeps so many for each set of fonts, those asked for last, for as long as the fonts are kept. What is kept is shared,
 * never changed.
 */
export function setBefore<T>(most: number): SetBefore<T> {
  const byMetrics = new WeakMap<Metrics, Map<string, { set: T }>>();
  return (told, { metrics, ...look }, set) => {
    const known = byMetrics.get(metrics) ?? new Map<string, { set: T }>();
    byMetrics.set(metrics, known);
    const key = JSON.stringify([look, told]);
    const kept = known.get(key) ?? { set: set() };
    // Last in, last out: a map hands out its keys in the order in which they were put in.
    known.delete(key);
    known.set(key, kept);
    for (const oldest of known.keys()) {
      if (known.size <= most) break;
      known.delete(oldest);
    }
    return kept.set;
  };
}
