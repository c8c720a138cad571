/** The page and print of one recipe in the oven, in a colleague's words. */
import {
  bakesToAskFor,
  bakeWindow,
  type CandidateBake,
  caseOfRow,
  neutralBake,
} from '../compute/bake/index.ts';
import { LEAST_LOGGED_FILLS } from '../compute/batter/logged-fills.ts';
import { yieldDensity } from '../compute/batter/yield-density.ts';
import type { BakeLogRow } from '../domain/bake-log.ts';
import type { Kitchen, Locale } from '../domain/kitchen.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import {
  type BakeWords,
  bakeWordsFor,
  formatBakeMinutes,
  formatLoggedMinutes,
  heatApartText,
  heatScaleOf,
  heatText,
} from '../wording/bake/index.ts';
import { keptUnits } from '../wording/kept-units.ts';
import { formatWholeGrams } from '../wording/mass.ts';
import { formatFixed, formatNumber, formatShare } from '../wording/number.ts';
import { bakeCautions, bakeFigures, chartBake, dialTextsOf, ovenName } from './bake-figures.ts';
import type { BakeGuideView, LoggedBakeText } from './bake-guide.types.ts';
import { sizePlot } from './bake-size-plot.ts';
import { chosenTin, warmingPlots } from './bake-warming-plots.ts';
import { makeUpSentences } from './make-up-sentences.ts';
import { chartPath, workingPath } from './nav.ts';
import { heightInTinMm, type RecipeBakes } from './recipe-bakes.ts';

/** From so many bakes on, the log need not ask for more. */
const ENOUGH_BAKES = 4;
const NINETY_PERCENT = 1.645;
/** A logged yield that counts for less than this is worth a word: some 8 % off the others. */
const ODD_BELOW = 0.7;

function expectedOf(row: BakeLogRow, { fit, recipe, constants, oven, ovenOf }: RecipeBakes): string {
  if (ovenOf(row) !== oven) return '–';
  const bake = neutralBake(caseOfRow(row, recipe.finishedHeightMm, constants), constants);
  if (!bake.ok) return '–';
  const { belief } = row.core === 'none' ? fit.plain : fit.withCore;
  return formatBakeMinutes(bakeWindow(belief, bake.value, constants).likelyMin);
}

function howOf(row: BakeLogRow, { severalOvens, ovenOf }: RecipeBakes, words: BakeWords): string {
  const { core, band, doneBy, probeC } = row;
  const parts = [
    ...(severalOvens ? [ovenName(ovenOf(row))] : []),
    ...(core === 'none' ? [] : [words.cores[core]]),
    ...(band ? [words.guide.band] : []),
    ...(doneBy === undefined ? [] : [words.tests[doneBy]]),
    ...(probeC === undefined ? [] : [words.probe(heatText(probeC, heatScaleOf(ovenOf(row))))]),
  ];
  return parts.join(', ');
}

function loggedText(row: BakeLogRow, bakes: RecipeBakes, words: BakeWords): LoggedBakeText {
  return {
    date: words.date(row.date),
    tin: row.count > 1 ? `${row.count} × ${row.tin.name}` : row.tin.name,
    dial: dialTextsOf(row.ovenC, bakes.ovenOf(row), words).set,
    how: howOf(row, bakes, words),
    took: formatLoggedMinutes(row.minutes),
    expected: expectedOf(row, bakes),
    batter: `${formatWholeGrams(row.batterG)} g`,
    notes: row.notes ?? '',
  };
}

const bakeName = (date: string, tin: string, words: BakeWords): string => `${words.date(date)}, ${tin}`;

/** Bakes that took longer or less long than the rest would have them. */
function oddTimes({ fit }: RecipeBakes, words: BakeWords): string[] {
  return fit.odd.map(({ row, lateByMin, expectedMin, weight }) => {
    const by =
      lateByMin > 0
        ? words.late(formatLoggedMinutes(lateByMin))
        : words.early(formatLoggedMinutes(-lateByMin));
    const bake = bakeName(row.date, row.tin.name, words);
    return `${words.odd(bake, by, formatBakeMinutes(expectedMin))} ${words.heeded(formatShare(weight))}`;
  });
}

/** Bakes whose batter went further, or less far, than the rest would have it. */
function oddYields({ recipe }: RecipeBakes, words: BakeWords): string[] {
  const odd = (yieldDensity(recipe)?.logged ?? []).filter(({ weight }) => weight < ODD_BELOW);
  return odd.map(({ bake, residual, weight }) => {
    const [tin] = bake.tins;
    const name = bakeName(bake.date ?? '', tin?.tin.name ?? '', words);
    const text = words.oddYield(name, formatShare(Math.abs(residual), 1), residual > 0);
    return `${text} ${words.heeded(formatShare(weight))}`;
  });
}

function askFor(bakes: RecipeBakes, kitchen: Kitchen, words: BakeWords): BakeGuideView['ask'] {
  const { fit, constants, recipe, oven } = bakes;
  if (fit.plain.bakes >= ENOUGH_BAKES) return null;
  const tins = kitchen.tins.filter(({ owned }) => owned > 0);
  const candidates = tins.flatMap((tin): CandidateBake[] => {
    const guidance = bakes.guidance(tin, heightInTinMm(recipe, tin));
    return guidance === null ? [] : [{ id: tin.id, bake: guidance.plain.neutral }];
  });
  const { ids, narrowedTo } = bakesToAskFor(fit.plain.belief, candidates, {
    ...constants,
    doneSdMin: fit.doneSdMin,
  });
  const entries = ids.flatMap((id) => {
    const tin = tins.find((one) => one.id === id);
    const guidance = tin && bakes.guidance(tin, heightInTinMm(recipe, tin));
    return tin && guidance
      ? [words.guide.askEntry(tin.name, dialTextsOf(guidance.plain.dialC, oven, words).set)]
      : [];
  });
  if (entries.length === 0) return null;
  return {
    lead: words.guide.askLead,
    bakes: entries,
    promise: words.guide.askPromise(formatShare(narrowedTo)),
  };
}

