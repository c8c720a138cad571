/** Pen steps as the `d` of an SVG path, to a tenth of a millimetre. */
import type { OutlineStep } from '../compute/outline/index.ts';
import { tenth } from './tin-profile.ts';

function stepText(step: OutlineStep): string {
  if (step.op === 'close') return 'Z';
  const at = `${tenth(step.x)} ${tenth(step.y)}`;
  if (step.op !== 'cubic') return `${step.op === 'move' ? 'M' : 'L'}${at}`;
  return `C${tenth(step.x1)} ${tenth(step.y1)} ${tenth(step.x2)} ${tenth(step.y2)} ${at}`;
}

/** 'M0 0L10 0Z'. */
export const outlineStepsPath = (steps: readonly OutlineStep[]): string => steps.map(stepText).join('');
