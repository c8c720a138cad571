/**
 * How did a bake time come about? From the dial and the conduction series to the window as it is told, each step
 * with its numbers. The recipe's time factor, which all tins share, stands once.
 */
import { type BakeAdvice, type BakeGroup, WEIGHING_SD } from '../compute/bake/index.ts';
import type { Locale } from '../domain/kitchen.ts';
import { quantiseMm } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import { bakeWordsFor } from '../wording/bake/index.ts';
import { bakeWorkingWordsFor } from '../wording/bake/working.ts';
import { advised, bakedFigure } from './bake-figures.ts';
import type { Figure } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import type { WorkingStep } from './working.types.ts';
import { allDoubtSteps } from './working-bake-doubt.ts';
import { type BakeStepParts, bakeStep, minutes, ratio } from './working-bake-step.ts';
import { windowParts } from './working-bake-window.ts';
import { makeUpSteps } from './working-make-up.ts';
import { computed, given } from './working-numbers.ts';

type Parts = BakeStepParts;

function factorKind({
  recipe,
  elsewhere,
}: RecipeBakes): 'factor-none' | 'factor-elsewhere' | 'factor-make-up' {
  if (elsewhere > 0) return 'factor-elsewhere';
  return recipe.bakeStart === 'composition' ? 'factor-make-up' : 'factor-none';
}

function factorStep(
  kind: 'factor' | 'factor-core',
  group: BakeGroup,
  bakes: RecipeBakes,
  locale: Locale,
): Parts {
  const figure = ratio(group.timeFactor);
  const parts: Parts = { kind, inputs: [], operation: figure.text, output: ['factor', figure] };
  if (group.bakes > 0)
    return { ...parts, more: bakeWorkingWordsFor(locale).fromLog(bakeWordsFor(locale).behind(group.bakes)) };
  return kind === 'factor' ? { ...parts, kind: factorKind(bakes), id: 'factor' } : parts;
}

/** What the batter and the done cake are, that every tin's time starts from. */
function endsSteps({ constants }: RecipeBakes): Parts[] {
  const [batter, done] = [given(constants.batterC, 'C'), given(constants.centreC, 'C')];
  return [
    { kind: 'batter', inputs: [], operation: batter.text, output: ['batter', batter] },
    { kind: 'done', inputs: [], operation: done.text, output: ['done', done] },
  ];
}

/** The trade's figure and each weighing, by one over its doubt squared. */
function waterStep({ water }: RecipeBakes): Parts {
  const { prior, weighed, share } = water;
  const pairs = weighed.map(({ batterG, massOutG }) => [given(massOutG, 'g'), given(batterG, 'g')] as const);
  const losses = pairs.map(([out, batter]) => `(1 − ${out.text} ÷ ${batter.text})`).join(' + ');
  const top = [
    `${prior.share} ÷ ${prior.sd}^2`,
    ...(losses === '' ? [] : [`(${losses}) ÷ ${WEIGHING_SD}^2`]),
  ];
  const bottom = [`1 ÷ ${prior.sd}^2`, ...(losses === '' ? [] : [`${weighed.length} ÷ ${WEIGHING_SD}^2`])];
  return {
    kind: 'water',
    inputs: pairs.flatMap(([out, batter]): Parts['inputs'] => [
      ['baked', out],
      ['poured', batter],
    ]),
    operation: `(${top.join(' + ')}) ÷ (${bottom.join(' + ')})`,
    output: ['water-loss', given(share, 'share')],
  };
}

/** How far the oven is off its dial, once probes can tell. */
function offsetSteps({ offset }: RecipeBakes): Parts[] {
  if (offset === null) return [];
  const figure = given(offset.offsetC, 'C');
  return [{ kind: 'offset', inputs: [], operation: figure.text, output: ['offset', figure] }];
}

/** Steps that every tin's bake time rests on. */
export function sharedBakeSteps(bakes: RecipeBakes, locale: Locale): WorkingStep[] {
  const { fit, oven } = bakes;
  const words = bakeWorkingWordsFor(locale);
  const cored = oven.core === 'none' ? [] : [factorStep('factor-core', fit.withCore, bakes, locale)];
  return [
    factorStep('factor', fit.plain, bakes, locale),
    ...cored,
    ...allDoubtSteps(bakes, bakeWordsFor(locale).date),
    ...endsSteps(bakes),
    waterStep(bakes),
    ...offsetSteps(bakes),
    ...makeUpSteps(bakes, words),
  ].map((parts) => bakeStep(words, parts));
}

/** What one cake weighs when baked, from the batter poured into its tin. */
export function bakedStep(receivesG: number, bakes: RecipeBakes, locale: Locale): WorkingStep {
  const [poured, loss] = [computed(receivesG, 'g'), given(bakes.water.share, 'share')];
  return bakeStep(bakeWorkingWordsFor(locale), {
    kind: 'baked',
    inputs: [
      ['poured', poured],
      ['water-loss', loss],
    ],
    operation: `${poured.text} × (1 − ${loss.text})`,
    output: ['baked', computed(bakedFigure(receivesG, bakes).value, 'g')],
  });
}

/** From the dial to the neutral minutes, and the growth with size where the recipe has one. */
function pace({ dialC, neutral }: BakeAdvice, power: Figure, { constants }: RecipeBakes): Parts[] {
  const [heat, series, across] = [
    given(dialC, 'C'),
    minutes(neutral.seriesMin),
    given(neutral.solid.acrossMm, 'mm'),
  ];
  const [batter, done] = [given(constants.batterC, 'C'), given(constants.centreC, 'C')];
  const [tin, band, core] = [neutral.tinFactor, neutral.bandFactor, neutral.coreFactor].map(ratio);
  if (tin === undefined || band === undefined || core === undefined) return [];
  const growth = ratio(Math.exp(power.value * neutral.lnSize));
  const sized: Parts = {
    kind: 'size',
    inputs: [
      ['across', across],
      ['power', power],
    ],
    operation: `(${across.text} ÷ 203.2)^${power.text}`,
    output: ['size', growth],
  };
  return [
    { kind: 'heat', inputs: [], operation: heat.text, output: ['heat', heat] },
    {
      kind: 'to-go',
      inputs: [
        ['heat', heat],
        ['done', done],
        ['batter', batter],
      ],
      operation: `(${heat.text} − ${done.text}) ÷ (${heat.text} − ${batter.text})`,
      output: ['to-go', ratio((dialC - constants.centreC) / (dialC - constants.batterC))],
    },
    { kind: 'series', inputs: [], operation: series.text, output: ['series', series] },
    {
      kind: 'neutral',
      inputs: [
        ['series', series],
        ['tin', tin],
        ['band', band],
        ['core', core],
      ],
      operation: `${series.text} × ${tin.text} × ${band.text} × ${core.text}`,
      output: ['neutral', minutes(neutral.neutralMin)],
    },
    ...(power.value === 0 ? [] : [sized]),
  ];
}

/** The steps of one tin baked to a height in mm, for the way that the chart advises; none without bake times. */
export function bakeSteps(bakes: RecipeBakes, tin: Tin, heightMm: number, locale: Locale): WorkingStep[] {
  const guidance = bakes.guidance(tin, quantiseMm(heightMm));
  if (guidance === null) return [];
  const words = bakeWorkingWordsFor(locale);
  const { way, plain } = advised(guidance, bakes.oven);
  const group = plain === null ? bakes.fit.plain : bakes.fit.withCore;
  const parts = [...pace(way, ratio(group.belief.sizePower), bakes), ...windowParts(way, group, bakes)];
  return parts.map((one) => bakeStep(words, one));
}
