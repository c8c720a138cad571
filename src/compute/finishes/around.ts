/** Ribbon, board and box. Common practice, no source; every allowance is the kitchen's to set. */
export interface AroundSettings {
  ribbonOverlapMm: number;
  /** Board over cake, across. */
  boardMarginMm: number;
  boxHeightClearanceMm: number;
}

/** mm of ribbon for an outside wall of this length. */
export function ribbonMm(outsidePerimeterMm: number, settings: AroundSettings): number {
  return outsidePerimeterMm + settings.ribbonOverlapMm;
}

/** Board across, mm, for a cake this far across once coated: up to the next whole size, in inches. */
export function boardAcrossMm(coatedAcrossMm: number, settings: AroundSettings): number {
  return Math.ceil((coatedAcrossMm + settings.boardMarginMm) / 25.4 - 1e-9) * 25.4;
}

/** Box height, mm, for a cake standing on its board. */
export function boxHeightMm(
  cakeHeightMm: number,
  boardThicknessMm: number,
  settings: AroundSettings,
): number {
  return cakeHeightMm + boardThicknessMm + settings.boxHeightClearanceMm;
}
