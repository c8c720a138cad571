/** Steps from one tin to its batter and to how high that stands raw. */
import type { Mix, MixTin } from '../compute/mixes/mix.types.ts';
import type { Recipe } from '../domain/recipe.ts';
import { computed, given, type StepParts } from './working-numbers.ts';
import { rawFillSteps, volumeSteps } from './working-volume.ts';

function heightStep(recipe: Recipe, filled: MixTin): StepParts {
  const height = given(filled.finishedHeightMm, 'mm');
  if (filled.heightFrom === 'asked') {
    return {
      id: 'finished-height',
      kind: 'asked-height',
      inputs: [],
      operation: height.text,
      output: ['height', height],
    };
  }
  const own = given(recipe.finishedHeightMm, 'mm');
  const [depth, rise] = [given(filled.tin.depthMm, 'mm'), given(recipe.allowedRiseMm, 'mm')];
  return {
    id: 'finished-height',
    kind: 'finished-height',
    inputs: [
      ['recipe-height', own],
      ['depth', depth],
      ['rise', rise],
    ],
    operation: `min(${own.text}, ${depth.text} + ${rise.text})`,
    output: ['height', height],
  };
}

function batterSteps(mix: Mix, filled: MixTin): StepParts[] {
  const [density, volume] = [computed(mix.gPerMl, 'g/mL'), computed(filled.finishedVolumeMl, 'mL')];
  const each = computed(filled.batterGEach, 'g');
  const one: StepParts = {
    id: 'batter-each',
    kind: 'batter-each',
    inputs: [
      ['density', density],
      ['volume', volume],
    ],
    operation: `${density.text} × ${volume.text}`,
    output: ['batter-each', each],
  };
  // Several kinds of tin ask together: their sum stands with the mix.
  if (filled.count === 1 || mix.tins.length > 1) return [one];
  const count = computed(filled.count, 'count');
  const all: StepParts = {
    id: 'batter-all',
    kind: 'batter-all',
    inputs: [
      ['count', count],
      ['batter-each', each],
    ],
    operation: `${count.text} × ${each.text}`,
    output: ['asked', computed(mix.askedG, 'g')],
  };
  return [one, all];
}

/** Finished height, volume and batter of the row's tin. */
export function tinSteps(recipe: Recipe, mix: Mix, filled: MixTin): StepParts[] {
  const height = given(filled.finishedHeightMm, 'mm');
  return [heightStep(recipe, filled), ...volumeSteps(filled.tin, height, ''), ...batterSteps(mix, filled)];
}

/** Raw volume and raw fill of the row's tin. */
export function fillSteps(recipe: Recipe, filled: MixTin): StepParts[] {
  const [batter, density] = [computed(filled.batterGEach, 'g'), given(recipe.rawDensityGPerMl, 'g/mL')];
  const volume = computed(filled.rawVolumeMl, 'mL');
  const raw: StepParts = {
    id: 'raw-volume',
    kind: 'raw-volume',
    inputs: [
      ['batter-each', batter],
      ['raw-density', density],
    ],
    operation: `${batter.text} ÷ ${density.text}`,
    output: ['raw-volume', volume],
  };
  return [raw, ...rawFillSteps(filled.tin, volume, filled.rawFillMm)];
}
