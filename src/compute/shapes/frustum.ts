/**
 * Volume between parallel sections whose width grows evenly from base to rim.
 * Round: V = πh/3·(R² + Rr + r²). Rectangular: prismatoid V = h/6·(A_top + 4·A_mid + A_base), exact; the
 * √(A₁A₂) formula is not, for a loaf. Source: elementary solid geometry; checked by integration in the tests.
 */

/** A width at a height, between its base and rim values. */
export function widthAt(baseMm: number, rimMm: number, heightMm: number, depthMm: number): number {
  return baseMm + ((rimMm - baseMm) * heightMm) / depthMm;
}

/** Part of a cone, mm³, from its radius at the base and at the fill's surface. */
export function roundFrustumMm3(baseRadiusMm: number, topRadiusMm: number, heightMm: number): number {
  const squares = baseRadiusMm ** 2 + baseRadiusMm * topRadiusMm + topRadiusMm ** 2;
  return (Math.PI * heightMm * squares) / 3;
}

export interface Oblong {
  lengthMm: number;
  widthMm: number;
}

/** A prismatoid with rectangular ends, mm³. */
export function oblongFrustumMm3(base: Oblong, top: Oblong, heightMm: number): number {
  const middle = ((base.lengthMm + top.lengthMm) / 2) * ((base.widthMm + top.widthMm) / 2);
  return (heightMm / 6) * (top.lengthMm * top.widthMm + 4 * middle + base.lengthMm * base.widthMm);
}
