/** `times` in kitchen.yaml: how long each piece of work takes here; the usual for what nobody has timed. */
import { FINISH_KINDS } from '../domain/finish.ts';
import { MIXING_METHODS } from '../domain/recipe.ts';
import { FINISH_TIMES, type KitchenTimes, METHOD_TIMES, TIME_ENTRIES, USUAL_TIMES } from '../domain/times.ts';
import { readMinutesBy } from './minutes-by.ts';
import { parseDuration } from './units/duration.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

/** The kitchen's own times over the usual ones. */
export function readTimes(reader: YamlReader): KitchenTimes {
  const times = { ...USUAL_TIMES };
  for (const { key, field } of TIME_ENTRIES) {
    const minutes = reader.parsed(parseDuration, 'times', key);
    if (minutes !== undefined) times[field] = minutes;
  }
  for (const { key, field, kind } of METHOD_TIMES) {
    const named = { names: MIXING_METHODS, usual: USUAL_TIMES[field], zero: kind === 'waiting' };
    times[field] = readMinutesBy(reader, ['times', key], named);
  }
  for (const { key, field } of FINISH_TIMES) {
    const named = { names: FINISH_KINDS, usual: USUAL_TIMES[field], zero: true };
    times[field] = readMinutesBy(reader, ['times', key], named);
  }
  return times;
}
