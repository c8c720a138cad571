/** `times` in kitchen.yaml: how long each piece of work takes here; the usual for what nobody has timed. */
import { type KitchenTimes, TIME_ENTRIES, USUAL_TIMES } from '../domain/times.ts';
import { parseDuration } from './units/duration.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

/** The kitchen's own times over the usual ones. */
export function readTimes(reader: YamlReader): KitchenTimes {
  const times = { ...USUAL_TIMES };
  for (const { key, field } of TIME_ENTRIES) {
    const minutes = reader.parsed(parseDuration, 'times', key);
    if (minutes !== undefined) times[field] = minutes;
  }
  return times;
}
