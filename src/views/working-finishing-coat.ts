/** How much goes round a cake that is spread or poured over, step by step: a coat, a glaze over it, and both on a dome. */
import { domeCoatMl } from '../compute/finishes/coat.ts';
import type { Figure } from './figure.ts';
import { at, type CakeAtWork, ml, mm, type UseWorking } from './working-finishing-cake.ts';
import { areaFigure, coatedArea, lengthFigure } from './working-finishing-plan.ts';
import type { FinishingParts } from './working-finishing-step.ts';
import { given } from './working-numbers.ts';

interface Dome {
  acrossMm: number;
  sphere: Figure;
  steps: FinishingParts[];
}

export function domeOf({ tin, finishing }: CakeAtWork): Dome | null {
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

export function domeStep(
  cake: CakeAtWork,
  { acrossMm, sphere, steps }: Dome,
  kind: 'dome-coat-volume' | 'dome-glaze-volume' | 'dome-sheet-on-cake',
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

export function coat(
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

/** A glaze over the coat that lies below it: the coated solid with the glaze less the one without. */
export function glaze(
  cake: CakeAtWork,
  thicknessMm: number,
  corners: 'rounded' | 'sharp',
  neededMl: number,
): UseWorking {
  const { undercoatMm } = cake.settings;
  if (undercoatMm === 0) return coat(cake, thicknessMm, corners, neededMl);
  const wholeMm = undercoatMm + thicknessMm;
  const dome = domeOf(cake);
  if (dome) return domeStep(cake, dome, 'dome-glaze-volume', undercoatMm, wholeMm);
  const { plan, cakeHeightMm } = cake.finishing;
  const inner = coatedArea(plan, undercoatMm, corners, at(cake, undercoatMm));
  const outer = coatedArea(plan, wholeMm, corners, at(cake, wholeMm));
  const [height, under, whole, volume] = [mm(cakeHeightMm), mm(undercoatMm), mm(wholeMm), ml(neededMl)];
  const step: FinishingParts = {
    kind: 'glaze-volume',
    about: `${thicknessMm}-${corners}`,
    of: at(cake, thicknessMm),
    inputs: [
      ['glazed-area', outer.measure],
      ['grown-area', inner.measure],
      ['height', height],
      ['undercoat', under],
      ['glazed', whole],
    ],
    operation: `(${outer.measure.text} × (${height.text} + ${whole.text}) − ${inner.measure.text} × (${height.text} + ${under.text})) ÷ 1000`,
    output: ['volume', volume],
  };
  return { onCake: volume, made: volume, steps: [...inner.steps, ...outer.steps, step] };
}
