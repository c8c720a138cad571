/**
 * How did a bake time come about? From the dial and the conduction series to the window as it is told, each step
 * with its numbers. The recipe's time factor, which all tins share, stands once.
 */
import { type BakeAdvice, type BakeGroup, beliefVariance } from '../compute/bake/index.ts';
import type { Locale } from '../domain/kitchen.ts';
import { quantiseMin, quantiseMm, quantiseRatio } from '../domain/quantise.ts';
import type { Tin } from '../domain/tin.ts';
import {
  type BakeLabel,
  type BakeStepKind,
  type BakeWorkingWords,
  bakeWordsFor,
  bakeWorkingWordsFor,
  nearestFive,
} from '../wording/bake/index.ts';
import { formatFixed } from '../wording/number.ts';
import { advised } from './bake-figures.ts';
import type { Figure } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import type { WorkingStep } from './working.types.ts';
import { given, labelled } from './working-numbers.ts';

interface Parts {
  id: BakeStepKind;
  inputs: [BakeLabel, Figure][];
  operation: string;
  output: [BakeLabel, Figure];
  /** Said before the rule. */
  lead?: string;
}

const NINETY_PERCENT = '1.645';
const WATCHED_MIN = '25';

function step(
  { steps, labels }: BakeWorkingWords,
  { id, inputs, operation, output, lead }: Parts,
): WorkingStep {
  const { title, rule, source } = steps[id];
  const named = ([label, figure]: [BakeLabel, Figure]) => labelled(labels[label], figure);
  return {
    id: `bake-${id}`,
    title,
    inputs: inputs.map(named),
    operation,
    output: named(output),
    rule: lead === undefined ? rule : `${rule} ${lead}`,
    source,
  };
}

const minutes = (value: number): Figure => ({ value, unit: 'min', text: formatFixed(value, 3) });
const variance = (value: number): Figure => ({ value, unit: 'ratio', text: formatFixed(value, 9) });
const ratio = (value: number): Figure => given(quantiseRatio(value), 'ratio');

function factorStep(kind: 'factor' | 'factor-core', group: BakeGroup, locale: Locale): Parts {
  const figure = ratio(group.timeFactor);
  const id = kind === 'factor' && group.bakes === 0 ? 'factor-none' : kind;
  const lead = bakeWorkingWordsFor(locale).fromLog(bakeWordsFor(locale).behind(group.bakes));
  const parts: Parts = { id, inputs: [], operation: figure.text, output: ['factor', figure] };
  return group.bakes === 0 ? parts : { ...parts, lead };
}

/** Steps that every tin's bake time rests on. */
export function sharedBakeSteps({ fit, oven }: RecipeBakes, locale: Locale): WorkingStep[] {
  const words = bakeWorkingWordsFor(locale);
  const cored = oven.core === 'none' ? [] : [factorStep('factor-core', fit.withCore, locale)];
  return [factorStep('factor', fit.plain, locale), ...cored].map((parts) => step(words, parts));
}

/** From the dial to the neutral minutes, and the growth with size where the recipe has one. */
function pace({ dialC, neutral }: BakeAdvice, power: Figure): Parts[] {
  const [heat, series, across] = [
    given(dialC, 'C'),
    minutes(neutral.seriesMin),
    given(neutral.solid.acrossMm, 'mm'),
  ];
  const [tin, band, core] = [neutral.tinFactor, neutral.bandFactor, neutral.coreFactor].map(ratio);
  if (tin === undefined || band === undefined || core === undefined) return [];
  const growth = ratio(Math.exp(power.value * neutral.lnSize));
  const sized: Parts = {
    id: 'size',
    inputs: [
      ['across', across],
      ['power', power],
    ],
    operation: `(${across.text} ÷ 203.2)^${power.text}`,
    output: ['size', growth],
  };
  return [
    { id: 'heat', inputs: [], operation: heat.text, output: ['heat', heat] },
    { id: 'series', inputs: [], operation: series.text, output: ['series', series] },
    {
      id: 'neutral',
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

/** A bound of the window, exactly and as told. */
function bound(kind: 'first-look' | 'done-by', value: number, likely: Figure, spread: Figure): Parts[] {
  const exact = minutes(value);
  const told: Figure = { value: nearestFive(value), unit: 'min', text: formatFixed(nearestFive(value), 0) };
  return [
    {
      id: kind,
      inputs: [
        ['likely', likely],
        ['spread', spread],
      ],
      operation: `${likely.text} ${kind === 'first-look' ? '−' : '+'} ${NINETY_PERCENT} × ${spread.text}`,
      output: [kind, exact],
    },
    {
      id: `${kind}-told`,
      inputs: [[kind, exact]],
      operation: `max(5, round(${exact.text} ÷ 5) × 5)`,
      output: ['told', told],
    },
  ];
}

function windowParts(way: BakeAdvice, group: BakeGroup, { constants }: RecipeBakes): Parts[] {
  const { neutral, window } = way;
  const power = ratio(group.belief.sizePower);
  const [factor, inTin] = [ratio(group.timeFactor), minutes(neutral.neutralMin)];
  const growth = ratio(Math.exp(power.value * neutral.lnSize));
  const grows = power.value !== 0;
  const likely = minutes(window.likelyMin);
  const lag = given(constants.lagMin, 'min').text;
  const scatter = minutes(
    quantiseMin(
      constants.doneSdMin * Math.min(1, (window.likelyMin - constants.lagMin) / Number(WATCHED_MIN)),
    ),
  );
  const doubt = variance(beliefVariance(group.belief, neutral.lnSize));
  const spread = minutes(
    quantiseMin(
      Math.sqrt(
        (window.likelyMin - constants.lagMin) ** 2 * doubt.value +
          scatter.value ** 2 +
          (constants.modelSd * window.likelyMin) ** 2,
      ),
    ),
  );
  const done = given(constants.doneSdMin, 'min').text;
  return [
    {
      id: 'likely',
      inputs: [
        ['neutral', inTin],
        ['factor', factor],
        ...(grows ? [['size', growth] as [BakeLabel, Figure]] : []),
      ],
      operation: `${lag} + ${inTin.text} × ${factor.text}${grows ? ` × ${growth.text}` : ''}`,
      output: ['likely', likely],
    },
    {
      id: 'done-scatter',
      inputs: [['likely', likely]],
      operation: `${done} × min(1, (${likely.text} − ${lag}) ÷ ${WATCHED_MIN})`,
      output: ['scatter', scatter],
    },
    {
      id: 'spread',
      inputs: [
        ['likely', likely],
        ['variance', doubt],
        ['scatter', scatter],
      ],
      operation: `√((${likely.text} − ${lag})^2 × ${doubt.text} + ${scatter.text}^2 + (${constants.modelSd} × ${likely.text})^2)`,
      output: ['spread', spread],
    },
    ...bound('first-look', window.firstLookMin, likely, spread),
    ...bound('done-by', window.expectedByMin, likely, spread),
  ];
}

/** The steps of one tin baked to a height in mm, for the way that the chart advises; none without bake times. */
export function bakeSteps(bakes: RecipeBakes, tin: Tin, heightMm: number, locale: Locale): WorkingStep[] {
  const guidance = bakes.guidance(tin, quantiseMm(heightMm));
  if (guidance === null) return [];
  const words = bakeWorkingWordsFor(locale);
  const { way, plain } = advised(guidance, bakes.oven);
  const group = plain === null ? bakes.fit.plain : bakes.fit.withCore;
  const parts = [...pace(way, ratio(group.belief.sizePower)), ...windowParts(way, group, bakes)];
  return parts.map((one) => step(words, one));
}
