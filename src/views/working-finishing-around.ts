/** The working of what stands under and around a finished cake: its outer size, board, box and ribbon. */
import type { Finishing } from '../compute/finishes/finishing.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { FinishingWorkingWords } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import type { Figure } from './figure.ts';
import { coatedWall, lengthFigure } from './working-finishing-plan.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { given } from './working-numbers.ts';

const mm = (length: number): Figure => given(length, 'mm');

function sizeSteps(finishing: Finishing, { undercoatMm }: FinishingSettings): FinishingParts[] {
  const { plan, cakeHeightMm } = finishing;
  const [across, under, height] = [
    lengthFigure(Math.max(plan.widthMm, plan.heightMm)),
    mm(undercoatMm),
    mm(cakeHeightMm),
  ];
  return [
    {
      kind: 'coated-across',
      inputs: [
        ['across', across],
        ['undercoat', under],
      ],
      operation: `${across.text} + 2 × ${under.text}`,
      output: ['coated-across', lengthFigure(finishing.coatedAcrossMm)],
    },
    {
      kind: 'coated-height',
      inputs: [
        ['height', height],
        ['undercoat', under],
      ],
      operation: `${height.text} + ${under.text}`,
      output: ['coated-height', lengthFigure(finishing.coatedHeightMm)],
    },
  ];
}

function boardSteps(finishing: Finishing, settings: FinishingSettings): FinishingParts[] {
  const [across, high] = [lengthFigure(finishing.coatedAcrossMm), lengthFigure(finishing.coatedHeightMm)];
  const [margin, thick, air] = [
    mm(settings.boardMarginMm),
    mm(settings.boardThicknessMm),
    mm(settings.boxHeightClearanceMm),
  ];
  return [
    {
      kind: 'board',
      inputs: [
        ['coated-across', across],
        ['margin', margin],
      ],
      operation: `up((${across.text} + ${margin.text}) ÷ 25.4) × 25.4`,
      output: ['board', lengthFigure(finishing.boardAcrossMm)],
    },
    {
      kind: 'box-height',
      inputs: [
        ['coated-height', high],
        ['thick', thick],
        ['clearance', air],
      ],
      operation: `${high.text} + ${thick.text} + ${air.text}`,
      output: ['box', lengthFigure(finishing.boxHeightMm)],
    },
  ];
}

function ribbonSteps(
  finishing: Finishing,
  settings: FinishingSettings,
  outsideMm: number,
  words: FinishingWorkingWords,
): FinishingParts[] {
  const of = words.at(formatLength(settings.undercoatMm, 'mm'));
  const outside = lengthFigure(outsideMm);
  const before: FinishingParts[] = finishing.plan.convex
    ? coatedWall(finishing.plan, settings.undercoatMm, of).steps
    : [{ kind: 'outside-wall', inputs: [], operation: outside.text, output: ['grown-wall', outside] }];
  const lap = mm(settings.ribbonOverlapMm);
  return [
    ...before,
    {
      kind: 'ribbon',
      inputs: [
        ['grown-wall', outside],
        ['lap', lap],
      ],
      operation: `${outside.text} + ${lap.text}`,
      output: ['ribbon', lengthFigure(finishing.ribbonMm)],
    },
  ];
}

/** Coated size, board, box and ribbon of one cake. */
export function aroundSteps(
  finishing: Finishing,
  settings: FinishingSettings,
  outsideMm: number,
  words: FinishingWorkingWords,
): FinishingParts[] {
  return [
    ...sizeSteps(finishing, settings),
    ...boardSteps(finishing, settings),
    ...ribbonSteps(finishing, settings, outsideMm, words),
  ];
}
