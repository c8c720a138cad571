/**
 * An outline as pen strokes for a page: y runs DOWN, as on paper and in SVG, so that a heart stands on its
 * point without further turning. Arcs become cubics within 0.001 mm: with handles of 4/3·tan(θ/4) a quarter
 * circle is out by 2.73e-4 of its radius, and the error falls with the sixth power of the angle.
 */
import type { Arc, Outline, Point, Ring } from '../../domain/outline.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { pointOnArc } from './arc.ts';
import { type Step, stepsOf } from './walk.ts';

/** The same shape as a sheet's path steps, so that prints can draw it as it is. */
export type OutlineStep =
  | { op: 'move'; x: number; y: number }
  | { op: 'line'; x: number; y: number }
  | { op: 'cubic'; x1: number; y1: number; x2: number; y2: number; x: number; y: number }
  | { op: 'close' };

const QUARTER_ERROR = 2.73e-4;
const ALLOWED_MM = 1e-3;

const down = (y: number): number => quantiseMm(-y);
const across = (x: number): number => quantiseMm(x);

function cubicStep(c1: Point, c2: Point, to: Point): OutlineStep {
  return {
    op: 'cubic',
    x1: across(c1.x),
    y1: down(c1.y),
    x2: across(c2.x),
    y2: down(c2.y),
    x: across(to.x),
    y: down(to.y),
  };
}

/** Direction and length of the handle at a parameter angle. */
function handle(arc: Arc, angle: number, reach: number): Point {
  const x = -arc.rx * Math.sin(angle) * reach;
  const y = arc.ry * Math.cos(angle) * reach;
  const cos = Math.cos(arc.rotation);
  const sin = Math.sin(arc.rotation);
  return { x: x * cos - y * sin, y: x * sin + y * cos };
}

function arcSteps(arc: Arc): OutlineStep[] {
  const radius = Math.max(arc.rx, arc.ry);
  const widest = (Math.PI / 2) * Math.min(1, (ALLOWED_MM / 2 / (QUARTER_ERROR * radius)) ** (1 / 6));
  const pieces = Math.max(1, Math.ceil(Math.abs(arc.sweep) / widest));
  const turn = arc.sweep / pieces;
  const reach = (4 / 3) * Math.tan(turn / 4);
  return Array.from({ length: pieces }, (_, index) => {
    const angle = arc.startAngle + turn * index;
    const next = angle + turn;
    const from = pointOnArc(arc, angle);
    const to = index === pieces - 1 ? arc.to : pointOnArc(arc, next);
    const out = handle(arc, angle, reach);
    const back = handle(arc, next, reach);
    return cubicStep({ x: from.x + out.x, y: from.y + out.y }, { x: to.x - back.x, y: to.y - back.y }, to);
  });
}

function penSteps({ segment }: Step): OutlineStep[] {
  if (segment.kind === 'arc') return arcSteps(segment);
  if (segment.kind === 'cubic') return [cubicStep(segment.c1, segment.c2, segment.to)];
  return [{ op: 'line', x: across(segment.to.x), y: down(segment.to.y) }];
}

function ringSteps(ring: Ring): OutlineStep[] {
  const move: OutlineStep = { op: 'move', x: across(ring.start.x), y: down(ring.start.y) };
  return [move, ...stepsOf(ring).flatMap(penSteps), { op: 'close' }];
}

/** Pen strokes of every ring, mm, y down, to 0.001 mm; fill them by the even-odd rule. */
export function outlinePath(outline: Outline): OutlineStep[] {
  return outline.rings.flatMap(ringSteps);
}

function written(step: OutlineStep): string {
  if (step.op === 'close') return 'Z';
  if (step.op === 'cubic') return `C${step.x1} ${step.y1} ${step.x2} ${step.y2} ${step.x} ${step.y}`;
  return `${step.op === 'move' ? 'M' : 'L'}${step.x} ${step.y}`;
}

/** The `d` of an SVG path, mm, y down, at most three decimals; use fill-rule="evenodd". */
export function outlineSvgPath(outline: Outline): string {
  return outlinePath(outline).map(written).join('');
}
