/**
 * How much sooner is a cake done with a heating core in the middle? Tins 6 to 14 in across, log-sd 0.10.
 * Solid core: 0.863 + 0.012·(D_in − 8) (house rule, from the finite-volume runs in the outside checks).
 * Hollow core, open to the oven: it makes a ring of the tin, and is reckoned as one, two walls (gap and height)
 * against the whole round. The straight line 0.66 + 0.036·(D_in − 8) was tried first: 16 % off those runs in a
 * hot oven at 6 in, because in so narrow a gap the gain depends on the oven too; the ring is within 8 %.
 * Common practice: a core is worth using above 8 in.
 */
import type { CoreKind } from '../../domain/bake-log.ts';
import type { BakeConstants } from './constants.ts';
import { seriesClock } from './series-minutes.ts';
import type { BakeSolid, Side } from './solid.ts';

const MM_PER_IN = 25.4;
/** 6 and 14 in, with room for their metric sisters (150 and 355 mm). */
const LEAST_MM = 149.5;
const MOST_MM = 356;
const HOLLOW_CORE_MM = 60;
/** Beyond the width the rule names, so that an 8 in tin given as 205 mm still counts as 8 in. */
const WORTH_FROM_MM = 8 * MM_PER_IN + 2;
const SHALLOW_MM = 50;
/** A tray, however high the cake comes out of it: a core would fall over in so little batter. */
const SHALLOW_TIN_MM = 60;

/** Factor on the time in the oven (lag apart) at an oven setting in °C; null when that cannot be reckoned. */
export type CoreClock = (ovenC: number) => number | null;

/** The core's factor for any oven; null for a size that the rule does not cover. */
export function coreClock(core: CoreKind, solid: BakeSolid, constants: BakeConstants): CoreClock | null {
  if (core === 'none') return () => 1;
  if (solid.acrossMm < LEAST_MM || solid.acrossMm > MOST_MM) return null;
  const factor = 0.863 + 0.012 * (solid.acrossMm / MM_PER_IN - 8);
  return core === 'solid' ? () => factor : ringOverRound(solid, constants);
}

/** The core's factor at one oven setting in °C; null where the rule does not reach. */
export function coreFactor(
  core: CoreKind,
  solid: BakeSolid,
  ovenC: number,
  constants: BakeConstants,
): number | null {
  return coreClock(core, solid, constants)?.(ovenC) ?? null;
}

/** Why a core is left out, where it is. */
export type NoCore = 'narrow' | 'shallow' | 'tube' | 'foam';

/** What the rule needs to know of the tin and the batter besides the solid. */
export interface CoreSetting {
  /** Depth of the tin, mm; deep when left out. */
  depthMm?: number;
  /** An egg-white foam, which wants a bare wall to climb and bakes in a ring tin. */
  foam?: boolean;
}

/** Why common practice would leave the core out; null where it would put one in. */
export function noCoreBecause(
  { acrossMm, heightMm, sides }: BakeSolid,
  tin: CoreSetting = {},
): NoCore | null {
  const { depthMm = Infinity, foam = false } = tin;
  if (sides.length === 2 && sides.every((side) => side.geometry === 'wall')) return 'tube';
  if (acrossMm <= WORTH_FROM_MM) return 'narrow';
  if (heightMm <= SHALLOW_MM || depthMm < SHALLOW_TIN_MM) return 'shallow';
  return foam ? 'foam' : null;
}

/** Whether common practice would put a core in: wider than 8 in, and not a shallow tray, a ring or a foam. */
export const coreIsWorthIt = (solid: BakeSolid, tin: CoreSetting = {}): boolean =>
  noCoreBecause(solid, tin) === null;

function ringOverRound({ acrossMm, heightMm }: BakeSolid, constants: BakeConstants): CoreClock {
  const height: Side = { geometry: 'wall', halfMm: heightMm / 2 };
  const gap: Side = { geometry: 'wall', halfMm: (acrossMm - HOLLOW_CORE_MM) / 4 };
  const round: Side = { geometry: 'cylinder', halfMm: acrossMm / 2 };
  const ringMinutes = seriesClock({ sides: [gap, height], acrossMm, heightMm }, constants);
  const wholeMinutes = seriesClock({ sides: [round, height], acrossMm, heightMm }, constants);
  return (ovenC) => {
    const [ring, whole] = [ringMinutes(ovenC), wholeMinutes(ovenC)];
    return ring === null || whole === null ? null : ring / whole;
  };
}
