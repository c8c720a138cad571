/**
 * Where water boils cooler, a cake is done cooler: T_done = min(95, boiling point − 3) °C (house rule). Pressure
 * by the International Standard Atmosphere (ICAO Doc 7488, troposphere) and boiling point by Antoine's
 * equation for water, 1–100 °C (both from memory). Valid from sea level to 5,000 m.
 */
import { quantiseRatio } from '../../domain/quantise.ts';

const SEA_LEVEL_MMHG = 760;
const BELOW_BOILING_C = 3;
const HIGHEST_M = 5000;

/** Boiling point of water, °C, at an altitude in m; a RangeError outside 0 to 5,000 m. */
export function boilingPointC(altitudeM: number): number {
  if (!(altitudeM >= 0 && altitudeM <= HIGHEST_M))
    throw new RangeError(`Altitude is 0 to 5000 m, not ${altitudeM}.`);
  const mmHg = SEA_LEVEL_MMHG * (1 - 2.25577e-5 * altitudeM) ** 5.25588;
  return 1730.63 / (8.07131 - Math.log10(mmHg)) - 233.426;
}

/** Temperature of the middle of a done cake at an altitude in m, °C; `atSeaLevelC` is 95 unless set. */
export function doneAtAltitudeC(altitudeM: number, atSeaLevelC: number): number {
  return quantiseRatio(Math.min(atSeaLevelC, boilingPointC(altitudeM) - BELOW_BOILING_C));
}
