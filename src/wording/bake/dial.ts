/** One oven heat in the words of each dial. */
import type { OvenSetting } from '../../domain/kitchen.ts';
import { fahrenheitFromCelsius } from '../../domain/units.ts';
import { formatEighths } from '../fraction.ts';

/** How a heat reads on each scale; `gas` null beyond the marks that dials have. */
export interface DialTexts {
  /** What this kitchen sets: '140 °C fan'. */
  set: string;
  /** The same heat elsewhere: '160 °C, 320 °F, gas 3'. */
  others: string;
}

const toFive = (value: number): number => Math.round(value / 5) * 5;
const celsius = (ovenC: number): string => `${toFive(ovenC)}\u00a0°C`;
const fahrenheit = (ovenC: number): string => `${toFive(fahrenheitFromCelsius(ovenC))}\u00a0°F`;

/** Words of one heat; `fanC` is the same heat with a fan, both °C, `gasMark` the nearest mark or null. */
export function dialTexts(
  heat: { ovenC: number; fanC: number; gasMark: number | null },
  oven: Pick<OvenSetting, 'fan' | 'dial'>,
): DialTexts {
  const { ovenC, fanC, gasMark } = heat;
  const gas = gasMark === null ? null : `gas ${formatEighths(gasMark)}`;
  const plain: Record<OvenSetting['dial'], string> = {
    C: celsius(ovenC),
    F: fahrenheit(ovenC),
    gas: gas ?? celsius(ovenC),
  };
  const withFan = `${oven.dial === 'F' ? fahrenheit(fanC) : celsius(fanC)} fan`;
  const set = oven.fan && oven.dial !== 'gas' ? withFan : plain[oven.dial];
  const all = [celsius(ovenC), `${celsius(fanC)} fan`, fahrenheit(ovenC), ...(gas === null ? [] : [gas])];
  return { set, others: all.filter((text) => text !== set).join(', ') };
}
