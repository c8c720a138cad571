/** How much of a finish one use of it takes on one cake: the volume, and the sheet to roll, step by step. */
import { domeCoatMl } from '../compute/finishes/coat.ts';
import { fillingAmounts } from '../compute/finishes/filling.ts';
import type { FinishAmount, Finishing, FinishUseName } from '../compute/finishes/finishing.ts';
import { grownPlan } from '../compute/finishes/grown-plan.ts';
import { rolledSheet } from '../compute/finishes/rolled.ts';
import type { Finish } from '../domain/finish.ts';
import type { FinishingSettings } from '../domain/finishing.ts';
import type { Tin } from '../domain/tin.ts';
import type { FinishingWorkingWords } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import type { Figure } from './figure.ts';
import { areaFigure, coatedArea, coatedWall, lengthFigure } from './working-finishing-plan.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { computed, given } from './working-numbers.ts';

export interface CakeAtWork {
  tin: Tin;
  finishing: Finishing;
  settings: FinishingSettings;
  words: FinishingWorkingWords;
}

/** Volumes on the cake and of what is made, and the steps to them. */
export interface UseWorking {
  onCake: Figure;
  /** Of a rolled sheet the whole sheet; else as on the cake. */
  made: Figure;
  steps: FinishingParts[];
}

const mm = (length: number): Figure => given(length, 'mm');
const ml = (volume: number): Figure => computed(volume, 'mL');
const at = ({ words }: CakeAtWork, thicknessMm: number): string => words.at(formatLength(thicknessMm, 'mm'));

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

interface Dome {
  acrossMm: number;
  sphere: Figure;
  steps: FinishingParts[];
}

function domeOf({ tin, finishing }: CakeAtWork): Dome | null {
  if (tin.shape.kind !== 'dome') return null;
  const { acrossMm } = tin.shape;
  const [radius, height] = [mm(acrossMm / 2), mm(finishing.cakeHeightMm)];
  const high = finishing.cakeHeightMm;
  const sphere = lengthFigure((acrossMm ** 2 / 4 + high * high) / (2 * high));
  const step: FinishingParts = {
    kind: 'sphere',
    inputs: [
      ['radius', radius],
      ['height', height],
    ],
    operation: `(${radius.text}^2 + ${height.text}^2) ÷ (2 × ${height.text})`,
    output: ['sphere', sphere],
  };
  return { acrossMm, sphere, steps: [step] };
}

/** A cap grown by a coat: radius and height both by its thickness. */
function capText(sphere: Figure, height: Figure, thickMm: number): string {
  const thick = given(thickMm, 'mm').text;
  const [ball, high] =
    thickMm === 0
      ? [sphere.text, height.text]
      : [`(${sphere.text} + ${thick})`, `(${height.text} + ${thick})`];
  return `${high}^2 × (3 × ${ball} − ${high})`;
}

function domeStep(
  cake: CakeAtWork,
  { acrossMm, sphere, steps }: Dome,
  kind: 'dome-coat-volume' | 'dome-sheet-on-cake',
  fromMm: number,
  toMm: number,
): UseWorking {
  const height = mm(cake.finishing.cakeHeightMm);
  const high = cake.finishing.cakeHeightMm;
  const volume = ml(domeCoatMl(acrossMm, high, toMm) - domeCoatMl(acrossMm, high, fromMm));
  const step: FinishingParts = {
    kind,
    about: `${toMm}`,
    of: at(cake, toMm - fromMm),
    inputs: [
      ['sphere', sphere],
      ['height', height],
      ...(fromMm === 0 ? [] : ([['undercoat', mm(fromMm)]] as FinishingParts['inputs'])),
      ['thickness', mm(toMm)],
    ],
    operation: `π ÷ 3 × (${capText(sphere, height, toMm)} − ${capText(sphere, height, fromMm)}) ÷ 1000`,
    output: ['volume', volume],
  };
  return { onCake: volume, made: volume, steps: [...steps, step] };
}

function coat(
  cake: CakeAtWork,
  thicknessMm: number,
  corners: 'rounded' | 'sharp',
  neededMl: number,
): UseWorking {
  const dome = domeOf(cake);
  if (dome) return domeStep(cake, dome, 'dome-coat-volume', 0, thicknessMm);
  const { plan, cakeHeightMm } = cake.finishing;
  const grown = coatedArea(plan, thicknessMm, corners, at(cake, thicknessMm));
  const [area, height, thick] = [areaFigure(plan.areaMm2), mm(cakeHeightMm), mm(thicknessMm)];
  const volume = ml(neededMl);
  const step: FinishingParts = {
    kind: 'coat-volume',
    about: corners === 'sharp' ? `${thicknessMm}-sharp` : `${thicknessMm}`,
    of: at(cake, thicknessMm),
    inputs: [
      ['grown-area', grown.measure],
      ['height', height],
      ['thickness', thick],
      ['area', area],
    ],
    operation: `(${grown.measure.text} × (${height.text} + ${thick.text}) − ${area.text} × ${height.text}) ÷ 1000`,
    output: ['volume', volume],
  };
  return { onCake: volume, made: volume, steps: [...grown.steps, step] };
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
  if (use === 'coating')
    return coating ? coat(cake, coating.crumbMm + coating.finalMm, coating.corners, amount.neededMl) : null;
  return sheet ? rolled(cake, amount, sheet.thicknessMm, sheet.trimMm) : null;
}
