/**
 * How gently should a tin of this width be baked? By the time the middle is done the edge has had heat for
 * long: dose X = (T_oven − 100)·(t_done − t_edge), kelvin × minutes, with t_edge ≈ 27.5·((T_oven − 100)/60)^−0.857
 * ·(D_in/8)^0.135 min, the time the edge takes to reach 95 °C. Keeping X at 2,000 or less gives about 178, 167, 159,
 * 150 and 146 °C for rounds of 6, 7, 8, 10 and 12 in, 3 in high: the trade's advice to drop the heat as tins grow.
 * House rule, from finite-volume runs of plain sponge 4–14 in wide at 140–180 °C; other heights are untested.
 */

import type { CoreKind } from '../../domain/bake-log.ts';
import type { BakeConstants } from './constants.ts';
import { coreClock } from './heating-core.ts';
import { seriesClock } from './series-minutes.ts';
import type { BakeSolid } from './solid.ts';

export const MOST_DOSE_K_MIN = 2000;
const COOLEST_C = 120;
const HOTTEST_C = 220;

/** Minutes until the edge is at 95 °C. */
function edgeMinutes(acrossMm: number, ovenC: number): number {
  return 27.5 * ((ovenC - 100) / 60) ** -0.857 * (acrossMm / 25.4 / 8) ** 0.135;
}

/** Edge dose of a plain sponge, K·min; null below 100 °C or where the core's rule does not reach. */
export function edgeDose(
  solid: BakeSolid,
  ovenC: number,
  core: CoreKind,
  constants: BakeConstants,
): number | null {
  return doseClock(solid, core, constants)(ovenC);
}

function doseClock(
  solid: BakeSolid,
  core: CoreKind,
  constants: BakeConstants,
): (ovenC: number) => number | null {
  const minutesAt = seriesClock(solid, constants);
  const factorAt = coreClock(core, solid, constants);
  return (ovenC) => {
    const [series, factor] = [minutesAt(ovenC), factorAt?.(ovenC) ?? null];
    if (factor === null || series === null || ovenC <= 100) return null;
    const doneMin = constants.lagMin + factor * series;
    return Math.max(0, (ovenC - 100) * (doneMin - edgeMinutes(solid.acrossMm, ovenC)));
  };
}

/**
 * Hottest conventional setting from 120 to 220 °C that keeps the dose of a plain sponge at `most` or less,
 * unrounded; null where even 120 °C exceeds it or the core's rule does not reach.
 */
export function gentlestDialC(
  solid: BakeSolid,
  core: CoreKind,
  constants: BakeConstants,
  most = MOST_DOSE_K_MIN,
): number | null {
  const doseOf = doseClock(solid, core, constants);
  const doseAt = (ovenC: number): number => doseOf(ovenC) ?? Infinity;
  if (doseAt(COOLEST_C) > most) return null;
  if (doseAt(HOTTEST_C) <= most) return HOTTEST_C;
  let [low, high] = [COOLEST_C, HOTTEST_C];
  while (high - low > 1e-4) {
    const middle = (low + high) / 2;
    if (doseAt(middle) <= most) low = middle;
    else high = middle;
  }
  return low;
}
