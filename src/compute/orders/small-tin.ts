/**
 * What small cakes are baked in: the vessel as it stands in the oven, and one of its cups. An ordinary small tin
 * is one cup by itself.
 */
import type { BunTin, SmallBake } from '../../domain/bun-tin.ts';
import type { Kitchen } from '../../domain/kitchen.ts';
import { quantiseMl } from '../../domain/quantise.ts';
import type { Tin } from '../../domain/tin.ts';
import { volumeMl } from '../shapes/index.ts';

export interface SmallTin {
  vessel: Tin;
  cup: Tin;
  cups: number;
  bake?: SmallBake;
}

function ofCups({ id, name, cups, cup, lengthMm, widthMm, owned, unit, bake }: BunTin): SmallTin {
  const known = { id, name, unit, owned, depthMm: cup.depthMm };
  const measuredVolumeMl = quantiseMl(cups * volumeMl(cup));
  return {
    vessel: { ...known, shape: { kind: 'rectangle', lengthMm, widthMm }, measuredVolumeMl },
    cup: { ...known, ...cup },
    cups,
    ...(bake === undefined ? {} : { bake }),
  };
}

/** The bun tin or ordinary tin of that id; null when the kitchen has neither. */
export function smallTin(
  { tins, bunTins = [] }: Pick<Kitchen, 'tins' | 'bunTins'>,
  id: string,
): SmallTin | null {
  const bun = bunTins.find((one) => one.id === id);
  if (bun !== undefined) return ofCups(bun);
  const tin = tins.find((one) => one.id === id);
  return tin === undefined ? null : { vessel: tin, cup: tin, cups: 1 };
}

/** How often a tin of so many cups is filled for so many pieces: `tinsFor(30, 12)` is 3. */
export const tinsFor = (pieces: number, cups: number): number => Math.ceil(pieces / cups);
