/** Plain values as few bytes outside the engine's heap: a chart of two hundred tins in a thirtieth of its room. */
import { deserialize, serialize } from 'node:v8';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import type { Packing } from '../../views/chart-views.ts';

/** Fast, not smallest. */
const LEVEL = 1;

export const deflated: Packing = {
  mostRows: 4000,
  pack: (value) => deflateRawSync(serialize(value), { level: LEVEL }),
  unpack: (packed) => deserialize(inflateRawSync(packed)),
};
