/**
 * Numbers as they are printed: a true minus sign, commas from a thousand up, no more digits than asked for.
 * Written by hand because the platform's own formatting differs between engines and releases.
 */

function grouped(digits: string, separator: string): string {
  return digits.replace(/\B(?=(\d{3})+$)/g, separator);
}

export interface NumberMarks {
  thousands: string;
  decimal: string;
}

/** A comma and a full stop, as in English. */
const ENGLISH_MARKS: NumberMarks = { thousands: ',', decimal: '.' };

/**
 * A number with exactly `decimals` digits after the point.
 * @example formatFixed(1234.5, 2) // '1,234.50'
 */
export function formatFixed(value: number, decimals: number, marks: NumberMarks = ENGLISH_MARKS): string {
  const [whole = '0', part] = Math.abs(value).toFixed(decimals).split('.');
  const shown =
    part === undefined
      ? grouped(whole, marks.thousands)
      : `${grouped(whole, marks.thousands)}${marks.decimal}${part}`;
  const isZero = /^[0.,]*$/.test(shown);
  return value < 0 && !isZero ? `−${shown}` : shown;
}

/**
 * A number with up to `decimals` digits after the point and no idle noughts.
 * @example formatNumber(12.5, 3) // '12.5'
 */
export function formatNumber(value: number, decimals = 3, marks: NumberMarks = ENGLISH_MARKS): string {
  const text = formatFixed(value, decimals, marks);
  if (decimals === 0) return text;
  const [whole = '', part = ''] = text.split(marks.decimal);
  const kept = part.replace(/0+$/, '');
  return kept === '' ? whole : `${whole}${marks.decimal}${kept}`;
}

/** A share as a percentage: 0.043 → '4.3 %'. */
export function formatShare(share: number, decimals = 0): string {
  return `${formatFixed(share * 100, decimals)} %`;
}
