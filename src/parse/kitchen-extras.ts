/** The part of kitchen.yaml that is about altitude, finishing, printing and orders. */
import type { CostSettings } from '../domain/costs.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Business, LabelSettings } from '../domain/label-settings.ts';
import type { PortionSize } from '../domain/portion.ts';
import type { BookletSettings, Printable } from '../domain/printable.ts';
import type { Place } from '../domain/problem.ts';
import type { KitchenTimes } from '../domain/times.ts';
import type { WorkSettings } from '../domain/work-settings.ts';
import { readBooklet } from './booklet-settings.ts';
import { readCosts } from './costs.ts';
import { readFinishing } from './finishing-settings.ts';
import { readTimes } from './kitchen-times.ts';
import { type LabelNames, readBusiness, readLabelSettings } from './label-settings.ts';
import { readPortionSizes } from './portion-sizes.ts';
import { type PrintableNames, readPrintables } from './printables.ts';
import { error } from './problems.ts';
import { quote } from './quote.ts';
import { parseAltitude } from './units/altitude.ts';
import { readWorkSettings } from './work-settings.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';

export interface KitchenExtras {
  finishing: FinishingSettings;
  altitudeM: number | null;
  /** Further styles to print in, by id, each once, with the place that names it. */
  houseStyles: { id: string; place: Place }[];
  booklet: BookletSettings;
  costs: CostSettings;
  work: WorkSettings;
  times: KitchenTimes;
  business: Business | null;
  portionSizes: PortionSize[];
  publishesOrders: boolean;
  /** Reads `label` once the tins and finishes are known; problems join the kitchen's. */
  label(names: LabelNames): LabelSettings;
  /** Reads `printables` once the things it may name are known; problems join the kitchen's. */
  printables(names: PrintableNames): Printable[] | null;
}

function readStyleNames(reader: YamlReader): KitchenExtras['houseStyles'] {
  const found: KitchenExtras['houseStyles'] = [];
  for (let index = 0; index < reader.items('house_styles'); index += 1) {
    const id = reader.text('house_styles', index);
    if (id === undefined) continue;
    if (found.some((style) => style.id === id)) {
      const message = `${quote(id)} stands in this list twice`;
      reader.report(error('item-repeated', message, 'Delete one of the two.'), 'house_styles', index);
    } else found.push({ id, place: reader.source.at(['house_styles', index]) });
  }
  return found;
}

/** The extras of a kitchen's file; what is wrong with them is kept in the reader. */
export function readExtras(reader: YamlReader): KitchenExtras {
  return {
    finishing: readFinishing(reader),
    altitudeM: reader.parsed(parseAltitude, 'altitude') ?? null,
    houseStyles: readStyleNames(reader),
    booklet: readBooklet(reader),
    costs: readCosts(reader),
    work: readWorkSettings(reader),
    times: readTimes(reader),
    business: readBusiness(reader),
    portionSizes: readPortionSizes(reader),
    publishesOrders: reader.word(['yes'] as const, 'orders', 'publish') === 'yes',
    label: (names) => readLabelSettings(reader, names),
    printables: (names) => readPrintables(reader, names),
  };
}
