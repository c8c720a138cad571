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

const PROPORTION: QuantityKind<'%'> = {
  ...SHARE,
  called: 'a percentage',
  example: '75 % or 120 %',
  most: 10,
  range: 'a percentage from 0.01 % to 1000 %',
};

/**
 * A proportion written as a percentage that may pass 100 %: '120 %' is 1.2. Fails without the sign, at 0 and
 * above 1000 %.
 * @example parseProportion('75 %') // { ok: true, value: 0.75 }
 */
export function parseProportion(text: string): Result<number> {
  const amount = parseAmount(text, PROPORTION);
  return amount.ok ? succeed(amount.value.total) : amount;
}
