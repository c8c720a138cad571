/** Dial, first look and the rest for one tin, in the words of this kitchen's oven. */
import {
  type BakeAdvice,
  type BakeGuidance,
  fanFromConventionalC,
  fanFromConventionalF,
  nearestGasMark,
} from '../compute/bake/index.ts';
import type { Locale, OvenSetting } from '../domain/kitchen.ts';
import { quantiseG } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { fahrenheitFromCelsius } from '../domain/units.ts';
import {
  type BakeWords,
  bakeWordsFor,
  type DialTexts,
  dialTexts,
  formatBakeMinutes,
} from '../wording/bake/index.ts';
import { formatWholeGrams } from '../wording/mass.ts';
import { formatShare } from '../wording/number.ts';
import type { BakeFigures, ChartBake } from './bake-figures.types.ts';
import type { Caution, Figure } from './figure.ts';
import { bakePath } from './nav.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

/** One heat in the words of all dials. */
export const dialTextsOf = (ovenC: number, oven: OvenSetting, { dial }: BakeWords): DialTexts =>
  dialTexts(
    {
      ovenC,
      fanC: fanFromConventionalC(ovenC),
      fanF: fanFromConventionalF(fahrenheitFromCelsius(ovenC)),
      gasMark: nearestGasMark(ovenC),
    },
    oven,
    dial,
  );

/** A bake time, shown to the nearest five minutes. */
const minutesFigure = (minutes: number): Figure => ({
  value: minutes,
  unit: 'min',
  text: formatBakeMinutes(minutes),
});

/** Whether this kitchen's baker is told to put the core in. */
const usesCore = (guidance: BakeGuidance, oven: OvenSetting): boolean =>
  guidance.coreIsWorthIt && guidance.withCore !== null && oven.core !== 'none';

/** The way that is recommended, and the other where there is one. */
export function advised(
  guidance: BakeGuidance,
  oven: OvenSetting,
): { way: BakeAdvice; plain: BakeAdvice | null } {
  const { plain, withCore } = guidance;
  return usesCore(guidance, oven) && withCore !== null
    ? { way: withCore, plain }
    : { way: plain, plain: null };
}

function noCoreText({ noCore }: BakeGuidance, words: BakeWords): string {
  if (noCore === 'tube') return words.noCoreTube;
  return noCore === 'foam' ? words.noCoreFoam : words.noCore;
}

function adviceText(guidance: BakeGuidance, { oven, recipe }: RecipeBakes, words: BakeWords): string {
  const { way, plain } = advised(guidance, oven);
  const { firstLookMin, expectedByMin } = plain?.window ?? way.window;
  const without =
    plain === null
      ? []
      : [
          words.without(
            dialTextsOf(plain.dialC, oven, words).set,
            formatBakeMinutes(firstLookMin),
            formatBakeMinutes(expectedByMin),
          ),
        ];
  const wanted = guidance.coreIsWorthIt && guidance.withCore !== null;
  const core =
    plain === null
      ? [wanted ? words.coreWouldHelp : noCoreText(guidance, words)]
      : [words.coreIn, ...without];
  const band =
    guidance.edgeNeedsCare && plain === null ? [oven.band ? words.bandOn : words.bandWouldHelp] : [];
  const lowered = way.dialC < recipe.ovenC - 4 ? [words.lowered] : [];
  return [...core, ...band, ...lowered].join(' ');
}

/** Figures of one tin baked to a height; null when they cannot be worked out. */
export function bakeFigures(
  bakes: RecipeBakes,
  tin: Tin,
  heightMm: number,
  locale: Locale,
): BakeFigures | null {
  const guidance = bakes.guidance(tin, heightMm);
  if (guidance === null) return null;
  const words = bakeWordsFor(locale);
  const { way, plain } = advised(guidance, bakes.oven);
  const { set, others } = dialTextsOf(way.dialC, bakes.oven, words);
  return {
    dial: { value: way.dialC, unit: 'C', text: set },
    dialOthers: others,
    firstLook: minutesFigure(way.window.firstLookMin),
    likely: minutesFigure(way.window.likelyMin),
    expectedBy: minutesFigure(way.window.expectedByMin),
    core: plain !== null,
    band: guidance.edgeNeedsCare && plain === null && bakes.oven.band,
    advice: adviceText(guidance, bakes, words),
    bakes: { value: way.bakes, unit: 'count', text: words.behind(way.bakes) },
  };
}

/** What an oven is called, '' for the only one that nobody named. */
export const ovenName = ({ name, id }: OvenSetting): string => name ?? id ?? '';

function basisOf({ recipe, fit, recipeClass }: RecipeBakes, words: BakeWords): string {
  const { bakes } = fit.plain;
  const cored = fit.withCore.bakes;
  if (bakes + cored > 0) return words.basis(bakes, cored);
  if (recipe.bakeStart === 'composition') return words.basisNoneMakeUp;
  return words.basisNone(words.classes[recipeClass.id]);
}

/** What stands once beside a chart's bake times. */
export function chartBake(bakes: RecipeBakes, locale: Locale): ChartBake {
  const words = bakeWordsFor(locale);
  const { recipe, water, oven, severalOvens, elsewhere } = bakes;
  const parts = [
    ...(severalOvens ? [words.inOven(ovenName(oven))] : []),
    basisOf(bakes, words),
    ...(elsewhere > 0 ? [words.basisElsewhere(elsewhere)] : []),
  ];
  return {
    basisText: parts.join(' '),
    waterText: words.water(formatShare(water.share, 1), water.bakes, water.prior.source === 'own'),
    path: bakePath(recipe.id),
  };
}

const BAKED_STEP_G = 10;

/** What one cake weighs when baked, from the batter poured in, to the nearest ten grams. */
export function bakedFigure(receivesG: number, { water }: RecipeBakes): Figure {
  const value = quantiseG(receivesG * (1 - water.share));
  return { value, unit: 'g', text: formatWholeGrams(Math.round(value / BAKED_STEP_G) * BAKED_STEP_G) };
}

/** Cautions that come with bake times: the door, and the core where one is used. */
export function bakeCautions(figures: readonly (BakeFigures | null)[], locale: Locale): Caution[] {
  const { cautions } = bakeWordsFor(locale);
  const told = figures.filter((one) => one !== null);
  return [
    ...(told.length > 0 ? [{ code: 'oven-door', text: cautions.door }] : []),
    ...(told.some(({ core }) => core) ? [{ code: 'hot-core', text: cautions.core }] : []),
  ];
}
