/**
 * What simple solid stands for a cake in its tin? Heat reaches the middle from all sides at once, and θ of a
 * short cylinder or a block is the product of its walls' (Incropera & DeWitt ch. 5, from memory). A round is a
 * cylinder × a wall; a square or rectangle three walls; a ring two walls (the gap and the height; untested);
 * other plans a cylinder of R = √((2A/P)·√(A/π)), or their bounding block when longer than 1.5 × their width.
 * Tapered walls are evened out: the mean area over the finished height.
 */
import type { Shape } from '../../domain/shape.ts';
import type { TinForm } from '../../domain/tin.ts';
import { perimeterMm, planAreaMm2, tinBoundsMm, volumeToHeightMl } from '../shapes/index.ts';

/** One direction of heat: a wall of two half-thicknesses or a cylinder of a radius, mm. */
export interface Side {
  geometry: 'wall' | 'cylinder';
  halfMm: number;
}

export interface BakeSolid {
  sides: Side[];
  /** Across, mm: 4 × area ÷ perimeter; a round's diameter, a square's side, a ring's two gaps. */
  acrossMm: number;
  heightMm: number;
}

const ELONGATED = 1.5;
const wall = (thicknessMm: number): Side => ({ geometry: 'wall', halfMm: thicknessMm / 2 });
const cylinder = (radiusMm: number): Side => ({ geometry: 'cylinder', halfMm: radiusMm });

/** The solid for a tin baked to a finished height in mm; a RangeError unless the height is more than 0. */
export function bakeSolid(form: TinForm, heightMm: number): BakeSolid {
  if (!(heightMm > 0)) throw new RangeError(`A finished height is more than 0 mm, not ${heightMm}.`);
  const meanMm2 = (volumeToHeightMl(form, heightMm) * 1000) / heightMm;
  const areaMm2 = planAreaMm2(form) ?? meanMm2;
  const wallsMm = perimeterMm(form) ?? 2 * Math.sqrt(Math.PI * areaMm2);
  const taper = Math.sqrt(meanMm2 / areaMm2);
  const sides = planSides(form, { areaMm2, wallsMm, taper });
  return { sides: [...sides, wall(heightMm)], acrossMm: ((4 * areaMm2) / wallsMm) * taper, heightMm };
}

interface Plan {
  areaMm2: number;
  wallsMm: number;
  /** Mean width over width at the rim. */
  taper: number;
}

function planSides(form: TinForm, plan: Plan): Side[] {
  const { shape } = form;
  const { taper } = plan;
  if (shape.kind === 'round') return [cylinder((shape.acrossMm / 2) * taper)];
  if (shape.kind === 'square') return [wall(shape.sideMm * taper), wall(shape.sideMm * taper)];
  if (shape.kind === 'ring') return [wall(((shape.acrossMm - shape.tubeMm) / 2) * taper)];
  const block = elongatedBlock(form, shape);
  if (block) return block.map((lengthMm) => wall(lengthMm * taper));
  return [cylinder(equivalentRadiusMm(plan.areaMm2, plan.wallsMm) * taper)];
}

/** Length and width of a plan that bakes like a block, mm; null for one that bakes like a round. */
function elongatedBlock(form: TinForm, { kind }: Shape): [number, number] | null {
  const bounds = tinBoundsMm(form);
  if (!bounds) return null;
  const { widthMm, heightMm } = bounds;
  const long = Math.max(widthMm, heightMm) > ELONGATED * Math.min(widthMm, heightMm);
  return long || kind === 'rectangle' || kind === 'loaf' ? [widthMm, heightMm] : null;
}

/** Radius of the round that bakes like a plan of this area and wall length, mm. */
function equivalentRadiusMm(areaMm2: number, wallsMm: number): number {
  return Math.sqrt(((2 * areaMm2) / wallsMm) * Math.sqrt(areaMm2 / Math.PI));
}
