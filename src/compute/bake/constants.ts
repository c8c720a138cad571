/**
 * The fixed numbers of the bake model. They reach every computation as an argument; these are the defaults.
 * alpha is effective (rise and steam included), so it is some four times that of still batter. alpha and the
 * oven's heat transfer cannot be told apart from bake times, which is why a kitchen's log moves one time
 * factor per recipe and none of these. House rules, chosen together against common practice; the values for
 * tins, band and cores are common practice too, no source.
 */
export interface BakeConstants {
  /** Effective thermal diffusivity, m²/s. */
  alphaM2PerS: number;
  /** Heat transfer over conductivity, 1/m. */
  kappaPerM: number;
  /** Minutes before the middle begins to count: door, cold tin. */
  lagMin: number;
  /** Temperature of the middle when a cake is done, °C. */
  centreC: number;
  /** Temperature of the batter when it goes in, °C. */
  batterC: number;
  /** Scatter of the moment a baker calls it done, one standard deviation, minutes: before a log tells better. */
  doneSdMin: number;
  /** How many bakes that is worth against those of the log: a house rule, no source. */
  doneSdBakes: number;
  /** Scatter in proportion to the time: the model's own error, 0.035 = 3.5 %. */
  modelSd: number;
  /** Time factors. */
  darkTin: number;
  shinyTin: number;
  insulatedBand: number;
  /** Scatter of the heating core's factor, as a logarithm. */
  coreLogSd: number;
  /** Scatter of a class's time factor, as a logarithm. */
  classLogSd: number;
  /** Scatter of one oven's pace against another's, as a logarithm: a house rule, no source. */
  ovenLogSd: number;
}

export const BAKE_CONSTANTS: BakeConstants = {
  alphaM2PerS: 4.4e-7,
  kappaPerM: 24,
  lagMin: 4,
  centreC: 95,
  batterC: 22,
  doneSdMin: 5,
  doneSdBakes: 8,
  modelSd: 0.035,
  darkTin: 0.94,
  shinyTin: 1.12,
  insulatedBand: 1.16,
  coreLogSd: 0.1,
  classLogSd: 0.3,
  ovenLogSd: 0.1,
};
