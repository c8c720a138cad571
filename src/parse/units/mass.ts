import { type Result, succeed } from '../../domain/result.ts';
import { G_PER, type MassUnit } from '../../domain/units.ts';
import { type AmountOptions, parseAmount, type QuantityKind } from './quantity.ts';

const MASS: QuantityKind<MassUnit> = {
  called: 'a weight',
  spellings: {
    g: 'g',
    gram: 'g',
    grams: 'g',
    kg: 'kg',
    kilogram: 'kg',
    kilograms: 'kg',
    oz: 'oz',
    ounce: 'oz',
    ounces: 'oz',
    lb: 'lb',
    lbs: 'lb',
    pound: 'lb',
    pounds: 'lb',
  },
  per: G_PER,
  offered: ['g', 'kg', 'oz', 'lb'],
  compound: true,
  example: '250 g, 1.2 kg, 9 oz or 1 lb 2 oz',
  least: 0.01,
  most: 100_000,
  range: 'a weight from 0.01 g to 100 kg',
};

/**
 * A weight in g: '250 g', '1.2 kg', '9 oz', '1 lb 2 oz'. Fails without a unit and outside 0.01 g to 100 kg.
 * @example parseMass('1 lb 2 oz') // { ok: true, value: 510.291416250 }
 */
export function parseMass(text: string, options: AmountOptions = {}): Result<number> {
  const amount = parseAmount(text, MASS, options);
  return amount.ok ? succeed(amount.value.total) : amount;
}
