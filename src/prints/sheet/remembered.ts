/**
 * Measures kept for as long as the fonts they come from: a kitchen's prints say the same words in the same type
 * thousands of times. What is kept depends on text, font, size and digits only, and is shared, never changed.
 */
import type { FontRole } from '../../domain/house-style.ts';
import type { Metrics } from './surface.ts';
import type { TypeStyle } from './type-scale.ts';

type Measure<T> = (text: string, font: FontRole, type: TypeStyle, metrics: Metrics) => T;

/** Texts of one type; beyond this a kitchen is so large that most were said once only. */
const MOST_TEXTS = 20_000;

interface Kept<T> {
  /** The quick way: most types are the few of the type scale. */
  byType: WeakMap<TypeStyle, Map<FontRole, Map<string, T>>>;
  byKey: Map<string, Map<string, T>>;
}

function textsOf<T>({ byType, byKey }: Kept<T>, font: FontRole, type: TypeStyle): Map<string, T> {
  let byFont = byType.get(type);
  const quick = byFont?.get(font);
  if (quick) return quick;
  const key = `${font} ${type.sizePt} ${type.tabular ?? false}`;
  const texts = byKey.get(key) ?? new Map<string, T>();
  byKey.set(key, texts);
  byFont ??= new Map();
  byFont.set(font, texts);
  byType.set(type, byFont);
  return texts;
}

/** What is kept for a set of fonts. They are asked for in long runs: looking it up each time would take as long as the rest. */
export function oncePerMetrics<T>(begin: () => T): (metrics: Metrics) => T {
  const byMetrics = new WeakMap<Metrics, T>();
  let last: { metrics: Metrics; kept: T } | null = null;
  return (metrics) => {
    if (last?.metrics === metrics) return last.kept;
    const kept = byMetrics.get(metrics) ?? begin();
    byMetrics.set(metrics, kept);
    last = { metrics, kept };
    return kept;
  };
}

/** The same function, asked once for each text in a font, size and kind of digits. */
export function remembered<T>(measure: Measure<T>): Measure<T> {
  const keptFor = oncePerMetrics((): Kept<T> => ({ byType: new WeakMap(), byKey: new Map() }));
  return (text, font, type, metrics) => {
    const texts = textsOf(keptFor(metrics), font, type);
    const known = texts.get(text);
    if (known !== undefined) return known;
    if (texts.size >= MOST_TEXTS) texts.clear();
    const fresh = measure(text, font, type, metrics);
    texts.set(text, fresh);
    return fresh;
  };
}
