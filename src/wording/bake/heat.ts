/** Warmth on the scale of the kitchen's dial: what a probe reads, how warm batter is, how far an oven is out. */
import type { OvenSetting } from '../../domain/kitchen.ts';
import { fahrenheitFromCelsius } from '../../domain/units.ts';
import { formatNumber } from '../number.ts';

export type HeatScale = 'C' | 'F';

const F_PER_C = 9 / 5;

/** Degrees Fahrenheit where the dial has them, else Celsius, gas dials too. */
export const heatScaleOf = ({ dial }: Pick<OvenSetting, 'dial'>): HeatScale => (dial === 'F' ? 'F' : 'C');

/** Degrees Celsius as degrees of that scale. */
export const onScale = (celsius: number, scale: HeatScale): number =>
  scale === 'F' ? fahrenheitFromCelsius(celsius) : celsius;

/** @example heatText(95, 'F') // '203 °F' */
export const heatText = (celsius: number, scale: HeatScale): string =>
  `${formatNumber(onScale(celsius, scale), 0)} °${scale}`;

/** A difference of warmth. @example heatApartText(15, 'F') // '27 °F' */
export const heatApartText = (degreesC: number, scale: HeatScale): string =>
  `${formatNumber(scale === 'F' ? degreesC * F_PER_C : degreesC, 0)} °${scale}`;
