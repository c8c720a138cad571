/**
 * The paper for the walls. Upright: strips as long as the wall plus the overlap, as high as the tin plus the
 * collar. Sloping round walls unroll to part of a ring: with rim radius R, base radius r and slant
 * s = √(d² + (R − r)²), the radii are s·R/(R − r) and s·r/(R − r), the angle 2π(R − r)/s. Sloping flat sides
 * are trapezia as high as their own slant.
 */
import type { Ring } from '../../domain/outline.ts';
import { quantiseMm, quantiseRatio } from '../../domain/quantise.ts';
import { circularArc } from '../outline/arc.ts';
import { polygonOutline } from '../outline/rings.ts';
import { settleOutline } from '../outline/settle.ts';
import { centreOutline } from '../outline/transform.ts';
import type { LinedWall, LiningPiece, LiningSettings } from './lining-piece.ts';

/** A strip for an upright wall. */
export function strip(
  wall: LinedWall,
  wallMm: number,
  depthMm: number,
  settings: LiningSettings,
): LiningPiece {
  const lengthMm = quantiseMm(wallMm + settings.overlapMm);
  return { kind: 'strip', wall, count: 1, lengthMm, heightMm: quantiseMm(depthMm + settings.collarMm) };
}

/** Part of a ring about the origin, opening downwards, its ends straight. */
function sectorRing(innerMm: number, outerMm: number, angleRad: number): Ring {
  const origin = { x: 0, y: 0 };
  const first = Math.PI / 2 - angleRad / 2;
  const outer = circularArc(origin, outerMm, first, angleRad);
  const inner = circularArc(origin, innerMm, first + angleRad, -angleRad);
  const start = { x: outerMm * Math.cos(first), y: outerMm * Math.sin(first) };
  const inwards = { x: innerMm * Math.cos(first + angleRad), y: innerMm * Math.sin(first + angleRad) };
  return { start, segments: [outer, { kind: 'line', to: inwards }, inner, { kind: 'line', to: start }] };
}

/**
 * Paper for a round wall: a strip when it stands upright, otherwise part of a ring. The ends lap by the overlap
 * at the rim. A wall that narrows upwards (a tube) gets no collar: it would close in on itself.
 */
export function roundWall(
  wall: LinedWall,
  baseAcrossMm: number,
  rimAcrossMm: number,
  depthMm: number,
  settings: LiningSettings,
): LiningPiece {
  if (baseAcrossMm === rimAcrossMm) return strip(wall, Math.PI * rimAcrossMm, depthMm, settings);
  const wide = Math.max(baseAcrossMm, rimAcrossMm) / 2;
  const narrow = Math.min(baseAcrossMm, rimAcrossMm) / 2;
  const slant = Math.hypot(depthMm, wide - narrow);
  const opensUpwards = rimAcrossMm > baseAcrossMm;
  const rimRadiusMm = (slant * (opensUpwards ? wide : narrow)) / (wide - narrow);
  const angleRad = (2 * Math.PI * (wide - narrow)) / slant + settings.overlapMm / rimRadiusMm;
  const innerRadiusMm = (slant * narrow) / (wide - narrow);
  const outerRadiusMm = (slant * wide) / (wide - narrow) + (opensUpwards ? settings.collarMm : 0);
  const ring = sectorRing(innerRadiusMm, outerRadiusMm, angleRad);
  return {
    kind: 'sector',
    wall,
    count: 1,
    innerRadiusMm: quantiseMm(innerRadiusMm),
    outerRadiusMm: quantiseMm(outerRadiusMm),
    angleRad: quantiseRatio(angleRad),
    outline: settleOutline(centreOutline({ rings: [ring] })),
  };
}

/** Paper for two equal sloping flat sides that lean out by so much; the slope goes on through the collar. */
export function slopingPanels(
  footMm: number,
  rimMm: number,
  leanMm: number,
  depthMm: number,
  collarMm: number,
): LiningPiece {
  const slant = Math.hypot(depthMm, leanMm);
  const heightMm = slant + collarMm;
  const headMm = footMm + ((rimMm - footMm) * heightMm) / slant;
  const half = heightMm / 2;
  const corners = [
    { x: -footMm / 2, y: -half },
    { x: footMm / 2, y: -half },
    { x: headMm / 2, y: half },
    { x: -headMm / 2, y: half },
  ];
  return {
    kind: 'panel',
    count: 2,
    footMm: quantiseMm(footMm),
    headMm: quantiseMm(headMm),
    heightMm: quantiseMm(heightMm),
    outline: settleOutline(polygonOutline(corners)),
  };
}
