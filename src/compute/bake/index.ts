/** What the rest of the house may use of the bake model. */
export { boilingPointC, doneAtAltitudeC } from './altitude.ts';
export { bakesToAskFor, type CandidateBake } from './ask-bakes.ts';
export { neutralBake } from './bake-case.ts';
export {
  COMPARED_AT_C,
  componentProperties,
  thermalProperties,
} from './composition.ts';
export { BAKE_CONSTANTS, type BakeConstants } from './constants.ts';
export { gentlestDialC } from './edge-dose.ts';
export { type BakeAdvice, type BakeGuidance, bakeGuidance } from './guidance.ts';
export { coreIsWorthIt } from './heating-core.ts';
export {
  type BakeGroup,
  caseOfRow,
  fitLog,
  type LogFit,
  type LoggedBake,
  priorFromElsewhere,
} from './log-fit.ts';
export { COMPONENTS, type MakeUp, makeUp, PLAIN_SPONGE } from './make-up.ts';
export { type OvenOffset, ovenOffset } from './oven-offset.ts';
export {
  conventionalFromFanC,
  fanFromConventionalC,
  fanFromConventionalF,
  gasMarkC,
  gasMarkF,
  nearestGasMark,
} from './oven-scales.ts';
export { type ClassId, classOfMethod, RECIPE_CLASSES, type RecipeClass } from './recipe-class.ts';
export { seriesMinutes } from './series-minutes.ts';
export { bakeSolid } from './solid.ts';
export { type CurvePoint, temperatureCurve } from './temperature-curve.ts';
export {
  beliefVariance,
  compositionBelief,
  evidenceOf,
  expectedMinutes,
  type FactorBelief,
  priorBelief,
} from './time-factor.ts';
export { type WaterLoss, WEIGHING_SD, waterLoss, weighingsOf } from './water-loss.ts';
export { type BakeWindow, bakeWindow } from './window.ts';
