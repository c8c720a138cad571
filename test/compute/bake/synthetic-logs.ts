/** Invented logs with a known truth, for asking whether the windows hold what they promise. */
import { BAKE_CONSTANTS, neutralBake } from '../../../src/compute/bake/index.ts';
import type { BakeLogRow } from '../../../src/domain/bake-log.ts';
import { FV_ROWS, type FvRow } from '../../outside/fv-minutes/fv-rows.ts';
import { seeded } from '../loads/random.ts';

export type Truth = 'series' | 'finite volume';

/** Tins and ovens of the finite-volume table without a core: 4 to 14 in, 2 to 4 in high, 140 to 180 °C. */
export const SETTINGS = FV_ROWS.filter((row) => row.core === 'none');

const { lagMin, doneSdMin } = BAKE_CONSTANTS;

/** Normal deviates by Box and Muller. */
function normals(seed: number): { random: () => number; normal: () => number } {
  const random = seeded(seed);
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  return { random, normal };
}

/** Minutes for a true factor, before the baker's own scatter. */
export function trueMinutes(row: FvRow, factor: number, truth: Truth): number {
  if (truth === 'finite volume') return lagMin + factor * (row.min95 - lagMin);
  const { tin, heightMm, ovenC } = row;
  const bake = neutralBake({ tin, heightMm, ovenC, core: 'none', band: false }, BAKE_CONSTANTS);
  if (!bake.ok) throw new Error(bake.problems[0]?.message);
  return lagMin + factor * bake.value.neutralMin;
}

/** A row of the log as a baker would write it: whole minutes. */
export function logRow(setting: FvRow, minutes: number): BakeLogRow {
  return {
    date: '2026-11-01',
    recipeId: 'sponge',
    flavourIds: [],
    tin: setting.tin,
    count: 1,
    batterG: 800,
    ovenC: setting.ovenC,
    minutes: Math.round(minutes),
    core: 'none',
    band: false,
    finishedHeightMm: setting.heightMm,
  };
}

export interface SyntheticLog {
  rows: BakeLogRow[];
  /** Bakes to come, each with the minutes it will take. */
  next: { setting: FvRow; minutes: number }[];
}

/** Five logged bakes and four to come, of one recipe whose factor is drawn from a sponge's prior. */
export function syntheticLog(seed: number, truth: Truth): SyntheticLog {
  const { random, normal } = normals(seed);
  const factor = Math.exp(BAKE_CONSTANTS.classLogSd * normal());
  const bakeOnce = () => {
    const setting = SETTINGS[Math.floor(random() * SETTINGS.length)];
    if (!setting) throw new Error('no settings');
    return { setting, minutes: trueMinutes(setting, factor, truth) + doneSdMin * normal() };
  };
  const rows = Array.from({ length: 5 }, bakeOnce).map(({ setting, minutes }) => logRow(setting, minutes));
  return { rows, next: Array.from({ length: 4 }, bakeOnce) };
}
