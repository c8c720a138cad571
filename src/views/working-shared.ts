/** Steps that every row of a chart rests on: the yield density from its proven bakes, and the kitchen's egg. */
import { type ProvenYield, provenVolumeMl, type YieldDensity } from '../compute/batter/yield-density.ts';
import { unitG } from '../compute/eggs/whole-eggs.ts';
import { volumeToHeightMl } from '../compute/shapes/index.ts';
import { type EggPart, PART_SHARE } from '../domain/egg.ts';
import { quantiseMl, quantiseRatio } from '../domain/quantise.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { type ChartInput, chartFormula } from './chart-mixes.ts';
import type { Figure } from './figure.ts';
import { computed, given, type StepParts } from './working-numbers.ts';
import { volumeSteps } from './working-volume.ts';

/** Steps of one proven bake: each kind of tin's volume, their sum, and the density it alone would give. */
function bakeSteps({ bake, volumeMl, gPerMl }: ProvenYield, number: number, words: Words): StepParts[] {
  const prefix = `bake-${number}-`;
  const name = words.working.bake(number);
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
    output: ['density', computed(density.gPerMl, 'g/mL')],
  };
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
export function sharedSteps(
  input: ChartInput,
  density: YieldDensity,
  gPerMl: number,
  words: Words,
): StepParts[] {
  return [
    ...density.bakes.flatMap((bake, at) => bakeSteps(bake, at + 1, words)),
    densityStep(density),
    ...growthSteps(density, gPerMl, input.flavours?.growth ?? 1),
    ...eggSteps(input),
  ];
}
