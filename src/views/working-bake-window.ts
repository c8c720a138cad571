/** From a tin's neutral minutes to its window: most likely, give or take, first look and done by, exactly and as told. */
import { type BakeAdvice, type BakeGroup, beliefVariance } from '../compute/bake/index.ts';
import { nearestFive } from '../domain/bake-minutes.ts';
import { quantiseMin } from '../domain/quantise.ts';
import { formatFixed } from '../wording/number.ts';
import type { Figure } from './figure.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { type BakeStepParts, minutes, ratio, variance } from './working-bake-step.ts';
import { given } from './working-numbers.ts';

const NINETY_PERCENT = '1.645';
const WATCHED_MIN = '25';

type Parts = BakeStepParts;

/** A bound of the window, exactly and as told. */
function bound(kind: 'first-look' | 'done-by', value: number, likely: Figure, spread: Figure): Parts[] {
  const exact = minutes(value);
  const told: Figure = { value: nearestFive(value), unit: 'min', text: formatFixed(nearestFive(value), 0) };
  return [
    {
      kind,
      inputs: [
        ['likely', likely],
        ['spread', spread],
      ],
      operation: `${likely.text} ${kind === 'first-look' ? '−' : '+'} ${NINETY_PERCENT} × ${spread.text}`,
      output: [kind, exact],
    },
    {
      kind: `${kind}-told`,
      inputs: [[kind, exact]],
      operation: `max(5, round(${exact.text} ÷ 5) × 5)`,
      output: ['told', told],
    },
  ];
}

/** The parts of the steps. */
export function windowParts(way: BakeAdvice, group: BakeGroup, { constants, fit }: RecipeBakes): Parts[] {
  const { neutral, window } = way;
  const power = ratio(group.belief.sizePower);
  const [factor, inTin] = [ratio(group.timeFactor), minutes(neutral.neutralMin)];
  const growth = ratio(Math.exp(power.value * neutral.lnSize));
  const grows = power.value !== 0;
  const likely = minutes(window.likelyMin);
  const lag = given(constants.lagMin, 'min').text;
  const scatter = minutes(
    quantiseMin(fit.doneSdMin * Math.min(1, (window.likelyMin - constants.lagMin) / Number(WATCHED_MIN))),
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
  const done = minutes(fit.doneSdMin);
  // Fitted together with the growth by size, the doubt is another in each tin.
  const own: Parts = { kind: 'doubt-size', inputs: [], operation: doubt.text, output: ['doubt', doubt] };
  return [
    ...(group.belief.varSizePower > 0 ? [own] : []),
    {
      kind: 'likely',
      inputs: [
        ['neutral', inTin],
        ['factor', factor],
        ...(grows ? [['size', growth] as Parts['inputs'][number]] : []),
      ],
      operation: `${lag} + ${inTin.text} × ${factor.text}${grows ? ` × ${growth.text}` : ''}`,
      output: ['likely', likely],
    },
    {
      kind: 'done-scatter',
      inputs: [
        ['steady', done],
        ['likely', likely],
      ],
      operation: `${done.text} × min(1, (${likely.text} − ${lag}) ÷ ${WATCHED_MIN})`,
      output: ['scatter', scatter],
    },
    {
      kind: 'spread',
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
