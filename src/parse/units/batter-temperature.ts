/** How warm is the batter when it goes in? °C; from the cold shelf to a warm kitchen, 0 to 45 °C. */
import { type Result, succeed } from '../../domain/result.ts';
import { celsiusFromFahrenheit } from '../../domain/units.ts';
import { refuse } from '../problems.ts';
import { quote } from '../quote.ts';
import { leadingNumber, tidy } from './number.ts';
import { plainSpaces } from './quantity.ts';

const COLDEST_C = 0;
const WARMEST_C = 45;
const WRITTEN = /^(-?[^a-z°º]+?) *(?:°|º|degrees?)? *(c|celsius|f|fahrenheit)$/i;

/**
 * A batter's temperature: '20C', '8 °C', '68F'. Fails without a unit and outside 0 to 45 °C.
 * @example parseBatterTemperature('68F') // { ok: true, value: 20 }
 */
export function parseBatterTemperature(text: string): Result<number> {
  const plain = plainSpaces(text).trim();
  const match = WRITTEN.exec(plain);
  const number = leadingNumber(match?.[1] ?? plain);
  if (match === null || number === null || number.length !== match[1]?.length) {
    const code = number?.length === plain.length ? 'unit-missing' : 'quantity-unreadable';
    const message =
      code === 'unit-missing'
        ? `${quote(plain)} has no unit`
        : `${quote(plain)} cannot be read as a temperature`;
    return refuse(code, message, 'Write it like 20C or 68F.');
  }
  const celsius = tidy(/^c/i.test(match[2] ?? '') ? number.value : celsiusFromFahrenheit(number.value));
  if (celsius >= COLDEST_C && celsius <= WARMEST_C) return succeed(celsius);
  return refuse(
    'quantity-out-of-range',
    `${quote(plain)} is too ${celsius < COLDEST_C ? 'cold' : 'warm'} for batter`,
    `Use ${COLDEST_C}C to ${WARMEST_C}C (32F to 113F): what a thermometer in the filled tin reads.`,
  );
}
