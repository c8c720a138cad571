/** How sure is the recipe's pace, and how steady the baker? What each logged bake says of both. */

import { type BakeGroup, evidenceOf, type LoggedBake } from '../compute/bake/index.ts';
import { quantiseMin, quantiseMm, quantiseRatio } from '../domain/quantise.ts';
import type { DateFormat } from '../wording/date.ts';
import { formatFixed } from '../wording/number.ts';
import type { Figure } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { type BakeStepParts, minutes, ratio, variance } from './working-bake-step.ts';
import { given } from './working-numbers.ts';

const WATCHED_MIN = '25';

const REFERENCE_MM = 203.2;

/** Enough digits for what follows. */
const fine = (value: number): Figure => {
  const quantised = quantiseRatio(value);
  return { value: quantised, unit: 'ratio', text: formatFixed(quantised, 6) };
};

interface Said {
  steps: BakeStepParts[];
  information: Figure;
  off: Figure;
  weight: Figure;
}

/** Minutes that the recipe's pace gives a logged bake, growth with size included. */
function expectedStep(
  neutral: Figure,
  expectedMin: number,
  one: LoggedBake,
  group: BakeGroup,
  lag: string,
): BakeStepParts {
  const factor = ratio(group.timeFactor);
  const power = ratio(group.belief.sizePower);
  const across = given(quantiseMm(REFERENCE_MM * Math.exp(one.observation.lnSize)), 'mm');
  const grows = power.value !== 0;
  return {
    kind: 'bake-expected',
    inputs: [
      ['neutral', neutral],
      ['factor', factor],
      ...(grows
        ? ([
            ['across', across],
            ['power', power],
          ] as BakeStepParts['inputs'])
        : []),
    ],
    operation: `${lag} + ${neutral.text} × ${factor.text}${grows ? ` × (${across.text} ÷ ${REFERENCE_MM})^${power.text}` : ''}`,
    output: ['likely', minutes(quantiseMin(expectedMin))],
  };
}

/** One logged bake: what was expected of it, how far off it was against the usual, and what it adds. */
function saidBy(
  one: LoggedBake,
  key: string,
  group: BakeGroup,
  { constants }: RecipeBakes,
  date: DateFormat,
): Said {
  const { row, observation } = one;
  const evidence = evidenceOf(group.belief, observation, constants);
  const [neutral, took] = [minutes(quantiseMin(observation.neutralMin)), given(observation.minutes, 'min')];
  const expected = minutes(quantiseMin(evidence.expectedMin));
  const scatter = fine(evidence.scatterMin2);
  const [off, weight, information] = [fine(evidence.off), fine(evidence.weight), fine(evidence.information)];
  const lag = given(constants.lagMin, 'min').text;
  const steps: BakeStepParts[] = [
    { kind: 'bake-neutral', inputs: [], operation: neutral.text, output: ['neutral', neutral] },
    expectedStep(neutral, evidence.expectedMin, one, group, lag),
    {
      kind: 'bake-scatter',
      inputs: [['likely', expected]],
      operation: `(${constants.doneSdMin} × min(1, (${expected.text} − ${lag}) ÷ ${WATCHED_MIN}))^2 + (${constants.modelSd} × ${expected.text})^2`,
      output: ['scatter-squared', scatter],
    },
    {
      kind: 'bake-off',
      inputs: [
        ['took', took],
        ['likely', expected],
        ['scatter-squared', scatter],
      ],
      operation: `(${took.text} − ${expected.text})^2 ÷ ${scatter.text}`,
      output: ['off', off],
    },
    {
      kind: 'bake-weight',
      inputs: [['off', off]],
      operation: `1 ÷ (1 + ${off.text} ÷ 9)`,
      output: ['weight', weight],
    },
    {
      kind: 'bake-says',
      inputs: [
        ['weight', weight],
        ['likely', expected],
        ['scatter-squared', scatter],
      ],
      operation: `${weight.text} × (${expected.text} − ${lag})^2 ÷ ${scatter.text}`,
      output: ['information', information],
    },
  ];
  const of = `${date(row.date)}, ${row.tin.name}`;
  return { steps: steps.map((part) => ({ ...part, key, of })), information, off, weight };
}

/** The doubt after a group's bakes; where growth with size is fitted too, a machine's and told tin by tin. */
function doubtStep(
  group: BakeGroup,
  said: readonly Said[],
  start: Figure,
  kind: 'doubt' | 'doubt-core',
): BakeStepParts[] {
  if (group.belief.varSizePower > 0 || said.length === 0) return [];
  return [
    {
      kind,
      inputs: [
        ['doubt', start],
        ...said.map(({ information }): BakeStepParts['inputs'][number] => ['information', information]),
      ],
      operation: `1 ÷ (${[`1 ÷ ${start.text}`, ...said.map(({ information }) => information.text)].join(' + ')})`,
      output: ['doubt', variance(group.belief.varLnFactor)],
    },
  ];
}

/** How steadily it is called done: the usual scatter, worth so many bakes, and the log's own. */
function steadyStep(said: readonly Said[], { fit, constants }: RecipeBakes): BakeStepParts {
  const { doneSdMin, doneSdBakes } = constants;
  const off = said.map((one) => `${one.weight.text} × ${one.off.text}`);
  const worth = said.map((one) => one.weight.text);
  return {
    kind: said.length === 0 ? 'steady-none' : 'steady',
    inputs: said.flatMap((one): BakeStepParts['inputs'] => [
      ['weight', one.weight],
      ['off', one.off],
    ]),
    operation: `${doneSdMin} × √((${[doneSdBakes, ...off].join(' + ')}) ÷ (${[doneSdBakes, ...worth].join(' + ')}))`,
    output: ['steady', minutes(fit.doneSdMin)],
  };
}

/** From the doubt before any bake in this oven to that after the last; with a core where the kitchen owns one. */
export function allDoubtSteps(bakes: RecipeBakes, date: DateFormat): BakeStepParts[] {
  const { fit, oven, constants } = bakes;
  const { plain, withCore } = fit;
  const sized = plain.belief.varSizePower > 0;
  const start = variance(plain.prior.varLnFactor);
  const cored = variance(withCore.prior.varLnFactor);
  const without = variance(plain.belief.varLnFactor);
  const said = plain.logged.map((one, at) => saidBy(one, `${at + 1}`, plain, bakes, date));
  const saidCored = withCore.logged.map((one, at) => saidBy(one, `core-${at + 1}`, withCore, bakes, date));
  const first: BakeStepParts = {
    kind: 'doubt-start',
    inputs: [],
    operation: start.text,
    output: ['doubt', start],
  };
  const firstCored: BakeStepParts = {
    kind: 'doubt-core-start',
    inputs: [['doubt', without]],
    operation: `${without.text} + ${constants.coreLogSd}^2`,
    output: ['doubt', cored],
  };
  return [
    first,
    ...said.flatMap(({ steps }) => steps),
    ...doubtStep(plain, said, start, 'doubt'),
    ...(sized || oven.core === 'none' ? [] : [firstCored]),
    ...saidCored.flatMap(({ steps }) => steps),
    ...doubtStep(withCore, saidCored, cored, 'doubt-core'),
    steadyStep([...said, ...saidCored], bakes),
  ];
}
