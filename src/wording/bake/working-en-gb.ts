import type { BakeStepWords, BakeWorkingWords } from './working-words.ts';

const step = (title: string, rule: string, source: string): BakeStepWords => ({ title, rule, source });

const HOUSE = 'a rule of this program, chosen with common practice in mind, no source';
const LOG = 'this kitchen’s bake log';
const CONDUCTION =
  'Conduction of Heat in Solids, Carslaw and Jaeger, 1959, and Fundamentals of Heat and Mass Transfer, Incropera and DeWitt, chapter 5, both from memory';
const CHOI =
  'Choi and Okos, 1986, as in the ASHRAE Handbook, Refrigeration, 2006, chapter 9; coefficients seen in public code';
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
    'factor-elsewhere': step(
      'Time factor of the recipe',
      'Nothing is logged in this oven yet, so it is what bakes in another oven taught, a little less surely.',
      `${LOG}; ${FITTED}`,
    ),
    'factor-make-up': step(
      'Time factor of the recipe',
      'Nothing is logged yet, and the recipe asks to start from its make-up: the factor worked out below.',
      CHOI,
    ),
    batter: step(
      'Batter as it goes in',
      'What a thermometer in the filled tin would read: the recipe’s word, else the kitchen’s, else an ordinary room.',
      'this kitchen',
    ),
    done: step(
      'Middle when it is done',
      'Set and dry enough to cut: 95 °C, or 3 °C below the boiling point where the kitchen is high up.',
      HOUSE,
    ),
    'to-go': step(
      'Part of the way still to go when done',
      'How far the middle is from the oven’s heat when done, against when it went in.',
      CONDUCTION,
    ),
    'bake-neutral': step(
      'as a plain sponge',
      'The series for that bake’s own tin, height, heat, band and core, summed by machine.',
      CONDUCTION,
    ),
    'bake-expected': step('as the recipe’s pace has it', 'Four minutes, then the recipe’s own pace.', HOUSE),
    'bake-scatter': step(
      'give or take, squared',
      'The moment it was called done and the model’s own 3.5 %, squared and added.',
      HOUSE,
    ),
    'bake-off': step(
      'how far off, squared',
      'Against what is usual: 1 is as far off as most bakes are.',
      FITTED,
    ),
    'bake-weight': step(
      'how much it is heeded',
      'Almost wholly when it agrees, little when it is far off.',
      FITTED,
    ),
    steady: step(
      'How steadily it is called done',
      'One standard deviation: five minutes to begin with, worth eight bakes, then what the logged bakes are off by.',
      `${LOG}; ${HOUSE}`,
    ),
    'steady-none': step(
      'How steadily it is called done',
      'One standard deviation: nothing is logged yet, so it is the usual five minutes.',
      HOUSE,
    ),
    'bake-says': step(
      'what it says of the pace',
      'A long bake says more than a short one; one far off the others says little.',
      FITTED,
    ),
    'doubt-start': step(
      'Doubt to start from, squared',
      'How unsure the factor is, as a logarithm, before any bake in this oven: 0.30 for a kind of cake, more for a make-up far from it, less after another oven’s bakes.',
      HOUSE,
    ),
    'doubt-core-start': step(
      'Doubt about a core to start from, squared',
      'What is unsure without a core, and 0.10 for the core itself.',
      HOUSE,
    ),
    doubt: step(
      'Doubt about the factor, squared',
      'Each logged bake takes some away: this is what makes the windows narrower.',
      FITTED,
    ),
    'doubt-core': step(
      'Doubt about the factor with a core, squared',
      'Each bake logged with a core takes some away.',
      FITTED,
    ),
    'doubt-size': step(
      'Doubt about the factor in this tin, squared',
      'Factor and growth with size are fitted together by machine, and how unsure they are depends on the size.',
      FITTED,
    ),
    water: step(
      'Batter that leaves as steam',
      'The log’s weighings, each sure to 1.5 %, and before them the recipe’s own word, as sure as one of them, or the trade’s figure, sure to 1.8 %: each counts by one over its doubt squared.',
      `${LOG}; common practice, no source`,
    ),
    offset: step(
      'Heat of the oven over its dial',
      'From bakes with a probe in the middle at several settings: factor and offset fitted together, by machine, from 0 °C, give or take 10. It is told and moves nothing: the recipe’s pace has it in already.',
      `${LOG}; ${FITTED}`,
    ),
    baked: step('Weight when baked', 'What was poured in, less the steam.', LOG),
    'make-up-share': step(
      'share of the batter',
      'Grams of each ingredient × its share, over the whole formula. Shares come from the packet where it has them; else its water as written and round figures for its kind.',
      'packets; round figures from memory',
    ),
    'make-up-density': step(
      'Density of the batter without air',
      'Each part by its own density at 60 °C.',
      CHOI,
    ),
    'make-up-conductivity': step('Conductivity', 'Each part at 60 °C, by the room that it takes up.', CHOI),
    'make-up-heat': step('Heat capacity', 'Each part at 60 °C, by its weight.', CHOI),
    'make-up-diffusivity': step(
      'How fast heat creeps through it',
      'Conductivity ÷ (density × heat capacity), still and without air.',
      CHOI,
    ),
    'make-up-factor': step(
      'Time by make-up alone',
      'A plain sponge’s batter, worked out alike, against this one. It leaves out air, rise and steam, which matter more.',
      CHOI,
    ),
    'make-up-fitted': step(
      'How fast heat gets through it in the oven',
      'The model’s 0.44 mm² a second for a plain sponge, rise and steam included, at this recipe’s own pace.',
      HOUSE,
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
      'How steadily it is called done; small cakes are watched more closely, and that shrinks in proportion.',
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
    batter: 'batter',
    done: 'done at',
    'to-go': 'part to go',
    took: 'took',
    'scatter-squared': 'give or take, squared',
    off: 'off, squared',
    weight: 'heeded',
    steady: 'done test',
    offset: 'over the dial',
    information: 'what it says',
    doubt: 'doubt, squared',
    poured: 'poured in',
    'water-loss': 'leaves as steam',
    baked: 'baked',
    grams: 'grams',
    share: 'share',
    density: 'density',
    conductivity: 'conductivity',
    'heat-capacity': 'heat capacity',
    diffusivity: 'diffusivity',
    'plain-diffusivity': 'plain sponge’s',
  },
  components: {
    water: 'Water',
    protein: 'Protein',
    fat: 'Fat',
    carbohydrate: 'Sugar and starch',
    fibre: 'Fibre',
    ash: 'Minerals',
  },
  fromLog: (bakes) => `Rests on ${bakes}.`,
};
