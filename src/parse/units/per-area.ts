import { type Result, succeed } from '../../domain/result.ts';
import { parseAmount, type QuantityKind } from './quantity.ts';

const PER_AREA: QuantityKind<'g/cm2'> = {
  called: 'a weight for each square centimetre',
  spellings: { 'g/cm2': 'g/cm2', 'g/cm²': 'g/cm2' },
  per: { 'g/cm2': 1 },
  offered: ['g/cm2'],
  compound: false,
  example: '0.12 g/cm2',
  least: 0.01,
  most: 2,
  range: '0.01 to 2 g/cm2',
};

/**
 * What is brushed on, in g/cm²: '0.12 g/cm2'. Fails without the unit and outside 0.01 to 2 g/cm².
 * @example parsePerArea('0.12 g/cm2') // { ok: true, value: 0.12 }
 */
export function parsePerArea(text: string): Result<number> {
  // The 2 of cm2 would read as a second amount.
  const amount = parseAmount(text.replace(/cm2\s*$/i, 'cm²'), PER_AREA);
  return amount.ok ? succeed(amount.value.total) : amount;
}
