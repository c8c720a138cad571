/** How this kitchen finishes cakes when an order does not say otherwise. Lengths mm; all common practice. */
export interface FinishingSettings {
  /** Sponge height of the finished tier, before coating. */
  cakeHeightMm: number;
  layers: number;
  /** Bead of the piped dam; 0 for none. */
  damMm: number;
  /** Coat that a rolled sheet goes over. */
  undercoatMm: number;
  ribbonOverlapMm: number;
  /** Board across, over the coated cake. */
  boardMarginMm: number;
  boardThicknessMm: number;
  boxHeightClearanceMm: number;
}

export const USUAL_FINISHING: FinishingSettings = {
  cakeHeightMm: 100,
  layers: 3,
  damMm: 10,
  undercoatMm: 8,
  ribbonOverlapMm: 20,
  boardMarginMm: 75,
  boardThicknessMm: 12,
  boxHeightClearanceMm: 50,
};
