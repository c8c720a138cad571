/**
 * A tin's size as its owner says it, 'round 6 × 3 in', and in the other system, '(15.2 × 7.6 cm)'. The number
 * after the last × is the depth. Tapered tins name the base, others how they are measured where it matters.
 */

import type { Shape } from '../domain/shape.ts';
import type { Tin } from '../domain/tin.ts';
import type { LengthUnit } from '../domain/units.ts';
import { formatLengthValue, formatOtherValue, otherUnit } from './length.ts';
import { formatNumber } from './number.ts';
import { capitalised } from './sentence-case.ts';
import type { Words } from './words.ts';

interface Measures {
  /** Lengths at the rim, without the depth. */
  rimMm: number[];
  baseMm: number[];
  tubeMm?: number;
  slantMm?: number;
  note?: string;
}

const asMeasured = (rimMm: number[], note?: string): Measures => ({
  rimMm,
  baseMm: [],
  ...(note ? { note } : {}),
});
const tapered = (rimMm: number, baseMm: number | undefined): Measures => ({
  rimMm: [rimMm],
  baseMm: baseMm === undefined || baseMm === rimMm ? [] : [baseMm],
});

function measures(shape: Shape, { sizeNotes }: Words): Measures {
  switch (shape.kind) {
    case 'round':
      return tapered(shape.acrossMm, shape.baseAcrossMm);
    case 'square':
      return tapered(shape.sideMm, shape.baseSideMm);
    case 'loaf':
      return { rimMm: [shape.lengthMm, shape.widthMm], baseMm: [shape.baseLengthMm, shape.baseWidthMm] };
    case 'rectangle':
    case 'oval':
      return asMeasured([shape.lengthMm, shape.widthMm]);
    case 'long-octagon':
      return { ...asMeasured([shape.lengthMm, shape.widthMm]), slantMm: shape.slantMm };
    case 'hexagon':
    case 'octagon':
      return asMeasured([shape.acrossMm], sizeNotes[shape.measured]);
    case 'heart':
      return asMeasured([shape.acrossMm], shape.measured === 'point' ? sizeNotes.point : sizeNotes.across);
    case 'petal':
    case 'dome':
      return asMeasured([shape.acrossMm]);
    case 'ring':
      return { ...tapered(shape.acrossMm, shape.baseAcrossMm), tubeMm: shape.tubeMm };
    case 'outline':
      return asMeasured(shape.boxMm ?? []);
    case 'measured':
      return asMeasured([]);
  }
}

type Format = (lengthMm: number, unit: LengthUnit) => string;

function dimensions(lengthsMm: readonly number[], unit: LengthUnit, format: Format): string {
  return lengthsMm.map((lengthMm) => format(lengthMm, unit)).join(' × ');
}

function notesOf(measured: Measures, tin: Tin, words: Words, format: Format, unit: LengthUnit): string[] {
  const { base, tube, slant, water } = words.sizeNotes;
  const holdsMl = tin.shape.kind === 'measured' ? tin.shape.volumeMl : tin.measuredVolumeMl;
  return [
    ...(measured.note === undefined ? [] : [measured.note]),
    ...(measured.baseMm.length === 0
      ? []
      : [base(`${dimensions(measured.baseMm, tin.unit, format)} ${unit}`)]),
    ...(measured.tubeMm === undefined ? [] : [tube(`${format(measured.tubeMm, tin.unit)} ${unit}`)]),
    ...(measured.slantMm === undefined ? [] : [slant(`${format(measured.slantMm, tin.unit)} ${unit}`)]),
    ...(holdsMl === undefined ? [] : [water(formatNumber(holdsMl, 0))]),
  ];
}

/** '8-petal', otherwise the shape's own word. */
function shapeWord(shape: Shape, words: Words): string {
  return shape.kind === 'petal' ? words.sizeNotes.petals(shape.petals) : words.shapes[shape.kind];
}

/** 'round 6 × 3 in', 'loaf 9 × 5 × 2¾ in, base 8 × 4 in', 'measured 75 mm deep, holds 1,850 mL'. */
export function tinSize(tin: Tin, words: Words): string {
  const measured = measures(tin.shape, words);
  const own = dimensions([...measured.rimMm, tin.depthMm], tin.unit, formatLengthValue);
  const size =
    measured.rimMm.length === 0 ? words.sizeNotes.deep(`${own} ${tin.unit}`) : `${own} ${tin.unit}`;
  const notes = notesOf(measured, tin, words, formatLengthValue, tin.unit);
  return [`${shapeWord(tin.shape, words)} ${size}`, ...notes].join(', ');
}

/** '(15.2 × 7.6 cm)'. */
export function tinOtherSize(tin: Tin, words: Words): string {
  const measured = measures(tin.shape, words);
  const unit = otherUnit(tin.unit);
  const size = `${dimensions([...measured.rimMm, tin.depthMm], tin.unit, formatOtherValue)} ${unit}`;
  return `(${measured.rimMm.length === 0 ? words.sizeNotes.deep(size) : size})`;
}

/** 'Round tin, 6 in and 3 in deep': what a drawing shows. */
export function tinAlt(tin: Tin, words: Words): string {
  const measured = measures(tin.shape, words);
  const word = shapeWord(tin.shape, words);
  const rim =
    measured.rimMm.length === 0
      ? tin.name
      : `${dimensions(measured.rimMm, tin.unit, formatLengthValue)} ${tin.unit}`;
  const depth = `${formatLengthValue(tin.depthMm, tin.unit)} ${tin.unit}`;
  return words.sizeNotes.alt(capitalised(word), rim, depth);
}
