/** Every reader of one amount, name, day or address. */
import { POUNDS } from '../../src/domain/money.ts';
import type { Result } from '../../src/domain/result.ts';
import { parseColour } from '../../src/parse/colour.ts';
import { minuteOfLocal } from '../../src/parse/local-time.ts';
import { parseContentPath, parseId, parseSiteUrl } from '../../src/parse/names.ts';
import { parseAltitude } from '../../src/parse/units/altitude.ts';
import { parseBatterTemperature } from '../../src/parse/units/batter-temperature.ts';
import { parseDay } from '../../src/parse/units/date.ts';
import { parseDays } from '../../src/parse/units/days.ts';
import { parseDensity } from '../../src/parse/units/density.ts';
import { parseDuration } from '../../src/parse/units/duration.ts';
import {
  parseEggCount,
  parseEggSize,
  parseEggWeight,
  parseShelledMass,
} from '../../src/parse/units/egg-size.ts';
import { parseFinishedHeight, parseLength } from '../../src/parse/units/length.ts';
import { parseMass } from '../../src/parse/units/mass.ts';
import { parseDayAndTime, parseTimeOfDay } from '../../src/parse/units/moment.ts';
import { parseMoney, parseRate } from '../../src/parse/units/money.ts';
import { parsePerArea } from '../../src/parse/units/per-area.ts';
import { parseProportion, parseShare } from '../../src/parse/units/share.ts';
import { parseTemperature } from '../../src/parse/units/temperature.ts';
import { parseTimeZone } from '../../src/parse/units/time-zone.ts';
import { parseVolume } from '../../src/parse/units/volume.ts';

const PARSERS: readonly ((text: string) => Result<unknown>)[] = [
  ...[parseLength, parseFinishedHeight, parseMass, parseVolume, parseTemperature, parseBatterTemperature],
  ...[
    parseShare,
    parseProportion,
    parseDensity,
    parsePerArea,
    parseDuration,
    parseDay,
    parseDays,
    parseAltitude,
  ],
  ...[parseEggSize, parseEggWeight, parseShelledMass, parseTimeOfDay, parseDayAndTime, parseTimeZone],
  ...[parseId, parseSiteUrl, parseContentPath, parseColour],
  (text) => parseEggCount(text, 'egg', { shelledG: 50 }),
  (text) => parseMoney(text, POUNDS),
  (text) => parseRate(text, 'h', POUNDS),
  (text) => parseRate(text, 'kWh', POUNDS),
  localMinute,
];

/** Times of day are looked up in a zone only when they are times at all. */
function localMinute(text: string): Result<unknown> {
  const time = parseDayAndTime(text);
  return time.ok ? minuteOfLocal(time.value, 'Europe/London') : time;
}

/** One of each kind as it should be written. */
export const UNIT_TEXTS: readonly string[] = [
  ...[
    '9in',
    '2 3/4in',
    '2¾in',
    '23 cm',
    '65 mm',
    '250 g',
    '1 lb 2 oz',
    '1.2 kg',
    '1850ml',
    '4.8 l',
    '2 1/2 cups',
  ],
  ...[
    '160C',
    '140C fan',
    '350F',
    'gas 4',
    '6 %',
    '0.85 g/ml',
    '0.12 g/cm2',
    '45 min',
    '1 h 30 min',
    '3 days',
  ],
  ...[
    '2026-11-01',
    '14:30',
    '2026-11-28 14:00',
    'Europe/London',
    '1200 m',
    '4000 ft',
    'UK medium',
    '51 g',
    '5',
  ],
  ...[
    '12.00',
    '14.00 per h',
    '0.27 per kWh',
    'round-8',
    'https://bakery.example.org/cakes/',
    'assets/logo.svg',
    '#fffdf8',
  ],
];

/** What every one of them makes of a text. */
export function unitAnswers(text: string): Result<unknown>[] {
  return PARSERS.map((parse) => parse(text));
}
