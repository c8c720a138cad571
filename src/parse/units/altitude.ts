import { type Result, succeed } from '../../domain/result.ts';
import { parseAmount, type QuantityKind } from './quantity.ts';

type AltitudeUnit = 'm' | 'ft';

const ALTITUDE: QuantityKind<AltitudeUnit> = {
  called: 'an altitude',
  spellings: { m: 'm', metre: 'm', metres: 'm', meters: 'm', ft: 'ft', foot: 'ft', feet: 'ft', '′': 'ft' },
  per: { m: 1, ft: 0.3048 },
  offered: ['m', 'ft'],
  compound: false,
  example: '1600 m or 5200 ft',
  least: 1,
  most: 4500,
  range: 'an altitude from sea level to 4500 m',
};

/**
 * Height above the sea, in m: '1600 m', '5200 ft'. Fails without a unit and above 4500 m; 0 is allowed.
 * @example parseAltitude('5000 ft') // { ok: true, value: 1524 }
 */
export function parseAltitude(text: string): Result<number> {
  const amount = parseAmount(text, ALTITUDE, { zero: true });
  return amount.ok ? succeed(amount.value.total) : amount;
}
