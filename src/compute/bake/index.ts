/** What the rest of the house may use of the bake model. */
export { boilingPointC, doneAtAltitudeC } from './altitude.ts';
export { type AskedBakes, bakesToAskFor, type CandidateBake } from './ask-bakes.ts';
export { type BakeCase, type NeutralBake, neutralBake } from './bake-case.ts';
export {
  COMPARED_AT_C,
  type Composition,
  componentProperties,
  compositionTimeFactor,
  type ThermalProperties,
  thermalProperties,
} from './composition.ts';
export { BAKE_CONSTANTS, type BakeConstants } from './constants.ts';
export { edgeDose, edgeMinutes, gentlestDialC, MOST_DOSE_K_MIN } from './edge-dose.ts';
export { type BakeAdvice, type BakeGuidance, bakeGuidance, type GuidanceAsk } from './guidance.ts';
export { coreFactor, coreIsWorthIt, type NoCore } from './heating-core.ts';
export {
  type BakeGroup,
  caseOfRow,
  fitLog,
  type LogFit,
  type LoggedBake,
  type LoggedRecipe,
  type OddBake,
  priorFromElsewhere,
} from './log-fit.ts';
export { COMPONENTS, type MakeUp, makeUp, PLAIN_SPONGE } from './make-up.ts';
export { type OvenOffset, ovenOffset } from './oven-offset.ts';
export {
  conventionalFromFanC,
  fanFromConventionalC,
  GAS_MARKS,
  gasMarkC,
  gasMarkF,
  nearestGasMark,
  settableC,
} from './oven-scales.ts';
export { type ClassId, classOfMethod, RECIPE_CLASSES, type RecipeClass } from './recipe-class.ts';
export { seriesMinutes } from './series-minutes.ts';
export { type BakeSolid, bakeSolid, equivalentRadiusMm } from './solid.ts';
export { type CurvePoint, temperatureCurve } from './temperature-curve.ts';
export {
  beliefVariance,
  compositionBelief,
  type Evidence,
  evidenceOf,
  expectedMinutes,
  type FactorBelief,
  fitFactor,
  type Observation,
  priorBelief,
} from './time-factor.ts';
export { type WaterLoss, WEIGHING_SD, waterLoss, weighingsOf } from './water-loss.ts';
export { type BakeWindow, bakeWindow } from './window.ts';
