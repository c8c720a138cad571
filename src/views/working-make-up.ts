/** The working of a batter's make-up: shares, Choi & Okos, and the time that they alone would give. */
import {
  COMPARED_AT_C,
  COMPONENTS,
  componentProperties,
  PLAIN_SPONGE,
  thermalProperties,
} from '../compute/bake/index.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import type { BakeWorkingWords } from '../wording/bake/index.ts';
import type { Figure } from './figure.ts';
import { fittedMm2, inMm2 } from './make-up-sentences.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import type { BakeStepParts } from './working-bake-step.ts';
import { ratio } from './working-bake-step.ts';
import { computed, given } from './working-numbers.ts';

/** Digits of a tabulated property that are carried. */
const FINE = 1e6;
const carried = (value: number): number => Math.round(value * FINE) / FINE;

interface Part {
  component: (typeof COMPONENTS)[number];
  share: Figure;
  density: Figure;
  conductivity: Figure;
  heat: Figure;
}

function shareSteps({ makeUp }: RecipeBakes, words: BakeWorkingWords): BakeStepParts[] {
  const { lines, shares } = makeUp;
  const whole = lines.map(({ grams }) => given(grams, 'g').text).join(' + ');
  return COMPONENTS.map((component): BakeStepParts => {
    const holding = lines.filter((line) => line.shares[component] > 0);
    const terms = holding.map((line) => ({
      name: line.name,
      grams: given(line.grams, 'g'),
      share: given(line.shares[component], 'share'),
    }));
    return {
      kind: 'make-up-share',
      key: component,
      of: words.components[component],
      inputs: terms.flatMap(({ name, grams, share }): BakeStepParts['inputs'] => [
        [{ own: name }, grams],
        ['share', share],
      ]),
      operation: `(${terms.length === 0 ? '0' : terms.map(({ grams, share }) => `${grams.text} × ${share.text}`).join(' + ')}) ÷ (${whole})`,
      output: ['share', given(shares[component], 'share')],
    };
  });
}

function partsOf({ makeUp }: RecipeBakes): Part[] {
  return COMPONENTS.filter((component) => makeUp.shares[component] > 0).map((component) => {
    const { density, conductivity, heat } = componentProperties(component, COMPARED_AT_C);
    return {
      component,
      share: given(makeUp.shares[component], 'share'),
      density: given(carried(density), 'kg/m3'),
      conductivity: given(carried(conductivity), 'W/mK'),
      heat: given(carried(heat), 'kJ/kgK'),
    };
  });
}

const inputsOf = (
  parts: readonly Part[],
  keys: readonly ('share' | 'density' | 'conductivity' | 'heat')[],
  words: BakeWorkingWords,
): BakeStepParts['inputs'] =>
  parts.flatMap((part) =>
    keys.map((key): BakeStepParts['inputs'][number] => [
      { own: words.components[part.component] },
      part[key],
    ]),
  );

/** All steps; the last compares with the pace that the log, or the kind of cake, says. */
export function makeUpSteps(bakes: RecipeBakes, words: BakeWorkingWords): BakeStepParts[] {
  const parts = partsOf(bakes);
  const { densityKgPerM3, conductivityWPerMK, heatCapacityKJPerKgK, diffusivityM2PerS } = thermalProperties(
    bakes.makeUp.shares,
    COMPARED_AT_C,
  );
  const density = computed(carried(densityKgPerM3), 'kg/m3');
  const conductivity = computed(carried(conductivityWPerMK), 'W/mK');
  const heat = computed(carried(heatCapacityKJPerKgK), 'kJ/kgK');
  const own = computed(inMm2(diffusivityM2PerS), 'mm2/s');
  const plain = computed(inMm2(thermalProperties(PLAIN_SPONGE, COMPARED_AT_C).diffusivityM2PerS), 'mm2/s');
  const factor = ratio(bakes.fit.plain.timeFactor);
  const share = (part: Part): string => `${part.share.text} ÷ ${part.density.text}`;
  return [
    ...shareSteps(bakes, words),
    {
      kind: 'make-up-density',
      inputs: inputsOf(parts, ['share', 'density'], words),
      operation: `1 ÷ (${parts.map(share).join(' + ')})`,
      output: ['density', density],
    },
    {
      kind: 'make-up-conductivity',
      inputs: [['density', density], ...inputsOf(parts, ['conductivity'], words)],
      operation: `${density.text} × (${parts.map((part) => `${part.conductivity.text} × ${share(part)}`).join(' + ')})`,
      output: ['conductivity', conductivity],
    },
    {
      kind: 'make-up-heat',
      inputs: inputsOf(parts, ['share', 'heat'], words),
      operation: parts.map((part) => `${part.share.text} × ${part.heat.text}`).join(' + '),
      output: ['heat-capacity', heat],
    },
    {
      kind: 'make-up-diffusivity',
      inputs: [
        ['conductivity', conductivity],
        ['density', density],
        ['heat-capacity', heat],
      ],
      operation: `${conductivity.text} ÷ (${density.text} × ${heat.text}) × 1000`,
      output: ['diffusivity', own],
    },
    {
      kind: 'make-up-factor',
      inputs: [
        ['plain-diffusivity', plain],
        ['diffusivity', own],
      ],
      operation: `${plain.text} ÷ ${own.text}`,
      output: ['factor', computed(bakes.makeUp.timeFactor, 'ratio')],
    },
    {
      kind: 'make-up-fitted',
      inputs: [['factor', factor]],
      operation: `${quantiseRatio(bakes.constants.alphaM2PerS * FINE)} ÷ ${factor.text}`,
      output: ['diffusivity', computed(fittedMm2(bakes), 'mm2/s')],
    },
  ];
}
