/**
 * Numbers as bakers write them: 3, 2.75, .5, 2 3/4, 3/4, 2¾, ½. Never 2,75 or 1e3.
 * A number ends where the unit begins.
 */
const VULGAR: Record<string, number> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const VULGAR_SIGNS = Object.keys(VULGAR).join('');

// At most nine digits a run: more is a slip, and nothing can overflow.
const WHOLE_AND_FRACTION = /^(\d{1,9}) +(\d{1,3})[/⁄](\d{1,3})(?![\d.])/;
const FRACTION = /^(\d{1,3})[/⁄](\d{1,3})(?![\d.])/;
const VULGAR_FRACTION = new RegExp(`^(\\d{1,9})? ?([${VULGAR_SIGNS}])(?![\\d.])`);
const DECIMAL = /^(?:\d{1,9}(?:\.\d{1,9})?|\.\d{1,9})(?![\d./⁄])/;

/** A number at the start of a text: its value and how many characters it took. */
export interface LeadingNumber {
  value: number;
  length: number;
}

function proper(whole: number, top: number, bottom: number): number | null {
  if (bottom === 0 || (whole > 0 && top >= bottom)) return null;
  return whole + top / bottom;
}

/** The number a text starts with, or null when there is none that can be read in one way only. */
export function leadingNumber(text: string): LeadingNumber | null {
  const mixed = WHOLE_AND_FRACTION.exec(text);
  if (mixed) return sized(proper(Number(mixed[1]), Number(mixed[2]), Number(mixed[3])), mixed[0]);
  const fraction = FRACTION.exec(text);
  if (fraction) return sized(proper(0, Number(fraction[1]), Number(fraction[2])), fraction[0]);
  const vulgar = VULGAR_FRACTION.exec(text);
  if (vulgar) return sized(Number(vulgar[1] ?? 0) + (VULGAR[vulgar[2] ?? ''] ?? 0), vulgar[0]);
  const decimal = DECIMAL.exec(text);
  return decimal ? sized(Number(decimal[0]), decimal[0]) : null;
}

function sized(value: number | null, matched: string): LeadingNumber | null {
  return value === null ? null : { value, length: matched.length };
}

/** Removes the dust of binary fractions: 6 × 25.4 is 152.4. */
export function tidy(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}
