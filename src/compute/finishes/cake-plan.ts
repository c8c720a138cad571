/** The plan that finishing works on, from the very outline that the tin is drawn and measured by. */
import type { Outline, Point } from '../../domain/outline.ts';
import type { TinForm } from '../../domain/tin.ts';
import { flattenOutline } from '../outline/index.ts';
import { perimeterMm, planAreaMm2, tinBoundsMm, tinOutline } from '../shapes/index.ts';
import type { CakePlan } from './plan.ts';

const FLATTEN_MM = 0.005;
/** Below this a joint between two flattened chords is a curve, not a corner: 8°. */
const CORNER_RAD = (8 * Math.PI) / 180;

/** Turn at every vertex of a closed polygon, radians, positive to the left. */
function turns(ring: Point[]): number[] {
  return ring.map((corner, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] ?? corner;
    const after = ring[(index + 1) % ring.length] ?? corner;
    const inX = corner.x - before.x;
    const inY = corner.y - before.y;
    const outX = after.x - corner.x;
    const outY = after.y - corner.y;
    return Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY);
  });
}

interface Corners {
  convex: boolean;
  corners: number[];
}

function cornersOf(rings: Point[][]): Corners {
  const [only] = rings;
  if (rings.length !== 1 || only === undefined) return { convex: false, corners: [] };
  const all = turns(only);
  const way = Math.sign(all.reduce((sum, turn) => sum + turn, 0));
  return {
    convex: all.every((turn) => turn * way > -1e-6),
    corners: all.map((turn) => turn * way).filter((turn) => turn > CORNER_RAD),
  };
}

function aroundMm(rings: Point[][]): number {
  return 2 * Math.max(...rings.flat().map(({ x, y }) => Math.hypot(x, y)));
}

function distinct(ring: Point[]): Point[] {
  return ring.filter((point, index) => {
    const next = ring[(index + 1) % ring.length] ?? point;
    return Math.hypot(next.x - point.x, next.y - point.y) > 1e-6;
  });
}

/** Outline → flattened rings without repeated points. */
function ringsOf(outline: Outline): Point[][] {
  return flattenOutline(outline, FLATTEN_MM).map(distinct);
}

/** A tin's plan is asked for with every finish and every change of a planned cake: it is worked out once a tin. */
const known = new WeakMap<TinForm, CakePlan | null>();

/**
 * The plan of the cake from a tin, mm and mm²; null for a tin known only by the water it holds.
 * The tin's inside size is taken as the cake's: the few mm a sponge shrinks are filled by its coat.
 */
export function cakePlan(form: TinForm): CakePlan | null {
  const found = known.get(form);
  if (found !== undefined) return found;
  const plan = planOf(form);
  known.set(form, plan);
  return plan;
}

function planOf(form: TinForm): CakePlan | null {
  const outline = tinOutline(form);
  const areaMm2 = planAreaMm2(form);
  const wallMm = perimeterMm(form);
  const bounds = tinBoundsMm(form);
  if (outline === null || areaMm2 === null || wallMm === null || bounds === null) return null;
  const rings = ringsOf(outline);
  return { areaMm2, perimeterMm: wallMm, ...cornersOf(rings), ...bounds, aroundMm: aroundMm(rings), rings };
}
