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

/** The same function, asked once for each text in a font, size and kind of digits. */
export function remembered<T>(measure: Measure<T>): Measure<T> {
  const byMetrics = new WeakMap<Metrics, Kept<T>>();
  return (text, font, type, metrics) => {
    const kept = byMetrics.get(metrics) ?? { byType: new WeakMap(), byKey: new Map() };
    byMetrics.set(metrics, kept);
    const texts = textsOf(kept, font, type);
    const known = texts.get(text);
    if (known !== undefined) return known;
    if (texts.size >= MOST_TEXTS) texts.clear();
    const fresh = measure(text, font, type, metrics);
    texts.set(text, fresh);
    return fresh;
  };
}
