import type { BakeStepWords, BakeWorkingWords } from './working-words.ts';

const step = (title: string, rule: string, source: string): BakeStepWords => ({ title, rule, source });

const HOUSE = 'a rule of this program, chosen with common practice in mind, no source';
const LOG = 'this kitchen’s bake log';
const CONDUCTION =
  'Conduction of Heat in Solids, Carslaw and Jaeger, 1959, and Fundamentals of Heat and Mass Transfer, Incropera and DeWitt, chapter 5, both from memory';
const FITTED = 'maximum a posteriori fit with Cauchy weights, a textbook method';

export const enGbBakeWorking: BakeWorkingWords = {
  steps: {
    factor: step(
      'Time factor of the recipe',
      'How long it takes against a plain sponge in an eight-inch tin: the most probable value after the logged bakes, a wild one counting for little.',
      `${LOG}; ${FITTED}`,
    ),
    'factor-none': step(
      'Time factor of the recipe',
      'How long it takes against a plain sponge in an eight-inch tin. Nothing is logged yet, so it is that of its kind of cake, uncertain by some 30 %.',
      HOUSE,
    ),
    'factor-core': step(
      'Time factor with a heating core',
      'Bakes with a core are a group of their own: they start from what the others taught, a little less surely.',
      `${LOG}; ${FITTED}`,
    ),
    heat: step(
      'Heat, without a fan',
      'The recipe’s own heat, or less where the edge of a wide cake would have too much of it before the middle is done; to the nearest setting of the dial.',
      HOUSE,
    ),
    series: step(
      'Plain sponge in this tin, by conduction',
      'Minutes until the middle is done when heat soaks in from every side: the product of the series for each direction, eight terms and more, summed by machine. Only this step cannot be done on paper.',
      CONDUCTION,
    ),
    neutral: step(
      'With this tin, band and core',
      'A dark tin is quicker, a bright or banded one slower, a core quicker again.',
      'common practice, no source',
    ),
    size: step(
      'Growth with size',
      'A rich fruit cake takes longer than its size alone would say: (across ÷ 203.2 mm) to a power.',
      `common practice, no source; ${LOG}`,
    ),
    likely: step(
      'Most likely',
      'Four minutes until the middle feels anything, then the recipe’s own pace.',
      HOUSE,
    ),
    'done-scatter': step(
      'Scatter of the done test',
      'A baker calls it done to within five minutes or so; small cakes, watched more closely, to less.',
      HOUSE,
    ),
    spread: step(
      'Give or take',
      'Three doubts together: the factor, the moment it was called done, and 3.5 % for the model itself.',
      HOUSE,
    ),
    'first-look': step(
      'First look',
      'One bake in twenty is done before it.',
      'normal distribution, 5 % beyond 1.645 standard deviations',
    ),
    'first-look-told': step('First look, as told', 'To the nearest five minutes, never below five.', HOUSE),
    'done-by': step(
      'Done by',
      'One bake in twenty takes longer.',
      'normal distribution, 5 % beyond 1.645 standard deviations',
    ),
    'done-by-told': step('Done by, as told', 'To the nearest five minutes, never below five.', HOUSE),
  },
  labels: {
    factor: 'time factor',
    heat: 'heat',
    series: 'plain sponge',
    tin: 'tin',
    band: 'band',
    core: 'core',
    neutral: 'in this tin',
    across: 'across',
    power: 'power',
    size: 'growth with size',
    likely: 'most likely',
    variance: 'doubt about the factor, squared',
    scatter: 'done test',
    spread: 'give or take',
    'first-look': 'first look',
    'done-by': 'done by',
    told: 'as told',
  },
  fromLog: (bakes) => `Rests on ${bakes}.`,
};
