/**
 * How much does a tin hold to a height, and how high does a volume stand? V(h) = ∫A(z)dz from the base; above
 * the rim the fill goes on with the rim's area. A tin that was filled with water and weighed keeps the
 * formula's curve, scaled so that the rim agrees with the water.
 */
import { quantiseMl, quantiseMm } from '../../domain/quantise.ts';
import type { TinForm } from '../../domain/tin.ts';
import { MM3_PER_ML } from '../../domain/units.ts';
import { ruleFor } from './shape-rules.ts';

function requireAmount(amount: number, what: string): void {
  if (!(amount >= 0 && Number.isFinite(amount))) throw new RangeError(`A ${what} cannot be ${amount}.`);
}

/** The formula's own fill, mm³, before any scaling to measured water. */
function formulaMm3({ shape, depthMm }: TinForm, heightMm: number): number {
  if (heightMm === 0 || depthMm === 0) return 0;
  const rule = ruleFor(shape);
  if (heightMm <= depthMm) return rule.fillMm3(shape, heightMm, depthMm);
  return rule.fillMm3(shape, depthMm, depthMm) + rule.growthMm2(shape, depthMm) * (heightMm - depthMm);
}

/** Measured water over the formula's volume; 1 for a tin that nobody measured. */
function waterFactor(form: TinForm): number {
  if (form.measuredVolumeMl === undefined) return 1;
  return (form.measuredVolumeMl * MM3_PER_ML) / formulaMm3(form, form.depthMm);
}

/** Volume from the base up to a height, mL; a negative height is a RangeError. */
export function volumeToHeightMl(form: TinForm, heightMm: number): number {
  requireAmount(heightMm, 'height in mm');
  if (form.depthMm === 0) return 0;
  return quantiseMl((formulaMm3(form, heightMm) * waterFactor(form)) / MM3_PER_ML);
}

/** Volume level with the rim, mL. A round of 8 × 3 in: 2 471.111. */
export function volumeMl(form: TinForm): number {
  return volumeToHeightMl(form, form.depthMm);
}

/** Height below the rim at which the formula holds so much; where a fill is not even, 60 halvings find it. */
function heightInside(form: TinForm, wantedMm3: number, fullMm3: number): number {
  if (ruleFor(form.shape).fillsEvenly) return (form.depthMm * wantedMm3) / fullMm3;
  let low = 0;
  let high = form.depthMm;
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = (low + high) / 2;
    if (formulaMm3(form, middle) < wantedMm3) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Height from the base at which a volume stands, mm; above the depth when it would top the rim. A negative
 * volume, or a tin without depth, is a RangeError.
 */
export function heightForVolumeMm(form: TinForm, volume: number): number {
  requireAmount(volume, 'volume in mL');
  if (!(form.depthMm > 0)) throw new RangeError('A tin without depth has no fill height.');
  const wanted = (volume * MM3_PER_ML) / waterFactor(form);
  const full = formulaMm3(form, form.depthMm);
  if (wanted <= full) return quantiseMm(heightInside(form, wanted, full));
  const growth = ruleFor(form.shape).growthMm2(form.shape, form.depthMm);
  return quantiseMm(form.depthMm + (wanted - full) / growth);
}
