/** When hands work, how many there are, how long batter waits, and what the oven holds. */
import { type Result, succeed } from '../domain/result.ts';
import {
  type OvenRoom,
  STANDINGS,
  USUAL_OVEN_ROOM,
  USUAL_WORK,
  type WorkSettings,
} from '../domain/work-settings.ts';
import { readMinutesBy } from './minutes-by.ts';
import { error, refuse } from './problems.ts';
import { quote } from './quote.ts';
import { parseDuration } from './units/duration.ts';
import { parseLength } from './units/length.ts';
import { parseMass } from './units/mass.ts';
import { parseTimeOfDay } from './units/moment.ts';
import { parseTimeZone } from './units/time-zone.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

const LONGEST_RECOVERY_MIN = 60;

const STANDING = { names: STANDINGS, usual: USUAL_WORK.batterStandsMin, zero: false };

interface Limits {
  key: string;
  leastMm: number;
  mostMm: number;
}

const LENGTHS: Record<'widthMm' | 'depthMm' | 'airGapMm' | 'wallGapMm', Limits> = {
  widthMm: { key: 'width', leastMm: 150, mostMm: 1500 },
  depthMm: { key: 'depth', leastMm: 150, mostMm: 1500 },
  airGapMm: { key: 'air_gap', leastMm: 0, mostMm: 100 },
  wallGapMm: { key: 'wall_gap', leastMm: 0, mostMm: 100 },
};

function parseWithin(text: string, { leastMm, mostMm }: Limits): Result<number> {
  const length = parseLength(text, { zero: leastMm === 0 });
  if (!length.ok) return length;
  if (length.value.mm >= leastMm && length.value.mm <= mostMm) return succeed(length.value.mm);
  const hint = `Use ${leastMm} mm to ${mostMm} mm. Check the unit.`;
  return refuse('quantity-out-of-range', `${quote(text)} is out of range here`, hint);
}

function parseRecovery(text: string): Result<number> {
  const minutes = parseDuration(text);
  if (!minutes.ok || minutes.value <= LONGEST_RECOVERY_MIN) return minutes;
  const hint = `Use 1 min to ${LONGEST_RECOVERY_MIN} min.`;
  return refuse('quantity-out-of-range', `${quote(text)} is longer than any oven takes`, hint);
}

/** Lighter than this everything would be lifted by two; heavier, nobody would be spared. */
const LIFT = { leastG: 1000, mostG: 50_000 };

function parseLift(text: string): Result<number> {
  const grams = parseMass(text);
  if (!grams.ok || (grams.value >= LIFT.leastG && grams.value <= LIFT.mostG)) return grams;
  const hint = `Use ${LIFT.leastG / 1000} kg to ${LIFT.mostG / 1000} kg. Check the unit.`;
  return refuse('quantity-out-of-range', `${quote(text)} is no weight from which two people lift`, hint);
}

function readOvenRoom(reader: YamlReader): OvenRoom {
  const room = {
    ...USUAL_OVEN_ROOM,
    shelves: reader.number('oven', 'shelves') ?? USUAL_OVEN_ROOM.shelves,
    recoveryMin: reader.parsed(parseRecovery, 'oven', 'recovery') ?? USUAL_OVEN_ROOM.recoveryMin,
    kwhToHeat: reader.number('oven', 'kwh_to_heat') ?? USUAL_OVEN_ROOM.kwhToHeat,
    kwhPerHour: reader.number('oven', 'kwh_per_hour') ?? USUAL_OVEN_ROOM.kwhPerHour,
  };
  for (const name of ['widthMm', 'depthMm', 'airGapMm', 'wallGapMm'] as const) {
    const limits = LENGTHS[name];
    const written = reader.parsed((text) => parseWithin(text, limits), 'oven', limits.key);
    if (written !== undefined) room[name] = written;
  }
  return room;
}

function readWorkingDay(reader: YamlReader): WorkSettings['workingDay'] {
  const usual = USUAL_WORK.workingDay;
  const fromMin = reader.parsed(parseTimeOfDay, 'working_day', 'from') ?? usual.fromMin;
  const toMin = reader.parsed(parseTimeOfDay, 'working_day', 'to') ?? usual.toMin;
  if (fromMin < toMin) return { fromMin, toMin };
  const hint =
    'Write when work starts and when it stops on the same day: { from: 07:00, to: 21:00 }; 24:00 is midnight.';
  reader.report(
    error('working-day-backwards', 'The working day ends before it begins', hint),
    'working_day',
    reader.has('working_day', 'to') ? 'to' : 'from',
  );
  return usual;
}

/** The kitchen's working hours, hands, oven and patience of its batters; the usual for what is left out. */
export function readWorkSettings(reader: YamlReader): WorkSettings {
  return {
    timeZone: reader.parsed(parseTimeZone, 'time_zone') ?? USUAL_WORK.timeZone,
    workingDay: readWorkingDay(reader),
    hands: reader.number('hands') ?? USUAL_WORK.hands,
    liftTwoAboveG: reader.parsed(parseLift, 'two_people_lift_above') ?? USUAL_WORK.liftTwoAboveG,
    batterStandsMin: readMinutesBy(reader, ['batter_stands'], STANDING),
    ovenRoom: readOvenRoom(reader),
  };
}
