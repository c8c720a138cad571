/** Pen strokes as single curves: turned, flattened, and cut at the edges of a window. Lengths in mm, y down. */
import type { PathStep } from '../sheet/surface.ts';

export interface Spot {
  x: number;
  y: number;
}

/** A line has its handles on its ends' third points, so that one rule serves both. */
export interface Curve {
  from: Spot;
  c1: Spot;
  c2: Spot;
  to: Spot;
  straight: boolean;
}

export interface Window {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
}

const mix = (a: Spot, b: Spot, t: number): Spot => ({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });

function straight(from: Spot, to: Spot): Curve {
  return { from, c1: mix(from, to, 1 / 3), c2: mix(from, to, 2 / 3), to, straight: true };
}

/** Every stroke of a path, closing lines included; strokes without length are left out. */
export function curvesOf(steps: readonly PathStep[]): Curve[] {
  const curves: Curve[] = [];
  let start: Spot = { x: 0, y: 0 };
  let at: Spot = start;
  for (const step of steps) {
    if (step.op === 'move') {
      start = { x: step.x, y: step.y };
      at = start;
      continue;
    }
    const to = step.op === 'close' ? start : { x: step.x, y: step.y };
    if (step.op === 'cubic') {
      const c1 = { x: step.x1, y: step.y1 };
      curves.push({ from: at, c1, c2: { x: step.x2, y: step.y2 }, to, straight: false });
    } else if (to.x !== at.x || to.y !== at.y) curves.push(straight(at, to));
    at = to;
  }
  return curves;
}

/** A quarter turn clockwise on paper: the start of a strip comes to the top, its foot to the left. */
export function turnedSteps(steps: readonly PathStep[]): PathStep[] {
  return steps.map((step): PathStep => {
    if (step.op === 'close') return step;
    const { op, x, y } = step;
    if (op !== 'cubic') return { op, x: -y, y: x };
    return { op, x1: -step.y1, y1: step.x1, x2: -step.y2, y2: step.x2, x: -y, y: x };
  });
}

export function spotOn({ from, c1, c2, to, straight: isLine }: Curve, t: number): Spot {
  if (isLine) return mix(from, to, t);
  const a = mix(from, c1, t);
  const b = mix(c1, c2, t);
  const c = mix(c2, to, t);
  return mix(mix(a, b, t), mix(b, c, t), t);
}

/** The stretch between two parameters, exactly, by de Casteljau's construction (from memory). */
function stretch(curve: Curve, t0: number, t1: number): Curve {
  if (t0 === 0 && t1 === 1) return curve;
  const { from, c1, c2, to } = curve;
  if (curve.straight) return straight(spotOn(curve, t0), spotOn(curve, t1));
  const blossom = (r: number, s: number, t: number): Spot => {
    const a = mix(mix(from, c1, r), mix(c1, c2, r), s);
    const b = mix(mix(c1, c2, r), mix(c2, to, r), s);
    return mix(a, b, t);
  };
  return {
    from: spotOn(curve, t0),
    c1: blossom(t0, t0, t1),
    c2: blossom(t0, t1, t1),
    to: spotOn(curve, t1),
    straight: false,
  };
}

const LOOKS = 24;
const HALVINGS = 40;

/** Parameters at which a coordinate passes a value, by looking at 24 stretches and halving. */
function crossings(coordinate: (t: number) => number, value: number, looks: number): number[] {
  const found: number[] = [];
  for (let k = 0; k < looks; k += 1) {
    let low = k / looks;
    let high = (k + 1) / looks;
    const below = coordinate(low) < value;
    if (below === coordinate(high) < value) continue;
    for (let n = 0; n < HALVINGS; n += 1) {
      const middle = (low + high) / 2;
      if (coordinate(middle) < value === below) low = middle;
      else high = middle;
    }
    found.push((low + high) / 2);
  }
  return found;
}

const SLACK_MM = 1e-6;

function holds({ minX, minY, maxX, maxY }: Window, { x, y }: Spot): boolean {
  return x >= minX - SLACK_MM && x <= maxX + SLACK_MM && y >= minY - SLACK_MM && y <= maxY + SLACK_MM;
}

function insideCurves(curve: Curve, window: Window): Curve[] {
  if ([curve.from, curve.c1, curve.c2, curve.to].every((spot) => holds(window, spot))) return [curve];
  const looks = curve.straight ? 1 : LOOKS;
  const x = (t: number) => spotOn(curve, t).x;
  const y = (t: number) => spotOn(curve, t).y;
  const at = [
    ...[window.minX, window.maxX].flatMap((value) => crossings(x, value, looks)),
    ...[window.minY, window.maxY].flatMap((value) => crossings(y, value, looks)),
  ].sort((a, b) => a - b);
  const ends = [0, ...at, 1];
  return ends.slice(1).flatMap((end, index) => {
    const begin = ends[index] ?? 0;
    const middle = spotOn(curve, (begin + end) / 2);
    return end - begin > 1e-9 && holds(window, middle) ? [stretch(curve, begin, end)] : [];
  });
}

/** What lies in the window, edges included. */
export function clippedCurves(curves: readonly Curve[], window: Window): Curve[] {
  return curves.flatMap((curve) => insideCurves(curve, window));
}

/** Strokes for the surface, moved by (dx, dy); a new move wherever the pen is lifted. */
export function stepsOfCurves(curves: readonly Curve[], dx: number, dy: number): PathStep[] {
  let at: Spot | null = null;
  return curves.flatMap((curve): PathStep[] => {
    const { from, c1, c2, to } = curve;
    const lifted = at === null || Math.hypot(at.x - from.x, at.y - from.y) > SLACK_MM;
    at = to;
    const stroke: PathStep = curve.straight
      ? { op: 'line', x: to.x + dx, y: to.y + dy }
      : {
          op: 'cubic',
          x1: c1.x + dx,
          y1: c1.y + dy,
          x2: c2.x + dx,
          y2: c2.y + dy,
          x: to.x + dx,
          y: to.y + dy,
        };
    return lifted ? [{ op: 'move', x: from.x + dx, y: from.y + dy }, stroke] : [stroke];
  });
}

/** Points along a curve at most so far apart, its end included and its start not. */
export function spotsAlong(curve: Curve, apartMm: number): Spot[] {
  const { from, c1, c2, to } = curve;
  const reach =
    Math.hypot(c1.x - from.x, c1.y - from.y) +
    Math.hypot(c2.x - c1.x, c2.y - c1.y) +
    Math.hypot(to.x - c2.x, to.y - c2.y);
  const pieces = Math.max(1, Math.ceil(reach / apartMm));
  return Array.from({ length: pieces }, (_, index) => spotOn(curve, (index + 1) / pieces));
}
