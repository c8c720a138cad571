/** How much of a finish one use of it takes on one cake: the volume, and the sheet to roll, step by step. */

import { fillingAmounts } from '../compute/finishes/filling.ts';
import type { FinishAmount, FinishUseName } from '../compute/finishes/finishing.ts';
import { grownPlan } from '../compute/finishes/grown-plan.ts';
import { isPoured } from '../compute/finishes/poured.ts';
import { rolledSheet } from '../compute/finishes/rolled.ts';
import type { Finish } from '../domain/finish.ts';
import type { Figure } from './figure.ts';
import { at, type CakeAtWork, ml, mm, type UseWorking } from './working-finishing-cake.ts';
import { coat, domeOf, domeStep, glaze } from './working-finishing-coat.ts';
import { areaFigure, coatedArea, coatedWall, lengthFigure } from './working-finishing-plan.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { given } from './working-numbers.ts';

const joints = ({ settings }: CakeAtWork): Figure => given(Math.max(0, settings.layers - 1), 'count');

function filling(cake: CakeAtWork, thicknessMm: number): UseWorking {
  const { plan } = cake.finishing;
  const { layers, damMm } = cake.settings;
  const [area, wall] = [areaFigure(plan.areaMm2), lengthFigure(plan.perimeterMm)];
  const [count, dam, thick] = [joints(cake), mm(damMm), mm(thicknessMm)];
  const volume = ml(fillingAmounts(plan, layers, thicknessMm, damMm).fillingMl);
  const inside =
    damMm === 0 ? area.text : `max(0, ${area.text} − (${wall.text} × ${dam.text} − π × ${dam.text}^2))`;
  const step: FinishingParts = {
    kind: 'filling-volume',
    about: `${thicknessMm}`,
    of: at(cake, thicknessMm),
    inputs: [
      ['joints', count],
      ['area', area],
      ...(damMm === 0
        ? []
        : ([
            ['wall', wall],
            ['dam', dam],
          ] as FinishingParts['inputs'])),
      ['thickness', thick],
    ],
    operation: `${count.text} × ${inside} × ${thick.text} ÷ 1000`,
    output: ['volume', volume],
  };
  return { onCake: volume, made: volume, steps: [step] };
}

function dam(cake: CakeAtWork): UseWorking {
  const { plan } = cake.finishing;
  const { layers, damMm } = cake.settings;
  const [count, wall, bead] = [joints(cake), lengthFigure(plan.perimeterMm), mm(damMm)];
  const volume = ml(fillingAmounts(plan, layers, 0, damMm).damMl);
  const step: FinishingParts = {
    kind: 'dam-volume',
    inputs: [
      ['joints', count],
      ['wall', wall],
      ['dam', bead],
    ],
    operation: `${count.text} × max(0, ${wall.text} − π × ${bead.text}) × ${bead.text}^2 × π ÷ 4 ÷ 1000`,
    output: ['volume', volume],
  };
  return { onCake: volume, made: volume, steps: [step] };
}

function sheetSteps(cake: CakeAtWork, amount: FinishAmount, trimMm: number, about: string): FinishingParts[] {
  const { plan, cakeHeightMm } = cake.finishing;
  const { undercoatMm } = cake.settings;
  const [height, under, trim] = [mm(cakeHeightMm), mm(undercoatMm), mm(trimMm)];
  const one = (
    kind: 'sheet-round' | 'sheet-wide' | 'sheet-long',
    label: 'around' | 'width' | 'length',
    acrossMm: number,
    sheetMm: number,
  ): FinishingParts => {
    const across = lengthFigure(acrossMm);
    return {
      kind,
      about,
      inputs: [
        [label, across],
        ['height', height],
        ['undercoat', under],
        ['trim', trim],
      ],
      operation: `${across.text} + 2 × ${under.text} + 2 × (${height.text} + ${under.text}) + 2 × ${trim.text}`,
      output: ['sheet', lengthFigure(sheetMm)],
    };
  };
  if (amount.sheet === null) return [];
  const { form, acrossMm, otherAcrossMm } = amount.sheet;
  return form === 'round'
    ? [one('sheet-round', 'around', plan.aroundMm, acrossMm)]
    : [
        one('sheet-wide', 'width', plan.widthMm, acrossMm),
        one('sheet-long', 'length', plan.heightMm, otherAcrossMm),
      ];
}

function rolled(cake: CakeAtWork, amount: FinishAmount, thicknessMm: number, trimMm: number): UseWorking {
  const { plan, cakeHeightMm } = cake.finishing;
  const { undercoatMm } = cake.settings;
  const about = `${thicknessMm}-${trimMm}`;
  const thick = mm(thicknessMm);
  const coated = grownPlan(plan, undercoatMm);
  const solid = rolledSheet(coated, cakeHeightMm + undercoatMm, thicknessMm, trimMm);
  const sizes = sheetSteps(cake, amount, trimMm, about);
  const [wide, long] = sizes.map(({ output }) => output[1]);
  const made = ml(solid.rollMl);
  const area = long === undefined ? `π × ${wide?.text ?? ''}^2 ÷ 4` : `${wide?.text ?? ''} × ${long.text}`;
  const roll: FinishingParts = {
    kind: 'roll-volume',
    about,
    of: at(cake, thicknessMm),
    inputs: [...sizes.map(({ output }): FinishingParts['output'] => output), ['thickness', thick]],
    operation: `${area} × ${thick.text} ÷ 1000`,
    output: ['volume', made],
  };
  const dome = domeOf(cake);
  if (dome) {
    const onDome = domeStep(cake, dome, 'dome-sheet-on-cake', undercoatMm, undercoatMm + thicknessMm);
    return { onCake: onDome.onCake, made, steps: [...sizes, roll, ...onDome.steps] };
  }
  const grown = coatedArea(plan, undercoatMm, 'rounded', at(cake, undercoatMm));
  const wall = coatedWall(plan, undercoatMm, at(cake, undercoatMm));
  const [height, under] = [mm(cakeHeightMm), mm(undercoatMm)];
  const onCake = ml(solid.onCakeMl);
  const stays: FinishingParts = {
    kind: 'sheet-on-cake',
    about,
    of: at(cake, thicknessMm),
    inputs: [
      ['grown-area', grown.measure],
      ['grown-wall', wall.measure],
      ['height', height],
      ['undercoat', under],
      ['thickness', thick],
    ],
    operation: `(${grown.measure.text} + ${wall.measure.text} × (${height.text} + ${under.text})) × ${thick.text} ÷ 1000`,
    output: ['volume', onCake],
  };
  return { onCake, made, steps: [...sizes, roll, ...grown.steps, ...wall.steps, stays] };
}

/** The working of one use of a finish; null where it is not used so. Syrup is weighed, not measured: see `syrupStep`. */
export function useWorking(
  cake: CakeAtWork,
  finish: Finish,
  use: Exclude<FinishUseName, 'brushed'>,
  amount: FinishAmount,
): UseWorking | null {
  const { filling: between, coating, rolled: sheet } = finish.use;
  if (use === 'filling') return between ? filling(cake, between.thicknessMm) : null;
  if (use === 'dam') return dam(cake);
  if (use === 'coating') {
    if (!coating) return null;
    const around = isPoured(finish) ? glaze : coat;
    return around(cake, coating.crumbMm + coating.finalMm, coating.corners, amount.neededMl);
  }
  return sheet ? rolled(cake, amount, sheet.thicknessMm, sheet.trimMm) : null;
}
