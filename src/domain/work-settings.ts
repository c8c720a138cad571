/** When hands work, how many there are, and what the oven holds. Lengths mm, times min. */
import { LIFT_TWO_ABOVE_G } from './lifting.ts';
import { MIXING_METHODS, type MixingMethod } from './recipe.ts';

/** Inside the oven, for placing tins, and what it draws. */
export interface OvenRoom {
  shelves: number;
  widthMm: number;
  depthMm: number;
  /** Air between two tins. */
  airGapMm: number;
  /** Air between a tin and the wall, the door or the fan. */
  wallGapMm: number;
  /** From the door closing on a new load to the set heat again. */
  recoveryMin: number;
  kwhToHeat: number;
  kwhPerHour: number;
}

/** A built-in domestic oven: common practice, no source; measure your own. */
export const USUAL_OVEN_ROOM: OvenRoom = {
  shelves: 2,
  widthMm: 440,
  depthMm: 360,
  airGapMm: 25,
  wallGapMm: 20,
  recoveryMin: 10,
  kwhToHeat: 0.4,
  kwhPerHour: 0.8,
};

/** How a batter waits: by how it was mixed, and less with bicarbonate, which lifts as soon as it is wet. */
export type Standing = MixingMethod | 'bicarbonate';
export const STANDINGS: readonly Standing[] = [...MIXING_METHODS, 'bicarbonate'];

/** How long mixed batter may wait for the oven: common practice, no source. */
const USUAL_STANDING_MIN: Record<Standing, number> = {
  creamed: 30,
  'all-in-one': 20,
  whisked: 5,
  oil: 20,
  melted: 20,
  'rich fruit': 12 * 60,
  angel: 5,
  bicarbonate: 10,
};

export interface WorkSettings {
  /** IANA name of the zone the kitchen's clock shows. */
  timeZone: string;
  /** Minutes after midnight between which hands work; outside is sleep. */
  workingDay: { fromMin: number; toMin: number };
  /** People who can work at the same time. */
  hands: number;
  /** What weighs more is lifted by two, g. */
  liftTwoAboveG: number;
  batterStandsMin: Record<Standing, number>;
  ovenRoom: OvenRoom;
}

export const USUAL_WORK: WorkSettings = {
  timeZone: 'UTC',
  workingDay: { fromMin: 7 * 60, toMin: 21 * 60 },
  hands: 1,
  liftTwoAboveG: LIFT_TWO_ABOVE_G,
  batterStandsMin: USUAL_STANDING_MIN,
  ovenRoom: USUAL_OVEN_ROOM,
};
