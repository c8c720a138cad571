/** Real fractions: 2.75 → '2¾'. */

const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

/** To the nearest eighth: '2¾', '⅛', '3'. */
export function formatEighths(value: number): string {
  const eighths = Math.round(value * 8);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths - whole * 8] ?? '';
  return whole === 0 && part !== '' ? part : `${whole}${part}`;
}

/** How far a value is from the nearest eighth. */
export const offEighth = (value: number): number => Math.abs(value - Math.round(value * 8) / 8);
