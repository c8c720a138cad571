/**
 * How high does the raw batter stand? Its volume is batter ÷ raw density; the tin's volume curve, read
 * backwards, gives the height. The fill limit is the raw height that bakes level with the rim: for straight
 * walls ρ_yield ÷ ρ_raw of the depth, about half for a creamed batter. Rules: common practice, no source.
 */
import type { Warning } from '../../domain/problem.ts';
import { quantiseMl, quantiseMm } from '../../domain/quantise.ts';
import type { Tin } from '../../domain/tin.ts';
import { heightForVolumeMm, volumeMl } from '../shapes/index.ts';

/** A cake under two fifths of the tin's depth bakes in the shade of the wall: common practice, no source. */
const SHALLOW_SHARE = 0.4;

export interface RawFill {
  rawVolumeMl: number;
  rawFillMm: number;
  /** Raw height that bakes level with the rim, mm. */
  fillLimitMm: number;
}

/** Raw fill of a tin holding `massG` of batter, given the raw density in g/mL and the batter of a full tin, g. */
export function rawFill(tin: Tin, massG: number, rawDensityGPerMl: number, yieldGPerMl: number): RawFill {
  const rawVolumeMl = quantiseMl(massG / rawDensityGPerMl);
  const levelVolumeMl = (volumeMl(tin) * yieldGPerMl) / rawDensityGPerMl;
  return {
    rawVolumeMl,
    rawFillMm: quantiseMm(heightForVolumeMm(tin, rawVolumeMl)),
    fillLimitMm: quantiseMm(heightForVolumeMm(tin, levelVolumeMl)),
  };
}

/** Rounding of the inputs must not look like an overfilled tin. */
const NOISE_MM = 0.05;

function fillHigh(tin: Tin, fill: RawFill): Warning {
  return {
    code: 'fill-high',
    message: `${tin.name}: ${Math.round(fill.fillLimitMm)} mm of raw batter bakes level with the rim and this is ${Math.round(fill.rawFillMm)} mm: give it a collar and a tray beneath.`,
  };
}

function overBrim(tin: Tin, fill: RawFill): Warning {
  return {
    code: 'fill-over-brim',
    message: `${tin.name}: the raw batter alone (${Math.round(fill.rawFillMm)} mm) comes above the rim: use a deeper tin or hold some back.`,
  };
}

function shallow(tin: Tin, heightMm: number): Warning {
  return {
    code: 'shallow-fill',
    message: `${tin.name}: ${Math.round(heightMm)} mm of cake sits low in ${Math.round(tin.depthMm)} mm of tin and browns unevenly: look early, or use a shallower tin.`,
  };
}

/** What to know before filling this tin: too high, over the brim, or very low. */
export function fillWarnings(tin: Tin, fill: RawFill, heightMm: number): Warning[] {
  if (fill.rawFillMm > tin.depthMm + NOISE_MM) return [overBrim(tin, fill)];
  if (fill.rawFillMm > fill.fillLimitMm + NOISE_MM) return [fillHigh(tin, fill)];
  return heightMm < SHALLOW_SHARE * tin.depthMm ? [shallow(tin, heightMm)] : [];
}
