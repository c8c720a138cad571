/** Steps that every row of a chart rests on: the yield density from its proven bakes, and the kitchen's egg. */
import { type ProvenYield, provenVolumeMl, type YieldDensity } from '../compute/batter/yield-density.ts';
import { unitG } from '../compute/eggs/whole-eggs.ts';
import { volumeToHeightMl } from '../compute/shapes/index.ts';
import { type EggPart, PART_SHARE } from '../domain/egg.ts';
import { quantiseMl, quantiseRatio } from '../domain/quantise.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { workingWordsFor } from '../wording/locales/working.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import type { WorkingWords } from '../wording/working-words.ts';
import { type ChartInput, chartFormula } from './chart-mixes.ts';
import type { Figure } from './figure.ts';
import { computed, given, type StepParts } from './working-numbers.ts';
import { volumeSteps } from './working-volume.ts';

/** Steps of one proven bake: each kind of tin's volume, their sum, and the density it alone would give. */
function bakeSteps(
  { bake, volumeMl, gPerMl }: ProvenYield,
  { prefix, name }: { prefix: string; name: string },
  words: Words,
): StepParts[] {
  const height = given(bake.finishedHeightMm, 'mm');
  const each = bake.tins.flatMap(({ tin }, at) =>
    volumeSteps(tin, height, `${prefix}tin-${at + 1}-`).map((step) => ({
      ...step,
      of: `${name}, ${tinSize(tin, words)}`,
    })),
  );
  const terms = bake.tins.map(({ tin, count }) => ({
    count: computed(count, 'count'),
    volume: computed(quantiseMl(volumeToHeightMl(tin, bake.finishedHeightMm)), 'mL'),
  }));
  const sum: StepParts = {
    id: `${prefix}volume`,
    kind: 'bake-volume',
    of: name,
    inputs: terms.flatMap(({ count, volume }): StepParts['inputs'] => [
      ['count', count],
      ['volume', volume],
    ]),
    operation: terms.map(({ count, volume }) => `${count.text} × ${volume.text}`).join(' + '),
    output: ['volume', computed(provenVolumeMl(bake), 'mL')],
  };
  const [batter, volume] = [given(bake.batterG, 'g'), computed(volumeMl, 'mL')];
  const density: StepParts = {
    id: `${prefix}density`,
    kind: 'bake-density',
    of: name,
    inputs: [
      ['batter', batter],
      ['volume', volume],
    ],
    operation: `${batter.text} ÷ ${volume.text}`,
    output: ['density', computed(gPerMl, 'g/mL')],
  };
  return [...each, sum, density];
}

/** Least squares through the origin over all bakes. */
function densityStep(density: YieldDensity): StepParts {
  const terms = density.bakes.map(({ bake, volumeMl }) => ({
    batter: given(bake.batterG, 'g'),
    volume: computed(volumeMl, 'mL'),
  }));
  const top = terms.map(({ batter, volume }) => `${batter.text} × ${volume.text}`).join(' + ');
  const bottom = terms.map(({ volume }) => `${volume.text}^2`).join(' + ');
  return {
    id: 'density',
    kind: 'density',
    inputs: terms.flatMap(({ batter, volume }): StepParts['inputs'] => [
      ['batter', batter],
      ['volume', volume],
    ]),
    operation: `(${top}) ÷ (${bottom})`,
    output: ['density', computed(density.provenGPerMl, 'g/mL')],
  };
}

