/** How a cake is cut: pieces seen from above, and whether by rows or by rings. Lengths mm. */
export interface PortionSize {
  id: 'dessert' | 'finger';
  name: string;
  shortMm: number;
  longMm: number;
}

/** 25 × 50 mm and 25 × 25 mm: common practice, no source; the kitchen may set its own. */
export const USUAL_PORTIONS: readonly PortionSize[] = [
  { id: 'dessert', name: 'Dessert', shortMm: 25.4, longMm: 50.8 },
  { id: 'finger', name: 'Finger', shortMm: 25.4, longMm: 25.4 },
];
