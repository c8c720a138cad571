/** Steps from a tin and a height to the volume it holds, and back from raw batter to its height. */
import { volumeMl, volumeToHeightMl } from '../compute/shapes/index.ts';
import { quantiseMl, quantiseMm } from '../domain/quantise.ts';
import type { Shape } from '../domain/shape.ts';
import type { Tin } from '../domain/tin.ts';
import type { StepKind } from '../wording/working-words.ts';
import type { Figure } from './figure.ts';
import {
  heartSolid,
  longOctagonSolid,
  outlineSolid,
  petalSolid,
  polygonSolid,
} from './working-even-solids.ts';
import { computed, given, type StepParts } from './working-numbers.ts';
import { domeSolid, loafSolid, taperedRing, taperedRound, taperedSquare } from './working-sloping-solids.ts';
import { even, type Inputs, length, type Solid } from './working-solid.ts';

function roundSolid(shape: Extract<Shape, { kind: 'round' }>): Solid {
  if (shape.baseAcrossMm !== undefined) return taperedRound(shape);
  const across = length(shape.acrossMm);
  return even([['across', across]], `π × ${across.text}^2 ÷ 4`);
}

function squareSolid(shape: Extract<Shape, { kind: 'square' }>): Solid {
  if (shape.baseSideMm !== undefined) return taperedSquare(shape);
  const side = length(shape.sideMm);
  return even([['side', side]], `${side.text}^2`);
}

function ringSolid(shape: Extract<Shape, { kind: 'ring' }>): Solid {
  if (shape.baseAcrossMm !== undefined || shape.baseTubeMm !== undefined) return taperedRing(shape);
  const [across, tube] = [length(shape.acrossMm), length(shape.tubeMm)];
  const inputs: Inputs = [
    ['across', across],
    ['tube', tube],
  ];
  return even(inputs, `π × (${across.text}^2 − ${tube.text}^2) ÷ 4`);
}

function oblongSolid(lengthMm: number, widthMm: number, factor: string): Solid {
  const [l, w] = [length(lengthMm), length(widthMm)];
  const inputs: Inputs = [
    ['length', l],
    ['width', w],
  ];
  return even(inputs, `${l.text} × ${w.text}${factor}`);
}

function solidOf(shape: Shape, prefix: string): Solid {
  switch (shape.kind) {
    case 'round':
      return roundSolid(shape);
    case 'square':
      return squareSolid(shape);
    case 'rectangle':
      return oblongSolid(shape.lengthMm, shape.widthMm, '');
    case 'oval':
      return oblongSolid(shape.lengthMm, shape.widthMm, ' × π ÷ 4');
    case 'loaf':
      return loafSolid(shape);
    case 'hexagon':
    case 'octagon':
      return polygonSolid(shape, prefix);
    case 'long-octagon':
      return longOctagonSolid(shape);
    case 'heart':
      return heartSolid(shape, prefix);
    case 'petal':
      return petalSolid(shape, prefix);
    case 'ring':
      return ringSolid(shape);
    case 'dome':
      return domeSolid(shape);
    case 'outline':
      return outlineSolid(shape);
    case 'measured':
      return { kind: 'water', volume: given(shape.volumeMl, 'mL') };
  }
}

/** A tin without the water it was seen to hold: what the formula says. */
function byFormula(tin: Tin): Tin {
  const { measuredVolumeMl: _, ...formula } = tin;
  return formula;
}

const LAST_RESULT_KIND: StepKind = 'volume';

function insideSteps(
  tin: Tin,
  solid: Solid,
  height: Figure,
  depth: Figure,
  prefix: string,
  kind: StepKind,
): StepParts[] {
  const volume = computed(quantiseMl(volumeToHeightMl(byFormula(tin), height.value)), 'mL');
  const output: StepParts['output'] = ['volume', volume];
  const id = `${prefix}${kind}`;
  if (solid.kind === 'water') {
    const inputs: Inputs = [
      ['water', solid.volume],
      ['height', height],
      ['depth', depth],
    ];
    return [{ id, kind, inputs, operation: `${solid.volume.text} × ${height.text} ÷ ${depth.text}`, output }];
  }
  if (solid.kind === 'even') {
    const inputs: Inputs = [...solid.inputs, ['height', height]];
    return [
      ...solid.before,
      { id, kind, inputs, operation: `${solid.areaText} × ${height.text} ÷ 1,000`, output },
    ];
  }
  const { before, inputs, mm3Text } = solid.fill(height, depth, prefix);
  return [...before, { id, kind, inputs, operation: `(${mm3Text}) ÷ 1,000`, output }];
}

