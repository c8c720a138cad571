/** Lengths in the baker's own unit: inches with real fractions, centimetres to the millimetre, whole millimetres. */
import { type LengthUnit, MM_PER } from '../domain/units.ts';
import { formatEighths, offEighth } from './fraction.ts';
import { formatNumber } from './number.ts';

/** Inches that are not eighths to within this are written as decimals. */
const EIGHTH_SLACK_IN = 0.015;

function inches(value: number): string {
  return offEighth(value) <= EIGHTH_SLACK_IN ? formatEighths(value) : formatNumber(value, 2);
}

/** The number alone: 69.85 mm in inches is '2¾'. */
export function formatLengthValue(lengthMm: number, unit: LengthUnit): string {
  const value = lengthMm / MM_PER[unit];
  if (unit === 'in') return inches(value);
  return formatNumber(value, 1);
}

/**
 * A length with its unit.
 * @example formatLength(69.85, 'in') // '2¾ in'
 */
export function formatLength(lengthMm: number, unit: LengthUnit): string {
  return `${formatLengthValue(lengthMm, unit)} ${unit}`;
}

/** The same length for people who think in the other system: inches to the nearest eighth, or centimetres. */
export function formatOtherValue(lengthMm: number, unit: LengthUnit): string {
  return unit === 'in' ? formatNumber(lengthMm / MM_PER.cm, 1) : formatEighths(lengthMm / MM_PER.in);
}

/** The unit that goes in brackets. */
export const otherUnit = (unit: LengthUnit): LengthUnit => (unit === 'in' ? 'cm' : 'in');

/** '2½ in (6.4 cm)' or '65 mm (2½ in)'. */
export function formatBothLengths(lengthMm: number, unit: LengthUnit): string {
  return `${formatLength(lengthMm, unit)} (${formatOtherValue(lengthMm, unit)} ${otherUnit(unit)})`;
}
