import { type Result, succeed } from '../../domain/result.ts';
import { ML_PER, type VolumeUnit } from '../../domain/units.ts';
import { parseAmount, type QuantityKind } from './quantity.ts';

/** A volume in mL that remembers whether it was measured in spoons. */
export interface VolumeAsWritten {
  ml: number;
  unit: VolumeUnit;
}

const VOLUME_SPELLINGS: Readonly<Record<string, VolumeUnit>> = {
  ml: 'ml',
  millilitre: 'ml',
  millilitres: 'ml',
  milliliter: 'ml',
  milliliters: 'ml',
  l: 'l',
  litre: 'l',
  litres: 'l',
  liter: 'l',
  liters: 'l',
  tsp: 'tsp',
  teaspoon: 'tsp',
  teaspoons: 'tsp',
  tbsp: 'tbsp',
  tablespoon: 'tbsp',
  tablespoons: 'tbsp',
  cup: 'cup',
  cups: 'cup',
  'us fl oz': 'us fl oz',
  'uk fl oz': 'uk fl oz',
  'uk pint': 'uk pint',
  'us pint': 'us pint',
  'us qt': 'us qt',
  'us quart': 'us qt',
  'us quarts': 'us qt',
};

const PINT = "'us pint' (473 ml) or 'uk pint' (568 ml)";
const QUART = "'us qt' (946 ml), or ml";
const FL_OZ = "'us fl oz' (29.6 ml) or 'uk fl oz' (28.4 ml)";

const VOLUME: QuantityKind<VolumeUnit> = {
  called: 'a volume',
  spellings: VOLUME_SPELLINGS,
  per: ML_PER,
  offered: ['ml', 'l', 'tsp', 'tbsp'],
  ambiguous: {
    'fl oz': FL_OZ,
    'fl. oz': FL_OZ,
    pint: PINT,
    pints: PINT,
    qt: QUART,
    quart: QUART,
    quarts: QUART,
  },
  compound: false,
  example: '30 ml, 1.2 l or 2 tsp',
  least: 0.05,
  most: 200_000,
  range: 'a volume from 0.05 ml to 200 l',
};

/**
 * A volume: '1850ml', '4.8 l', '2 tsp', '1 cup', '4 us fl oz'. Fails without a unit, outside 0.05 mL to
 * 200 L, and on 'fl oz' alone, which differs between the UK and the US.
 * @example parseVolume('4.8 l') // { ok: true, value: { ml: 4800, unit: 'l' } }
 */
export function parseVolume(text: string): Result<VolumeAsWritten> {
  const amount = parseAmount(text, VOLUME);
  return amount.ok ? succeed({ ml: amount.value.total, unit: amount.value.unit }) : amount;
}
