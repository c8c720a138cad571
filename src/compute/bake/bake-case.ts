/**
 * One bake, put in numbers: the tin, how high the cake stands, the oven, what is round and in the tin. Gives
 * the neutral minutes: the series for a plain sponge × tin × band × core, to which a recipe's own time
 * factor and the lag are still to come: t = lag + m·(across ÷ 8 in)^power·neutral.
 */
import type { CoreKind } from '../../domain/bake-log.ts';
import type { Problem } from '../../domain/problem.ts';
import { fail, type Result, succeed } from '../../domain/result.ts';
import type { TinForm, TinMaterial } from '../../domain/tin.ts';
import type { BakeConstants } from './constants.ts';
import { coreFactor } from './heating-core.ts';
import { seriesMinutes } from './series-minutes.ts';
import { type BakeSolid, bakeSolid } from './solid.ts';

export interface BakeCase {
  tin: TinForm & { material?: TinMaterial };
  /** Finished height, mm. */
  heightMm: number;
  /** Conventional oven setting, °C. */
  ovenC: number;
  core: CoreKind;
  band: boolean;
  /** Temperature of the batter when it goes in, where it is not the constants', °C. */
  batterC?: number;
  /** Temperature of the middle at the end, where it is not the constants' (a probe's reading), °C. */
  doneC?: number;
}

export interface NeutralBake {
  solid: BakeSolid;
  seriesMin: number;
  tinFactor: number;
  bandFactor: number;
  coreFactor: number;
  /** The product of the four. */
  neutralMin: number;
  /** ln(across ÷ 8 in). */
  lnSize: number;
}

const REFERENCE_MM = 8 * 25.4;

/**
 * Neutral minutes of a bake. Fails when the oven is no hotter than a done cake, or when a core is asked for in
 * a tin too small or too wide for the rule.
 */
export function neutralBake(bake: BakeCase, usual: BakeConstants): Result<NeutralBake> {
  const constants = bake.batterC === undefined ? usual : { ...usual, batterC: bake.batterC };
  const solid = bakeSolid(bake.tin, bake.heightMm);
  const seriesMin = seriesMinutes(solid, bake.ovenC, constants, bake.doneC ?? constants.centreC);
  const core = coreFactor(bake.core, solid, bake.ovenC, constants);
  if (seriesMin === null) return fail(tooCool(bake, constants));
  if (core === null) return fail(coreSize(solid));
  const tinFactor = materialFactor(bake.tin.material, constants);
  const bandFactor = bake.band ? constants.insulatedBand : 1;
  const neutralMin = seriesMin * tinFactor * bandFactor * core;
  const lnSize = Math.log(solid.acrossMm / REFERENCE_MM);
  return succeed({ solid, seriesMin, tinFactor, bandFactor, coreFactor: core, neutralMin, lnSize });
}

/** Time factor of a tin's material; 1 for those that nobody has given a figure for. */
function materialFactor(material: TinMaterial | undefined, constants: BakeConstants): number {
  if (material === 'dark') return constants.darkTin;
  return material === 'bright aluminium' ? constants.shinyTin : 1;
}

function tooCool(bake: BakeCase, constants: BakeConstants): Problem {
  const doneC = bake.doneC ?? constants.centreC;
  return {
    code: 'oven-too-cool',
    severity: 'error',
    message: `An oven at ${bake.ovenC} °C cannot bring batter from ${constants.batterC} °C to ${doneC} °C in the middle.`,
    hint: 'Write the oven’s setting, for example 160C, and a probe reading between batter and oven.',
  };
}

function coreSize(solid: BakeSolid): Problem {
  return {
    code: 'core-size',
    severity: 'error',
    message: `Heating cores are reckoned for tins 6 to 14 in across; this one is ${(solid.acrossMm / 25.4).toFixed(1)} in.`,
    hint: 'Leave the core out for this tin.',
  };
}
