/** The house's logo on a sheet, drawn as vectors; nothing where the style has none. */
import { LOGO_HEIGHT, type LogoShape, type PenStep } from '../../domain/logo.ts';
import type { SheetContext } from './sheet-context.ts';
import type { Paint, PathStep, Surface } from './surface.ts';
import { MM_PER_PT } from './units.ts';

/** Width at a height; 0 without a logo. */
export const logoWidthMm = ({ logo }: SheetContext, heightMm: number): number =>
  logo === null ? 0 : (logo.width * heightMm) / LOGO_HEIGHT;

function placed(steps: readonly PenStep[], scale: number, xMm: number, yMm: number): PathStep[] {
  const x = (value: number): number => xMm + value * scale;
  const y = (value: number): number => yMm + value * scale;
  return steps.map((step): PathStep => {
    if (step.op === 'close') return step;
    const at = { x: x(step.x), y: y(step.y) };
    if (step.op !== 'cubic') return { op: step.op, ...at };
    return { op: 'cubic', x1: x(step.x1), y1: y(step.y1), x2: x(step.x2), y2: y(step.y2), ...at };
  });
}

function paintOf({ fill, stroke, strokeWidth, evenOdd }: LogoShape, scale: number, ink: string): Paint {
  const colour = (name: string): string => (name === 'ink' ? ink : name);
  return {
    ...(fill === null ? {} : { fill: colour(fill), evenOdd }),
    ...(stroke === null ? {} : { stroke: colour(stroke), lineWidthPt: (strokeWidth * scale) / MM_PER_PT }),
  };
}

/** With its top left corner at (x, y). */
export function drawLogo(
  surface: Surface,
  { logo, inks }: SheetContext,
  xMm: number,
  yMm: number,
  heightMm: number,
): void {
  if (logo === null) return;
  const scale = heightMm / LOGO_HEIGHT;
  for (const shape of logo.shapes) {
    const paint = paintOf(shape, scale, inks.ink);
    if (paint.fill || paint.stroke) surface.path(placed(shape.steps, scale, xMm, yMm), paint);
  }
}
