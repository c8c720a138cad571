/** Plan areas of the shapes with straight walls, as arithmetic. */

import { planAreaMm2 } from '../compute/shapes/index.ts';
import { quantiseMm, quantiseMm2, quantiseRatio } from '../domain/quantise.ts';
import type { Heart, LongOctagon, OutlineShape, Petal, RegularPolygon } from '../domain/shape.ts';
import { computed, type StepParts } from './working-numbers.ts';
import { type EvenSolid, even, length } from './working-solid.ts';

/** Across the flats from across the corners: cos 30° and cos 22½° as roots. */
const FLATS = { hexagon: '√(3) ÷ 2', octagon: '√(2 + √(2)) ÷ 2' } as const;
/** Area ÷ flats²: tan 30° and tan 22½° as roots. */
const AREA = { hexagon: '√(3) ÷ 2', octagon: '2 × (√(2) − 1)' } as const;
const HALF_ANGLE = { hexagon: Math.PI / 6, octagon: Math.PI / 8 } as const;

/** Hexagon and octagon. */
export function polygonSolid(shape: RegularPolygon, prefix: string): EvenSolid {
  const across = length(shape.acrossMm);
  if (shape.measured === 'flats') return even([['flats', across]], `${AREA[shape.kind]} × ${across.text}^2`);
  const flats = computed(quantiseMm(shape.acrossMm * Math.cos(HALF_ANGLE[shape.kind])), 'mm');
  const before: StepParts = {
    id: `${prefix}flats`,
    kind: 'across-flats',
    inputs: [['across', across]],
    operation: `${across.text} × ${FLATS[shape.kind]}`,
    output: ['flats', flats],
  };
  return even([['flats', flats]], `${AREA[shape.kind]} × ${flats.text}^2`, [before]);
}

/** Long octagon: the four corners that are cut off make one square over the slant. */
export function longOctagonSolid({ lengthMm, widthMm, slantMm }: LongOctagon): EvenSolid {
  const [l, w, slant] = [length(lengthMm), length(widthMm), length(slantMm)];
  return even(
    [
      ['length', l],
      ['width', w],
      ['slant', slant],
    ],
    `(${l.text} × ${w.text} − ${slant.text}^2)`,
  );
}

/** Heart: a square and two half discs. */
export function heartSolid(shape: Heart, prefix: string): EvenSolid {
  const across = length(shape.acrossMm);
  const divisor = shape.measured === 'across' ? 1 + Math.SQRT1_2 : 1.5 * Math.SQRT1_2 + 0.5;
  const divisorText = shape.measured === 'across' ? '(1 + 1 ÷ √(2))' : '(3 ÷ (2 × √(2)) + 1 ÷ 2)';
  const side = computed(quantiseMm(shape.acrossMm / divisor), 'mm');
  const before: StepParts = {
    id: `${prefix}side`,
    kind: 'side',
    inputs: [['across', across]],
    operation: `${across.text} ÷ ${divisorText}`,
    output: ['side', side],
  };
  return even([['side', side]], `${side.text}^2 × (1 + π ÷ 4)`, [before]);
}

/** Petal: a regular polygon and a half disc on every side. */
export function petalSolid(shape: Petal, prefix: string): EvenSolid {
  const across = length(shape.acrossMm);
  const cotangent = 1 / Math.tan(Math.PI / shape.petals);
  const shown = computed(quantiseRatio(cotangent), 'ratio');
  const side = computed(quantiseMm(shape.acrossMm / (1 + cotangent)), 'mm');
  const petals = computed(shape.petals, 'count');
  const before: StepParts = {
    id: `${prefix}side`,
    kind: 'side',
    inputs: [
      ['across', across],
      ['cotangent', shown],
    ],
    operation: `${across.text} ÷ (1 + ${shown.text})`,
    output: ['side', side],
  };
  const areaText = `${petals.text} × ${side.text}^2 × (${shown.text} ÷ 4 + π ÷ 8)`;
  return even(
    [
      ['petals', petals],
      ['side', side],
      ['cotangent', shown],
    ],
    areaText,
    [before],
  );
}

/** A drawn tin: its area was measured from the drawing. */
export function outlineSolid(shape: OutlineShape): EvenSolid {
  const area = computed(quantiseMm2(planAreaMm2({ shape, depthMm: 1 }) ?? 0), 'mm2');
  return even([['area', area]], area.text);
}
