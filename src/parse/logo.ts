/**
 * What do prints draw of a logo's SVG? Its shapes with their colours, as vectors, scaled to one height. A logo with
 * text, pictures, gradients or open lines is left out of prints whole, with a warning, rather than drawn by half.
 */
import { outlinePath } from '../compute/outline/index.ts';
import { LOGO_HEIGHT, type LogoDrawing, type LogoShape, type PenStep } from '../domain/logo.ts';
import type { Problem } from '../domain/problem.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import { shapePaint } from './logo-paint.ts';
import { pathData } from './outline-drawn-shapes.ts';
import { type DrawnElement, readDrawing } from './outline-elements.ts';
import { errorAt } from './outline-place.ts';
import { drawnRings } from './outline-rings.ts';

export interface LogoOutcome {
  drawing: LogoDrawing | null;
  /** Warnings: the site shows the logo all the same. */
  problems: Problem[];
}

interface View {
  x: number;
  y: number;
  width: number;
  height: number;
}

const MOST_HEIGHTS = 1000;
const MOST_UNITS = 1e6;

function viewOf({ attributes, place }: DrawnElement): Result<View> {
  const box = attributes
    .get('viewBox')
    ?.trim()
    .split(/[\s,]+/) ?? [
    '0',
    '0',
    ...['width', 'height'].map((side) => attributes.get(side)?.replace(/px$/, '') ?? ''),
  ];
  const [x = 0, y = 0, width = 0, height = 0] = box.map((part) => (part === '' ? Number.NaN : Number(part)));
  const shift = Math.max(Math.abs(x), Math.abs(y), width) / height;
  // As many heights wide, or away from its corner, no drawing is: a slip of the pen, and NaN fails too.
  if (width > 0 && height > 0 && shift <= MOST_HEIGHTS && height <= MOST_UNITS)
    return succeed({ x, y, width, height });
  const hint = 'Give the svg element a viewBox, as in viewBox="0 0 64 64".';
  return fail(errorAt(place, 'logo-not-drawn', 'it does not say how large it is', hint));
}

function moved(step: PenStep, dx: number, dy: number): PenStep {
  if (step.op === 'close') return step;
  const at = { x: step.x + dx, y: step.y + dy };
  if (step.op !== 'cubic') return { op: step.op, ...at };
  return { op: 'cubic', x1: step.x1 + dx, y1: step.y1 + dy, x2: step.x2 + dx, y2: step.y2 + dy, ...at };
}

const isOpen = (data: string): boolean => (data.match(/m/gi) ?? []).length > (data.match(/z/gi) ?? []).length;

function openLine({ place }: DrawnElement): Result<never> {
  const hint = 'Turn lines into shapes before saving the drawing.';
  return fail(errorAt(place, 'logo-not-drawn', 'it has lines that do not close', hint));
}

function shapeOf(element: DrawnElement, view: View): Result<LogoShape> {
  const scale = LOGO_HEIGHT / view.height;
  const paint = shapePaint(element.paint);
  if (!paint.ok) return fail(...paint.problems.map((problem) => ({ ...problem, ...element.place })));
  const data = pathData(element);
  if (!data.ok) return data;
  if (paint.value.stroke !== null && isOpen(data.value)) return openLine(element);
  const rings = drawnRings(data.value, element, { x: scale, y: scale });
  if (!rings.ok) return rings;
  const steps = outlinePath({ rings: rings.value }).map((step) =>
    moved(step, -view.x * scale, -view.y * scale),
  );
  return succeed({ ...paint.value, steps, strokeWidth: paint.value.strokeWidth * scale });
}

/** Drawings are read as outlines of tins are; their problems then speak of a logo. */
function asWarning(problem: Problem): Problem {
  const reason = problem.message.replace(/^An outline/, 'a printed logo');
  const message = `Prints leave the logo out: ${reason.charAt(0).toLowerCase()}${reason.slice(1)}`;
  return { ...problem, code: 'logo-not-drawn', severity: 'warning', message };
}

function drawn(text: string, file: string): Result<LogoDrawing> {
  const { root, shapes, problems } = readDrawing(text, file);
  if (root === null || problems.length > 0) return fail(...problems);
  const view = viewOf(root);
  if (!view.ok) return view;
  const results = shapes.map((shape) => shapeOf(shape, view.value));
  const wrong = results.flatMap((result) => (result.ok ? [] : result.problems));
  if (wrong.length > 0) return fail(...wrong);
  const sound = results.flatMap((result) => (result.ok ? [result.value] : []));
  return succeed({ width: (view.value.width * LOGO_HEIGHT) / view.value.height, shapes: sound });
}

/** The logo's shapes, or one warning that says why there are none. */
export function parseLogoSvg(text: string, file: string): LogoOutcome {
  const logo = drawn(text, file);
  if (logo.ok) return { drawing: logo.value, problems: [] };
  return { drawing: null, problems: logo.problems.slice(0, 1).map(asWarning) };
}
