/** From the tin to the plan of its cake, bare and with a coat: what every amount of filling and coating rests on. */
import { grownPlan } from '../compute/finishes/grown-plan.ts';
import { cornerFactor, offsetAreaMm2 } from '../compute/finishes/offset-area.ts';
import type { CakePlan } from '../compute/finishes/plan.ts';
import type { Shape } from '../domain/shape.ts';
import type { Figure } from './figure.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { computed, given } from './working-numbers.ts';

export const areaFigure = (mm2: number): Figure => computed(mm2, 'mm2');
export const lengthFigure = (mm: number): Figure => computed(mm, 'mm');
const mm = (length: number): Figure => given(length, 'mm');

interface PlanSums {
  inputs: FinishingParts['inputs'];
  area: string;
  wall: string;
}

/** Sums for shapes whose area and wall anybody can work out; null for the others. */
function planSums(shape: Shape): PlanSums | null {
  if (shape.kind === 'round' || shape.kind === 'dome') {
    const across = mm(shape.acrossMm);
    return {
      inputs: [['across', across]],
      area: `π × ${across.text}^2 ÷ 4`,
      wall: `π × ${across.text}`,
    };
  }
  if (shape.kind === 'square') {
    const side = mm(shape.sideMm);
    return { inputs: [['across', side]], area: `${side.text}^2`, wall: `4 × ${side.text}` };
  }
  if (shape.kind !== 'rectangle' && shape.kind !== 'loaf') return null;
  const [length, width] = [mm(shape.lengthMm), mm(shape.widthMm)];
  return {
    inputs: [
      ['length', length],
      ['width', width],
    ],
    area: `${length.text} × ${width.text}`,
    wall: `2 × (${length.text} + ${width.text})`,
  };
}

/** Area and wall of the bare cake. */
export function planSteps(shape: Shape, plan: CakePlan): FinishingParts[] {
  const sums = planSums(shape);
  const [area, wall] = [areaFigure(plan.areaMm2), lengthFigure(plan.perimeterMm)];
  return [
    { kind: 'area', inputs: sums?.inputs ?? [], operation: sums?.area ?? area.text, output: ['area', area] },
    { kind: 'wall', inputs: sums?.inputs ?? [], operation: sums?.wall ?? wall.text, output: ['wall', wall] },
  ];
}

/** A measure of the coated plan, and how it came about. */
export interface Coated {
  measure: Figure;
  steps: FinishingParts[];
}

/** The plan grown by a coat: its area, and how that came about. */
export function coatedArea(
  plan: CakePlan,
  thicknessMm: number,
  corners: 'rounded' | 'sharp',
  of: string,
): Coated {
  const area = areaFigure(offsetAreaMm2(plan, thicknessMm, corners));
  const about = corners === 'sharp' ? `${thicknessMm}-sharp` : `${thicknessMm}`;
  const output: FinishingParts['output'] = ['grown-area', area];
  if (!plan.convex) {
    return {
      measure: area,
      steps: [{ kind: 'grown-area-drawn', about, of, inputs: [], operation: area.text, output }],
    };
  }
  const [bare, wall, thick] = [areaFigure(plan.areaMm2), lengthFigure(plan.perimeterMm), mm(thicknessMm)];
  const factor = computed(cornerFactor(plan, corners), 'ratio');
  const inputs: FinishingParts['inputs'] = [
    ['area', bare],
    ['wall', wall],
    ['thickness', thick],
  ];
  const sum = (corner: string): string =>
    `${bare.text} + ${wall.text} × ${thick.text} + ${corner} × ${thick.text}^2`;
  const step: FinishingParts =
    corners === 'rounded'
      ? { kind: 'grown-area', about, of, inputs, operation: sum('π'), output }
      : {
          kind: 'grown-area-sharp',
          about,
          of,
          inputs: [...inputs, ['corners', factor]],
          operation: sum(factor.text),
          output,
        };
  return { measure: area, steps: [step] };
}

/** The wall once a coat is on, and how that came about. */
export function coatedWall(plan: CakePlan, thicknessMm: number, of: string): Coated {
  const grown = lengthFigure(grownPlan(plan, thicknessMm).perimeterMm);
  const about = `${thicknessMm}`;
  const output: FinishingParts['output'] = ['grown-wall', grown];
  if (!plan.convex) {
    return {
      measure: grown,
      steps: [{ kind: 'grown-wall-drawn', about, of, inputs: [], operation: grown.text, output }],
    };
  }
  const [wall, thick] = [lengthFigure(plan.perimeterMm), mm(thicknessMm)];
  const inputs: FinishingParts['inputs'] = [
    ['wall', wall],
    ['thickness', thick],
  ];
  return {
    measure: grown,
    steps: [
      { kind: 'grown-wall', about, of, inputs, operation: `${wall.text} + 2 × π × ${thick.text}`, output },
    ],
  };
}
