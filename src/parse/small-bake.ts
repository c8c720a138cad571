/** `bake` of small cakes: minutes by the baker's own watch, because the bake times are not made for small cases. */
import type { SmallBake } from '../domain/bun-tin.ts';
import { error } from './problems.ts';
import { parseDuration } from './units/duration.ts';
import { parseTemperature } from './units/temperature.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

/** The minutes at a path; undefined where they are left out, or after reporting what is wrong. */
export function readSmallBake(reader: YamlReader, ...path: YamlPath): SmallBake | undefined {
  const firstLookMin = reader.parsed(parseDuration, ...path, 'look');
  const byMin = reader.parsed(parseDuration, ...path, 'by');
  const ovenC = reader.parsed(parseTemperature, ...path, 'oven')?.ovenC;
  if (firstLookMin === undefined || byMin === undefined) return undefined;
  if (firstLookMin > byMin) {
    const message = `The first look after ${firstLookMin} min comes later than ${byMin} min, when they are to be out`;
    reader.report(error('small-bake-swapped', message, 'Swap the two.'), ...path, 'look');
    return undefined;
  }
  return { firstLookMin, byMin, ...present({ ovenC }) };
}
