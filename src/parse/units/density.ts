import { type Result, succeed } from '../../domain/result.ts';
import { parseAmount, type QuantityKind } from './quantity.ts';

const DENSITY: QuantityKind<'g/ml'> = {
  called: 'a density',
  spellings: { 'g/ml': 'g/ml', 'kg/l': 'g/ml' },
  per: { 'g/ml': 1 },
  offered: ['g/ml'],
  compound: false,
  example: '0.85 g/ml',
  least: 0.1,
  most: 2.5,
  range: 'a density from 0.1 to 2.5 g/ml',
};

/**
 * A density in g/mL: '0.85 g/ml'. Fails without a unit and outside 0.1 to 2.5 g/mL.
 * @example parseDensity('1.03 g/ml') // { ok: true, value: 1.03 }
 */
export function parseDensity(text: string): Result<number> {
  const amount = parseAmount(text, DENSITY);
  return amount.ok ? succeed(amount.value.total) : amount;
}
