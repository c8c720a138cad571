/** Weights in ounces as a digital scale reads them: no more digits than keep the rounding below 2 %. */
import { G_PER } from '../domain/units.ts';
import { formatNumber } from './number.ts';

/** Half a step of 0.1 oz is 2 % of 2½ oz; of 0.01 oz, of ¼ oz. */
const TENTHS_FROM_OZ = 2.5;
const HUNDREDTHS_FROM_OZ = 0.25;

/**
 * A weight in g as ounces, without the unit.
 * @example formatOunces(250) // '8.8'
 */
export function formatOunces(massG: number): string {
  const ounces = massG / G_PER.oz;
  const size = Math.abs(ounces);
  return formatNumber(ounces, size >= TENTHS_FROM_OZ ? 1 : size >= HUNDREDTHS_FROM_OZ ? 2 : 3);
}

/** A sentence with its weights in ounces: '250 g of batter' → '8.8 oz of batter'. Densities are left as they are. */
export function ouncesInSentence(text: string): string {
  return text.replace(/(\d[\d,]*(?:\.\d+)?)([ \u00a0])g\b(?!\/)/g, (_, number: string, space: string) => {
    return `${formatOunces(Number(number.replaceAll(',', '')))}${space}oz`;
  });
}
