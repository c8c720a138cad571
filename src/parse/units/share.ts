import { type Result, succeed } from '../../domain/result.ts';
import { type AmountOptions, parseAmount, type QuantityKind } from './quantity.ts';

const SHARE: QuantityKind<'%'> = {
  called: 'a share',
  spellings: { '%': '%', percent: '%' },
  per: { '%': 0.01 },
  offered: ['%'],
  compound: false,
  example: '6 %',
  least: 0.0001,
  most: 1,
  range: 'a share from 0.01 % to 100 %',
};

/**
 * A share from 0 to 1, written as a percentage: '6 %'. Fails without the sign, above 100 %, and at 0 unless
 * allowed.
 * @example parseShare('6 %') // { ok: true, value: 0.06 }
 */
export function parseShare(text: string, options: AmountOptions = {}): Result<number> {
  const amount = parseAmount(text, SHARE, options);
  return amount.ok ? succeed(amount.value.total) : amount;
}
