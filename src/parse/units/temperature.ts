/**
 * How hot is the oven? Everything becomes the conventional (no fan) temperature in °C.
 * Fan + 20 °C, or + 25 °F where it is written in °F; gas mark 1 = 275 °F and 25 °F a mark, ½ = 250 °F, ¼ = 225 °F (common practice, no standard).
 * Valid from 50 to 300 °C conventional.
 */
import { conventionalFromFanC, conventionalFromFanF, gasMarkF } from '../../compute/bake/oven-scales.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { celsiusFromFahrenheit } from '../../domain/units.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { leadingNumber, tidy } from './number.ts';
import { plainSpaces } from './quantity.ts';

const COOLEST_C = 50;
const HOTTEST_C = 300;
const EXAMPLE = 'Write it like 160C, 140C fan, 350F or gas 4.';

export interface OvenTemperature {
  /** Conventional, °C. */
  ovenC: number;
  /** How it was written. */
  kind: 'conventional' | 'fan';
  scale: 'C' | 'F' | 'gas';
  /** The number as written: 140 for '140C fan', 0.5 for 'gas ½'. */
  written: number;
}

const GAS = /^gas(?: mark)? *(.+)$/i;
const DEGREES = /^([^a-z°º]+?) *(?:°|º|degrees?)? *(c|celsius|f|fahrenheit)$/i;

function wholeNumber(text: string): number | null {
  const number = leadingNumber(text);
  return number !== null && number.length === text.length ? number.value : null;
}

function parseGas(text: string): Result<OvenTemperature> {
  const mark = wholeNumber(text);
  const fahrenheit = mark === null ? null : gasMarkF(mark);
  if (mark === null || fahrenheit === null) {
    return refuse(
      'gas-mark-unknown',
      `There is no gas mark ${quote(text)}`,
      'Gas marks are ¼, ½ and 1 to 9.',
    );
  }
  return succeed({
    ovenC: tidy(celsiusFromFahrenheit(fahrenheit)),
    kind: 'conventional',
    scale: 'gas',
    written: mark,
  });
}

const plainC = (celsius: number, fan: boolean): number => (fan ? conventionalFromFanC(celsius) : celsius);
const plainFromF = (fahrenheit: number, fan: boolean): number =>
  celsiusFromFahrenheit(fan ? conventionalFromFanF(fahrenheit) : fahrenheit);

function parseDegrees(text: string, shown: string, fan: boolean): Result<OvenTemperature> {
  const match = DEGREES.exec(text);
  const written = match ? wholeNumber(match[1] ?? '') : null;
  if (match === null || written === null) {
    if (wholeNumber(text) === null) {
      return refuse('quantity-unreadable', `${quote(shown)} cannot be read as a temperature`, EXAMPLE);
    }
    const tail = fan ? ' fan' : '';
    return refuse('unit-missing', `${quote(shown)} has no unit`, `Write ${text}C${tail} or ${text}F${tail}.`);
  }
  const scale = /^c/i.test(match[2] ?? '') ? 'C' : 'F';
  const ovenC = tidy(scale === 'C' ? plainC(written, fan) : plainFromF(written, fan));
  if (ovenC < COOLEST_C || ovenC > HOTTEST_C) {
    return refuse(
      'quantity-out-of-range',
      `${quote(shown)} is too ${ovenC < COOLEST_C ? 'cool' : 'hot'} for an oven`,
      `Use ${COOLEST_C}C to ${HOTTEST_C}C without fan (120F to 570F). Check whether it is C or F.`,
    );
  }
  return succeed({ ovenC, kind: fan ? 'fan' : 'conventional', scale, written });
}

/**
 * An oven temperature: '160C', '160 °C', '140C fan', 'fan 140C', '350F', '325F convection', 'gas 4', 'gas ½'. Fails without a
 * unit, on an unknown gas mark and outside 50 to 300 °C.
 * @example parseTemperature('140C fan') // { ok: true, value: { ovenC: 160, kind: 'fan', scale: 'C', written: 140 } }
 */
export function parseTemperature(text: string): Result<OvenTemperature> {
  const plain = plainSpaces(text).trim();
  const gas = GAS.exec(plain);
  if (gas) return parseGas((gas[1] ?? '').trim());
  const withoutFan = plain
    .replace(/^(?:fan|convection) +| *\((?:fan|convection)\)$| +(?:fan|convection)$/i, '')
    .trim();
  return parseDegrees(withoutFan, plain, withoutFan !== plain);
}
