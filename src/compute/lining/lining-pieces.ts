/**
 * Which papers line a tin? A base and its wall: one strip for upright walls, part of a ring for a sloping round
 * one, four panels for a sloping rectangle, a second strip for a tube or a hole. A dome is greased and floured:
 * flat paper cannot follow it (common practice, no source).
 */
import type { Outline } from '../../domain/outline.ts';
import type { RingTin, Shape } from '../../domain/shape.ts';
import type { TinForm } from '../../domain/tin.ts';
import { ringDepths } from '../outline/nesting.ts';
import { ringLengthMm } from '../outline/perimeter.ts';
import { ruleFor } from '../shapes/shape-rules.ts';
import { basePaper } from './base-paper.ts';
import type { LiningPiece, LiningSettings } from './lining-piece.ts';
import { roundWall, slopingPanels, strip } from './wall-paper.ts';

export type { LiningPiece, LiningSettings } from './lining-piece.ts';

function uprightWalls(outline: Outline | null, depthMm: number, settings: LiningSettings): LiningPiece[] {
  if (outline === null) return [];
  const depths = ringDepths(outline);
  return outline.rings.map((ring, index) => {
    const wall = (depths[index] ?? 0) % 2 === 0 ? 'side' : 'tube';
    return strip(wall, ringLengthMm(ring), depthMm, settings);
  });
}

interface Taper {
  length: [foot: number, rim: number];
  width: [foot: number, rim: number];
}

function oblongWalls({ length, width }: Taper, depthMm: number, { collarMm }: LiningSettings): LiningPiece[] {
  const outwards = ([foot, rim]: [number, number]) => (rim - foot) / 2;
  return [
    slopingPanels(...length, outwards(width), depthMm, collarMm),
    slopingPanels(...width, outwards(length), depthMm, collarMm),
  ];
}

function ringWalls(ring: RingTin, depthMm: number, settings: LiningSettings): LiningPiece[] {
  const { acrossMm, tubeMm, baseAcrossMm = acrossMm, baseTubeMm = tubeMm } = ring;
  return [
    roundWall('side', baseAcrossMm, acrossMm, depthMm, settings),
    roundWall('tube', baseTubeMm, tubeMm, depthMm, settings),
  ];
}

function wallPapers(shape: Shape, depthMm: number, settings: LiningSettings): LiningPiece[] {
  if (shape.kind === 'ring') return ringWalls(shape, depthMm, settings);
  if (shape.kind === 'round') {
    return [roundWall('side', shape.baseAcrossMm ?? shape.acrossMm, shape.acrossMm, depthMm, settings)];
  }
  const rule = ruleFor(shape);
  if (rule.baseOutline(shape) === null) return uprightWalls(rule.outline(shape), depthMm, settings);
  if (shape.kind === 'loaf') {
    const { lengthMm, widthMm, baseLengthMm, baseWidthMm } = shape;
    return oblongWalls(
      { length: [baseLengthMm, lengthMm], width: [baseWidthMm, widthMm] },
      depthMm,
      settings,
    );
  }
  if (shape.kind === 'square' && shape.baseSideMm !== undefined) {
    const side: [number, number] = [shape.baseSideMm, shape.sideMm];
    return oblongWalls({ length: side, width: side }, depthMm, settings);
  }
  return [];
}

/** The papers to cut for one tin; negative settings are a RangeError. */
export function liningPieces({ shape, depthMm }: TinForm, settings: LiningSettings): LiningPiece[] {
  for (const [name, mm] of Object.entries(settings)) {
    if (!(mm >= 0)) throw new RangeError(`${name} cannot be ${mm}.`);
  }
  if (shape.kind === 'dome') return [{ kind: 'grease-and-flour', reason: 'curved-wall' }];
  if (shape.kind === 'measured') return [{ kind: 'grease-and-flour', reason: 'unknown-shape' }];
  return [basePaper(shape, settings.clearanceMm), ...wallPapers(shape, depthMm, settings)];
}
