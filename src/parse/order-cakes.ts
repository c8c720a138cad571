/** All that an order is made of: its tiers with the dummies among them, cutting cakes and small cakes. */
import type { DummyTier, TierAsk } from '../domain/order.ts';
import { readDummy } from './order-dummy.ts';
import type { OrderPlaces } from './order-sense.ts';
import { readSmallCakes } from './order-small-cakes.ts';
import { readTier } from './order-tier.ts';
import type { OrderContext } from './orders.ts';
import { error } from './problems.ts';
import type { YamlReader } from './yaml/yaml-reader.ts';
import type { YamlPath } from './yaml/yaml-source.ts';

export interface OrderCakes {
  /** In the order's own order; null where something is wrong. */
  tiers: (TierAsk | null)[];
  dummies: (DummyTier | null)[];
  places: OrderPlaces;
}

const pathsOf = (reader: YamlReader, key: string): YamlPath[] =>
  Array.from({ length: reader.items(key) }, (_, index) => [key, index]);

/** A cutting cake is read like a tier and stands beside them. */
function readCutting(reader: YamlReader, path: YamlPath, context: OrderContext): TierAsk | null {
  const cake = readTier(reader, path, context);
  return cake === null ? null : { ...cake, beside: 'cutting cake' };
}

/** Everything under `tiers`, `cutting_cakes` and `small_cakes`. */
export function readCakes(reader: YamlReader, context: OrderContext): OrderCakes {
  const [stack, cutting, small] = [
    pathsOf(reader, 'tiers'),
    pathsOf(reader, 'cutting_cakes'),
    pathsOf(reader, 'small_cakes'),
  ];
  if (!['tiers', 'cutting_cakes', 'small_cakes'].some((key) => reader.has(key))) {
    const hint = "Add it, for example 'tiers: [{ tin: round-8, recipe: vanilla-equal-weights }]'.";
    reader.report(error('key-missing', "The file has no 'tiers'", hint));
  }
  const isDummyAt = (path: YamlPath): boolean => reader.has(...path, 'dummy');
  const tiers = stack.filter((path) => !isDummyAt(path));
  return {
    tiers: [
      ...tiers.map((path) => readTier(reader, path, context)),
      ...cutting.map((path) => readCutting(reader, path, context)),
      ...small.map((path) => readSmallCakes(reader, path, context)),
    ],
    dummies: stack.flatMap((path, at) => (isDummyAt(path) ? [readDummy(reader, path, at, context)] : [])),
    places: { cakes: [...tiers, ...cutting, ...small], stack },
  };
}
