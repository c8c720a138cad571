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
const fahrenheitText = (ovenF: number): string => `${toFive(ovenF)}\u00a0°F`;
const fahrenheit = (ovenC: number): string => fahrenheitText(fahrenheitFromCelsius(ovenC));

/** What a locale calls a fan, and its gas marks; null where ovens are not marked so. */
export interface DialWords {
  fan: (heat: string) => string;
  gas: ((mark: string) => string) | null;
}

/** Words of one heat, its own dial's scale first; `fanC` and `fanF` the same heat with a fan, `gasMark` or null. */
export function dialTexts(
  heat: { ovenC: number; fanC: number; fanF: number; gasMark: number | null },
  oven: Pick<OvenSetting, 'fan' | 'dial'>,
  words: DialWords,
): DialTexts {
  const { ovenC, fanC, fanF, gasMark } = heat;
  const gas = gasMark === null || words.gas === null ? null : words.gas(formatEighths(gasMark));
  const plain: Record<OvenSetting['dial'], string> = {
    C: celsius(ovenC),
    F: fahrenheit(ovenC),
    gas: gas ?? celsius(ovenC),
  };
  const inC = [celsius(ovenC), words.fan(celsius(fanC))];
  const inF = [fahrenheit(ovenC), words.fan(fahrenheitText(fanF))];
  const withFan = (oven.dial === 'F' ? inF : inC)[1] ?? plain.C;
  const set = oven.fan && oven.dial !== 'gas' ? withFan : plain[oven.dial];
  const other = oven.dial === 'F' ? [...inF, ...inC] : [...inC, fahrenheit(ovenC)];
  const all = [...other, ...(gas === null ? [] : [gas])];
  return { set, others: all.filter((text) => text !== set).join(', ') };
}
