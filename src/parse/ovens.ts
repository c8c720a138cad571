/**
 * The ovens of kitchen.yaml: 'oven' is the main one, 'further_ovens' a list of others, each with an id that the bake
 * log and recipes can name. Cores and bands lie in one drawer for all of them.
 */
import {
  type DialScale,
  MAIN_OVEN,
  type OvenSetting,
  ovenIdOf,
  PLAIN_OVEN,
  USUAL_DIAL,
} from '../domain/kitchen.ts';
import type { KnownNames } from './known-names.ts';
import { parseId } from './names.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { present, type YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

export interface OvensOutcome {
  oven: OvenSetting | undefined;
  further: OvenSetting[];
  names: KnownNames;
}

/** Ovens that a kitchen without any word about them has. */
export const ONE_OVEN: KnownNames = { ids: [MAIN_OVEN], broken: [] };

const usualDial = (reader: YamlReader): DialScale =>
  USUAL_DIAL[reader.text('locale') === 'en-US' ? 'en-US' : 'en-GB'];

const heatOf = (reader: YamlReader, path: YamlPath): Pick<OvenSetting, 'fan' | 'dial' | 'name'> => ({
  ...present({ name: reader.text(...path, 'name') }),
  fan: reader.word(['fan', 'convection'] as const, ...path, 'heat') !== undefined,
  dial: reader.word(['C', 'F', 'gas'] as const, ...path, 'dial') ?? usualDial(reader),
});

function readMain(reader: YamlReader): OvenSetting | undefined {
  if (!reader.has('oven')) {
    const dial = usualDial(reader);
    return dial === PLAIN_OVEN.dial ? undefined : { ...PLAIN_OVEN, dial };
  }
  return {
    ...present({ id: reader.parsed(parseId, 'oven', 'id') }),
    ...heatOf(reader, ['oven']),
    core: reader.word(['none', 'hollow', 'solid'] as const, 'oven', 'core') ?? PLAIN_OVEN.core,
    band: reader.truth('oven', 'band') ?? PLAIN_OVEN.band,
  };
}

/** The ovens; what is wrong with them is kept in the reader. */
export function readOvens(reader: YamlReader): OvensOutcome {
  const oven = readMain(reader);
  const { core, band } = oven ?? PLAIN_OVEN;
  const ids = [ovenIdOf(oven ?? PLAIN_OVEN)];
  const further: OvenSetting[] = [];
  for (let index = 0; index < reader.items('further_ovens'); index += 1) {
    const path = ['further_ovens', index] as const;
    const id = reader.parsed(parseId, ...path, 'id');
    if (id === undefined) continue;
    if (ids.includes(id)) {
      const hint = 'Give each its own id, such as the-small-one.';
      reader.report(error('item-repeated', `Another oven is called ${quote(id)}`, hint), ...path, 'id');
      continue;
    }
    ids.push(id);
    further.push({ id, ...heatOf(reader, path), core, band });
  }
  return { oven, further, names: { ids, broken: [] } };
}
