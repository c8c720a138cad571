/** How sure is the recipe's pace? What each logged bake says of it, and the doubt that is left. */
import { type BakeGroup, evidenceOf, type LoggedBake } from '../compute/bake/index.ts';
import { quantiseMin, quantiseRatio } from '../domain/quantise.ts';
import { formatDate } from '../wording/date.ts';
import { formatFixed } from '../wording/number.ts';
import type { Figure } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { type BakeStepParts, minutes, ratio, variance } from './working-bake-step.ts';
import { given } from './working-numbers.ts';

const WATCHED_MIN = '25';

/** min²: enough digits for what follows. */
const squared = (value: number): Figure => ({ value, unit: 'ratio', text: formatFixed(value, 6) });

interface Said {
  steps: BakeStepParts[];
  information: Figure;
}

/** One logged bake: what was expected of it, how far off it may be, and what it adds. */
function saidBy({ row, observation }: LoggedBake, key: string, group: BakeGroup, bakes: RecipeBakes): Said {
  const { constants } = bakes;
  const { expectedMin, scatterMin2, information } = evidenceOf(group.belief, observation, constants);
  const [factor, neutral, took] = [
    ratio(group.timeFactor),
    minutes(quantiseMin(observation.neutralMin)),
    given(observation.minutes, 'min'),
  ];
  const expected = minutes(quantiseMin(expectedMin));
  const scatter = squared(quantiseRatio(scatterMin2));
  const says = squared(quantiseRatio(information));
  const lag = given(constants.lagMin, 'min').text;
  const of = `${formatDate(row.date)}, ${row.tin.name}`;
  const parts: BakeStepParts[] = [
    {
      kind: 'bake-neutral',
      inputs: [],
      operation: neutral.text,
      output: ['neutral', neutral],
    },
    {
      kind: 'bake-expected',
      inputs: [
        ['neutral', neutral],
        ['factor', factor],
      ],
      operation: `${lag} + ${neutral.text} × ${factor.text}`,
      output: ['likely', expected],
    },
    {
      kind: 'bake-scatter',
      inputs: [['likely', expected]],
      operation: `(${constants.doneSdMin} × min(1, (${expected.text} − ${lag}) ÷ ${WATCHED_MIN}))^2 + (${constants.modelSd} × ${expected.text})^2`,
      output: ['scatter-squared', scatter],
    },
    {
      kind: 'bake-says',
      inputs: [
        ['took', took],
        ['likely', expected],
        ['scatter-squared', scatter],
      ],
      operation: `(${expected.text} − ${lag})^2 ÷ ${scatter.text} ÷ (1 + (${took.text} − ${expected.text})^2 ÷ (9 × ${scatter.text}))`,
      output: ['information', says],
    },
  ];
  return { steps: parts.map((part) => ({ ...part, key, of })), information: says };
}

/** The doubt after a group's bakes; its growth with size, where that is free, is a machine's. */
function doubtSteps(
  group: BakeGroup,
  start: Figure,
  kind: 'doubt' | 'doubt-core',
  bakes: RecipeBakes,
): BakeStepParts[] {
  if (group.belief.varSizePower > 0 || group.bakes === 0) return [];
  const said = group.logged.map((one, at) =>
    saidBy(one, `${kind === 'doubt' ? '' : 'core-'}${at + 1}`, group, bakes),
  );
  const terms = [`1 ÷ ${start.text}`, ...said.map(({ information }) => information.text)];
  return [
    ...said.flatMap(({ steps }) => steps),
    {
      kind,
      inputs: [
        ['doubt', start],
        ...said.map(({ information }): BakeStepParts['inputs'][number] => ['information', information]),
      ],
      operation: `1 ÷ (${terms.join(' + ')})`,
      output: ['doubt', variance(group.belief.varLnFactor)],
    },
  ];
}

/** From the doubt before any bake in this oven to that after the last; with a core where the kitchen owns one. */
export function allDoubtSteps(bakes: RecipeBakes): BakeStepParts[] {
  const { fit, oven, constants } = bakes;
  if (fit.plain.belief.varSizePower > 0) return [];
  const start = variance(fit.plain.prior.varLnFactor);
  const without = variance(fit.plain.belief.varLnFactor);
  const steps: BakeStepParts[] = [
    { kind: 'doubt-start', inputs: [], operation: start.text, output: ['doubt', start] },
    ...doubtSteps(fit.plain, start, 'doubt', bakes),
  ];
  if (oven.core === 'none') return steps;
  const cored = variance(fit.withCore.prior.varLnFactor);
  return [
    ...steps,
    {
      kind: 'doubt-core-start',
      inputs: [['doubt', without]],
      operation: `${without.text} + ${constants.coreLogSd}^2`,
      output: ['doubt', cored],
    },
    ...doubtSteps(fit.withCore, cored, 'doubt-core', bakes),
  ];
}