/** The log's bakes, and the density once they have joined the proven ones. */
function loggedSteps(
  { bakes, logged, gPerMl, provenGPerMl }: YieldDensity,
  words: Words,
  own: WorkingWords,
): StepParts[] {
  if (logged.length === 0) return [];
  const each = logged.flatMap((bake, at) =>
    bakeSteps(bake, { prefix: `log-${at + 1}-`, name: own.loggedBake(at + 1) }, words),
  );
  const proven = computed(provenGPerMl, 'g/mL');
  const squared = computed(
    quantiseMl(bakes.reduce((sum, { volumeMl }) => sum + volumeMl * volumeMl, 0)),
    'mL2',
  );
  const terms = logged.map(({ bake, volumeMl, weight }) => ({
    weight: given(weight, 'ratio'),
    batter: given(bake.batterG, 'g'),
    volume: computed(volumeMl, 'mL'),
  }));
  const top = terms.map(({ weight, batter, volume }) => `${weight.text} × ${batter.text} × ${volume.text}`);
  const bottom = terms.map(({ weight, volume }) => `${weight.text} × ${volume.text}^2`);
  const squares: StepParts = {
    id: 'proven-squares',
    kind: 'proven-squares',
    inputs: bakes.map(({ volumeMl }): StepParts['inputs'][number] => ['volume', computed(volumeMl, 'mL')]),
    operation: bakes.map(({ volumeMl }) => `${computed(volumeMl, 'mL').text}^2`).join(' + '),
    output: ['squares', squared],
  };
  const joint: StepParts = {
    id: 'density-log',
    kind: 'density-log',
    inputs: [
      ['density', proven],
      ['squares', squared],
      ...terms.flatMap(({ weight, batter, volume }): StepParts['inputs'] => [
        ['weight', weight],
        ['batter', batter],
        ['volume', volume],
      ]),
    ],
    operation: `(${[`${proven.text} × ${squared.text}`, ...top].join(' + ')}) ÷ (${[squared.text, ...bottom].join(' + ')})`,
    output: ['density', computed(gPerMl, 'g/mL')],
  };
  return [...each, squares, joint];
}

function growthSteps(density: YieldDensity, gPerMl: number, growth: number): StepParts[] {
  if (growth === 1) return [];
  const [plain, factor] = [computed(density.gPerMl, 'g/mL'), computed(quantiseRatio(growth), 'ratio')];
  return [
    {
      id: 'growth',
      kind: 'growth',
      inputs: [
        ['density', plain],
        ['growth', factor],
      ],
      operation: `${plain.text} × ${factor.text}`,
      output: ['density', computed(gPerMl, 'g/mL')],
    },
  ];
}

/** The mass of one egg, and of one yolk or white where the formula counts them. */
function eggSteps(input: ChartInput): StepParts[] {
  const parts = new Set<EggPart>(
    chartFormula(input).flatMap(({ eggPart }) => (eggPart === undefined ? [] : [eggPart])),
  );
  if (parts.size === 0) return [];
  const egg = given(input.kitchen.egg.shelledG, 'g');
  const whole: StepParts = {
    id: 'egg-mass',
    kind: 'egg-mass',
    inputs: [],
    operation: egg.text,
    output: ['egg', egg],
  };
  const others = (['yolk', 'white'] as const).filter((part) => parts.has(part));
  return [whole, ...others.map((part) => eggPartStep(input, part, egg))];
}

function eggPartStep({ kitchen }: ChartInput, part: EggPart, egg: Figure): StepParts {
  const share = given(PART_SHARE[part], 'share');
  return {
    id: `${part}-mass`,
    kind: 'egg-part-mass',
    inputs: [
      ['egg', egg],
      ['part-share', share],
    ],
    operation: `${egg.text} × ${share.text}`,
    output: ['egg', given(unitG(kitchen.egg, part), 'g')],
  };
}

/** Shared steps in the order one would work them. */
export function sharedSteps(input: ChartInput, density: YieldDensity, gPerMl: number): StepParts[] {
  const words = wordsFor(input.kitchen.locale);
  const own = workingWordsFor(input.kitchen.locale);
  return [
    ...density.bakes.flatMap((bake, at) =>
      bakeSteps(bake, { prefix: `bake-${at + 1}-`, name: own.bake(at + 1) }, words),
    ),
    densityStep(density),
    ...loggedSteps(density, words, own),
    ...growthSteps(density, gPerMl, input.flavours?.growth ?? 1),
    ...eggSteps(input),
  ];
}
