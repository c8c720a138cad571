import { type Result, succeed } from '../../domain/result.ts';
import { type LengthUnit, MM_PER } from '../../domain/units.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { type AmountOptions, parseAmount, type QuantityKind } from './quantity.ts';

/** A length in mm that remembers the unit the baker wrote. */
export interface LengthAsWritten {
  mm: number;
  unit: LengthUnit;
}

const LENGTH: QuantityKind<LengthUnit> = {
  called: 'a length',
  spellings: {
    mm: 'mm',
    millimetre: 'mm',
    millimetres: 'mm',
    millimeter: 'mm',
    millimeters: 'mm',
    cm: 'cm',
    centimetre: 'cm',
    centimetres: 'cm',
    centimeter: 'cm',
    centimeters: 'cm',
    in: 'in',
    inch: 'in',
    inches: 'in',
    '"': 'in',
    '″': 'in',
    '”': 'in',
  },
  per: MM_PER,
  offered: ['in', 'cm', 'mm'],
  compound: false,
  example: '9in, 2 3/4in, 23 cm or 65mm',
  least: 0.1,
  most: 3000,
  range: 'a length from 0.1 mm to 3 m',
};

/**
 * A length: '9in', '2 3/4in', '2¾ inches', '23 cm', '65mm', '9″'. Fails without a unit, at or below zero
 * (unless zero is allowed) and above 3 m.
 * @example parseLength('2 3/4in') // { ok: true, value: { mm: 69.85, unit: 'in' } }
 */
export function parseLength(text: string, options: AmountOptions = {}): Result<LengthAsWritten> {
  const amount = parseAmount(text, LENGTH, options);
  return amount.ok ? succeed({ mm: amount.value.total, unit: amount.value.unit }) : amount;
}

const LOWEST_MM = 5;
const HIGHEST_MM = 500;

/** The height of a baked cake: a length from 5 to 500 mm. */
export function parseFinishedHeight(text: string): Result<LengthAsWritten> {
  const length = parseLength(text);
  if (!length.ok || (length.value.mm >= LOWEST_MM && length.value.mm <= HIGHEST_MM)) return length;
  return refuse(
    'quantity-out-of-range',
    `${quote(text)} is too ${length.value.mm < LOWEST_MM ? 'low' : 'high'} for a baked cake`,
    `Use ${LOWEST_MM} mm to ${HIGHEST_MM} mm. Check the unit.`,
  );
}
