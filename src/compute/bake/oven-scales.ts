/**
 * The same heat on another oven's dial. Fan = conventional − 20 °C, or − 25 °F where dials are in °F. Gas mark n is 275 °F + 25 °F for each mark
 * above 1; below it each halving is 25 °F less (¼ is 225, ½ is 250). Common practice: no standard exists, and
 * printed dials differ by 5 °C and more.
 */
import type { OvenSetting } from '../../domain/kitchen.ts';
import { quantiseRatio } from '../../domain/quantise.ts';
import { celsiusFromFahrenheit, fahrenheitFromCelsius } from '../../domain/units.ts';

const FAN_DROP_C = 20;
const FAN_DROP_F = 25;
const MARK_1_F = 275;
const STEP_F = 25;

/** Marks that a gas dial has. */
export const GAS_MARKS: readonly number[] = [0.25, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9];

/** Conventional °C for a fan setting. */
export const conventionalFromFanC = (fanC: number): number => fanC + FAN_DROP_C;
/** Fan setting in °C for a conventional one. */
export const fanFromConventionalC = (ovenC: number): number => ovenC - FAN_DROP_C;

/** Conventional °F for a fan setting in °F. */
export const conventionalFromFanF = (fanF: number): number => fanF + FAN_DROP_F;
/** Fan setting in °F for a conventional one. */
export const fanFromConventionalF = (ovenF: number): number => ovenF - FAN_DROP_F;

/** °F of a gas mark; null for a mark that dials do not have. Mark 4: 350. */
export function gasMarkF(mark: number): number | null {
  if (!GAS_MARKS.includes(mark)) return null;
  return mark < 1 ? MARK_1_F - STEP_F * Math.round(Math.log2(1 / mark)) : MARK_1_F + STEP_F * (mark - 1);
}

/** °C of a gas mark, unrounded; null for a mark that dials do not have. Mark 4: 176.7. */
export function gasMarkC(mark: number): number | null {
  const fahrenheit = gasMarkF(mark);
  return fahrenheit === null ? null : celsiusFromFahrenheit(fahrenheit);
}

const DIAL_STEP = 5;
const toStep = (value: number): number => Math.round(value / DIAL_STEP) * DIAL_STEP;

/**
 * The setting nearest to a conventional one in °C that a dial can be turned to: 5 °C, 5 °F or a gas mark.
 * Conventional °C again; a heat beyond the gas marks stays as it is.
 */
export function settableC(ovenC: number, dial: OvenSetting['dial']): number {
  if (dial === 'C') return toStep(ovenC);
  if (dial === 'F') return quantiseRatio(celsiusFromFahrenheit(toStep(fahrenheitFromCelsius(ovenC))));
  const mark = nearestGasMark(ovenC);
  return quantiseRatio(mark === null ? ovenC : (gasMarkC(mark) ?? ovenC));
}

/** The nearest gas mark to a conventional setting in °C; null when it is beyond the dial by a step or more. */
export function nearestGasMark(ovenC: number): number | null {
  const wantedF = fahrenheitFromCelsius(ovenC);
  const distance = (mark: number): number => Math.abs((gasMarkF(mark) ?? 0) - wantedF);
  const nearest = GAS_MARKS.reduce((best, mark) => (distance(mark) < distance(best) ? mark : best));
  return distance(nearest) < STEP_F ? nearest : null;
}
