/**
 * Everything that goes between and around one cake: each finish in each way it is used, and the board, box,
 * ribbon and paper that belong to it. g, mm and mL, quantised. Domes are coated as caps of a sphere and are
 * not given a rolled sheet's wall: the sheet drapes over the curve.
 */

import type { Finish } from '../../domain/finish.ts';
import type { FinishingSettings } from '../../domain/finishing.ts';
import { quantiseG, quantiseMl, quantiseMm } from '../../domain/quantise.ts';
import type { TinForm } from '../../domain/tin.ts';
import { type FinishAmount, finishAmount } from './amount.ts';
import { boardAcrossMm, boxHeightMm, ribbonMm } from './around.ts';
import { cakePlan } from './cake-plan.ts';
import { coatMl, domeCoatMl } from './coat.ts';
import { fillingAmounts } from './filling.ts';
import { grownPlan } from './grown-plan.ts';
import { outsideWallMm } from './outside-wall.ts';
import type { CakePlan } from './plan.ts';
import { isPoured } from './poured.ts';
import { rolledSheet } from './rolled.ts';
import { syrupG } from './syrup.ts';

export type { FinishAmount, FinishUseName } from './amount.ts';

export interface Finishing {
  cakeHeightMm: number;
  layers: number;
  plan: CakePlan;
  amounts: FinishAmount[];
  coatedAcrossMm: number;
  coatedHeightMm: number;
  boardAcrossMm: number;
  boxHeightMm: number;
  ribbonMm: number;
}

interface Cake {
  plan: CakePlan;
  form: TinForm;
  heightMm: number;
  settings: FinishingSettings;
}

const isDome = ({ shape }: TinForm): boolean => shape.kind === 'dome';

function spreadMl({ plan, form, heightMm }: Cake, tMm: number, corners: 'rounded' | 'sharp'): number {
  if (form.shape.kind === 'dome') return domeCoatMl(form.shape.acrossMm, heightMm, tMm);
  return coatMl(plan, heightMm, tMm, corners);
}

function rolledAmount(finish: Finish, cake: Cake, thicknessMm: number, trimMm: number): FinishAmount {
  const { undercoatMm } = cake.settings;
  const coated = grownPlan(cake.plan, undercoatMm);
  const sheet = rolledSheet(coated, cake.heightMm + undercoatMm, thicknessMm, trimMm);
  const onCakeMl = isDome(cake.form)
    ? spreadMl(cake, undercoatMm + thicknessMm, 'rounded') - spreadMl(cake, undercoatMm, 'rounded')
    : sheet.onCakeMl;
  const rolled = finishAmount(finish, 'rolled', sheet.rollMl);
  return {
    ...rolled,
    neededMl: quantiseMl(onCakeMl),
    neededG: quantiseG(onCakeMl * finish.densityGPerMl),
    sheet: {
      form: sheet.form,
      acrossMm: quantiseMm(sheet.acrossMm),
      otherAcrossMm: quantiseMm(sheet.otherAcrossMm),
    },
  };
}

function finishAmounts(finish: Finish, cake: Cake): FinishAmount[] {
  const { filling, coating, rolled, brushed } = finish.use;
  const { plan, settings } = cake;
  const amounts: FinishAmount[] = [];
  if (filling) {
    const { fillingMl } = fillingAmounts(plan, settings.layers, filling.thicknessMm, settings.damMm);
    amounts.push(finishAmount(finish, 'filling', fillingMl));
  }
  if (coating) {
    // A glaze is poured over a coat that is on already: what it takes is the difference of two coats.
    const underMm = isPoured(finish) ? settings.undercoatMm : 0;
    const upTo = (tMm: number): number => spreadMl(cake, tMm, coating.corners);
    const onMl = upTo(underMm + coating.crumbMm + coating.finalMm) - (underMm === 0 ? 0 : upTo(underMm));
    amounts.push(finishAmount(finish, 'coating', onMl));
  }
  if (rolled) amounts.push(rolledAmount(finish, cake, rolled.thicknessMm, rolled.trimMm));
  if (brushed) {
    const neededG = syrupG(plan, settings.layers, brushed.gPerCm2);
    amounts.push(finishAmount(finish, 'brushed', neededG / finish.densityGPerMl));
  }
  return amounts;
}

/**
 * Finishing amounts for the cake from one tin; null for a tin known only by the water it holds, whose width
 * nobody knows.
 */
export function finishingFor(
  form: TinForm,
  finishes: Finish[],
  settings: FinishingSettings,
): Finishing | null {
  const plan = cakePlan(form);
  if (plan === null) return null;
  const heightMm = isDome(form) ? form.depthMm : settings.cakeHeightMm;
  const cake: Cake = { plan, form, heightMm, settings };
  const coated = grownPlan(plan, settings.undercoatMm);
  const across = Math.max(coated.widthMm, coated.heightMm);
  return {
    cakeHeightMm: quantiseMm(heightMm),
    layers: settings.layers,
    plan,
    amounts: finishes.flatMap((finish) => finishAmounts(finish, cake)),
    coatedAcrossMm: quantiseMm(across),
    coatedHeightMm: quantiseMm(heightMm + settings.undercoatMm),
    boardAcrossMm: quantiseMm(boardAcrossMm(across, settings)),
    boxHeightMm: quantiseMm(
      boxHeightMm(heightMm + settings.undercoatMm, settings.boardThicknessMm, settings),
    ),
    ribbonMm: quantiseMm(ribbonMm(outsideWallMm(plan, settings.undercoatMm), settings)),
  };
}