function yieldText({ recipe, measured }: RecipeBakes, { guide }: BakeWords): string {
  const density = yieldDensity(recipe);
  if (density === null || density.logged.length === 0) return guide.yieldNone(measured, LEAST_LOGGED_FILLS);
  const { gPerMl, provenGPerMl, logged } = density;
  const apart = quantiseRatio(gPerMl / provenGPerMl - 1);
  const difference = apart > 0 ? `+${formatShare(apart, 1)}` : formatShare(apart, 1);
  return guide.yieldText(logged.length, formatFixed(gPerMl, 3), formatFixed(provenGPerMl, 3), difference);
}

function steadyText({ fit, constants }: RecipeBakes, { guide }: BakeWords): string {
  const logged = fit.plain.bakes + fit.withCore.bakes;
  const usual = formatNumber(constants.doneSdMin, 0);
  return logged === 0
    ? guide.steadyNone(usual)
    : guide.steadyText(formatFixed(fit.doneSdMin, 1), usual, logged);
}

function waterText({ water }: RecipeBakes, { guide }: BakeWords): string {
  const { share, sd, bakes, prior } = water;
  const [text, give] = [formatShare(share, 1), formatShare(sd, 1)];
  return bakes === 0
    ? guide.waterNone(text, give, prior.source === 'own')
    : guide.waterText(text, give, bakes);
}

/** Probe bakes tell an offset only from settings this far apart, °C. */
const PROBES_APART_C = 15;

function ovenText({ offset, oven }: RecipeBakes, { guide }: BakeWords): string {
  const apart = (degreesC: number): string => heatApartText(degreesC, heatScaleOf(oven));
  if (offset === null) return guide.ovenNone(apart(PROBES_APART_C));
  const { offsetC, sdC, bakes } = offset;
  return guide.ovenText(guide.offset(apart(Math.abs(offsetC)), offsetC > 0), apart(sdC), bakes);
}

function factorText({ fit, recipeClass }: RecipeBakes, { guide, classes }: BakeWords): string {
  const { timeFactor, logSd, bakes, belief } = fit.plain;
  const at = (sds: number): string => formatShare(quantiseRatio(timeFactor * Math.exp(sds * logSd)));
  const [low, high] = [at(-NINETY_PERCENT), at(NINETY_PERCENT)];
  const say = bakes === 0 ? guide.factorNone : guide.factorText;
  return say(at(0), low, high, classes[recipeClass.id], belief.sizePower !== 0);
}

/** What to do in the tin that the recipe was proven in first. */
function answerText(bakes: RecipeBakes, { guide }: BakeWords, locale: Locale): string | null {
  const { recipe } = bakes;
  const tin = recipe.provenBakes[0]?.tins[0]?.tin;
  const bake = tin === undefined ? null : bakeFigures(bakes, tin, heightInTinMm(recipe, tin), locale);
  if (tin === undefined || bake === null) return null;
  return guide.answer(tin.name, bake.dial.text, bake.firstLook.text, bake.expectedBy.text, bake.core);
}

function settingText({ oven, constants }: RecipeBakes, { guide }: BakeWords): string {
  const name = ovenName(oven);
  return guide.setting(name === '' ? guide.oven : name, heatText(constants.batterC, heatScaleOf(oven)));
}

/** The guide of one recipe. */
export function bakeGuideView(bakes: RecipeBakes, kitchen: Kitchen, altitudeM: number | null): BakeGuideView {
  const { recipe, logged } = bakes;
  const words = bakeWordsFor(kitchen.locale);
  const tin = chosenTin(kitchen, bakes);
  const size = sizePlot(bakes, kitchen, words);
  const figures = kitchen.tins.map((one) =>
    bakeFigures(bakes, one, heightInTinMm(recipe, one), kitchen.locale),
  );
  return {
    id: recipe.id,
    title: words.guide.title(recipe.name),
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    recipe: { id: recipe.id, name: recipe.name },
    chartPath: chartPath(recipe.id),
    answerText: answerText(bakes, words, kitchen.locale),
    basisText: chartBake(bakes, kitchen.locale).basisText,
    factorText: keptUnits(factorText(bakes, words)),
    settingText: keptUnits(settingText(bakes, words)),
    lead: words.lead,
    doneTests: words.doneTests,
    plots: [
      ...(size === null ? [] : [size]),
      ...(tin === null ? [] : warmingPlots(bakes, tin, altitudeM ?? 0, words)),
    ],
    pictureNote: words.guide.conduction,
    log: logged.map((row) => loggedText(row, bakes, words)),
    logEmpty: words.guide.logEmpty,
    oddHint: words.guide.oddHint,
    odd: [...oddTimes(bakes, words), ...oddYields(bakes, words)].map(keptUnits),
    ask: askFor(bakes, kitchen, words),
    fromLog: [
      steadyText(bakes, words),
      yieldText(bakes, words),
      waterText(bakes, words),
      ovenText(bakes, words),
    ],
    makeUp: { sentences: makeUpSentences(bakes, words).map(keptUnits), workingPath: workingPath(recipe.id) },
    cautions: bakeCautions(figures, kitchen.locale),
  };
}
