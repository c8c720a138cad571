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

/** The same function, asked once for each text in a font, size and kind of digits. */
export function remembered<T>(measure: Measure<T>): Measure<T> {
  const byMetrics = new WeakMap<Metrics, Map<string, Map<string, T>>>();
  return (text, font, type, metrics) => {
    let byType = byMetrics.get(metrics);
    if (!byType) {
      byType = new Map();
      byMetrics.set(metrics, byType);
    }
    const key = `${font} ${type.sizePt} ${type.tabular ?? false}`;
    let byText = byType.get(key);
    if (!byText) {
      byText = new Map();
      byType.set(key, byText);
    }
    const known = byText.get(text);
    if (known !== undefined) return known;
    if (byText.size >= MOST_TEXTS) byText.clear();
    const fresh = measure(text, font, type, metrics);
    byText.set(text, fresh);
    return fresh;
  };
}