/** The cake above a sloping wall goes on with the rim's area; straight walls need no such step. */
function aboveRimSteps(tin: Tin, solid: Solid, height: Figure, depth: Figure, prefix: string): StepParts[] {
  if (solid.kind !== 'sloping') return insideSteps(tin, solid, height, depth, prefix, LAST_RESULT_KIND);
  const inside = insideSteps(tin, solid, depth, depth, `${prefix}rim-`, 'volume-to-rim');
  const rim = inside.at(-1)?.output[1] ?? depth;
  const volume = computed(quantiseMl(volumeToHeightMl(byFormula(tin), height.value)), 'mL');
  const above: StepParts = {
    id: `${prefix}volume-above-rim`,
    kind: 'volume-above-rim',
    inputs: [['volume-to-rim', rim], ...solid.rimInputs, ['height', height], ['depth', depth]],
    operation: `${rim.text} + ${solid.rimAreaText} × (${height.text} − ${depth.text}) ÷ 1,000`,
    output: ['volume', volume],
  };
  return [...inside, above];
}

function formulaSteps(tin: Tin, height: Figure, prefix: string): StepParts[] {
  const solid = solidOf(tin.shape, prefix);
  const depth = given(tin.depthMm, 'mm');
  return height.value > tin.depthMm
    ? aboveRimSteps(tin, solid, height, depth, prefix)
    : insideSteps(tin, solid, height, depth, prefix, LAST_RESULT_KIND);
}

function waterSteps(tin: Tin, height: Figure, prefix: string): StepParts[] {
  const own = formulaSteps(tin, height, prefix);
  if (tin.measuredVolumeMl === undefined) return own;
  const depth = given(tin.depthMm, 'mm');
  const full = formulaSteps(tin, depth, `${prefix}full-`);
  const byOwn = own.at(-1)?.output[1] ?? depth;
  const byFull = computed(quantiseMl(volumeMl(byFormula(tin))), 'mL');
  const water = given(tin.measuredVolumeMl, 'mL');
  const scaled: StepParts = {
    id: `${prefix}water-volume`,
    kind: 'water-volume',
    inputs: [
      ['formula-volume', byOwn],
      ['water', water],
      ['volume-to-rim', byFull],
    ],
    operation: `${byOwn.text} × ${water.text} ÷ ${byFull.text}`,
    output: ['volume', computed(quantiseMl(volumeToHeightMl(tin, height.value)), 'mL')],
  };
  const rimNamed = full.map((step) =>
    step.kind === LAST_RESULT_KIND ? { ...step, kind: 'volume-to-rim' as const } : step,
  );
  return [...own, ...rimNamed, scaled];
}

/** From the tin's measures to the volume it holds up to a height; the last step's output is that volume. */
export function volumeSteps(tin: Tin, height: Figure, prefix: string): StepParts[] {
  return waterSteps(tin, height, prefix);
}

function evenArea(tin: Tin): { inputs: Inputs; areaText: string } | null {
  if (tin.measuredVolumeMl !== undefined) return null;
  const solid = solidOf(tin.shape, '');
  return solid.kind === 'even' ? solid : null;
}

/** From the raw batter's volume to the height it stands; where walls slope, filled back to check. */
export function rawFillSteps(tin: Tin, rawVolume: Figure, rawFillMm: number): StepParts[] {
  const height = computed(quantiseMm(rawFillMm), 'mm');
  const area = evenArea(tin);
  if (area !== null) {
    const inputs: Inputs = [['raw-volume', rawVolume], ...area.inputs];
    // An area that is one bracket needs no second one round it.
    const areaText = /^\([^()]*\)$/.test(area.areaText) ? area.areaText : `(${area.areaText})`;
    const operation = `${rawVolume.text} × 1,000 ÷ ${areaText}`;
    return [{ id: 'raw-fill', kind: 'raw-fill', inputs, operation, output: ['height', height] }];
  }
  const steps = volumeSteps(tin, height, 'raw-fill-');
  return steps.map((step, at) =>
    at === steps.length - 1 ? { ...step, kind: 'raw-fill-checked' as const } : step,
  );
}
