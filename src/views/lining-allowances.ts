/** Paper allowances, mm: house choice, common practice has no one figure. */
import type { LiningSettings } from '../compute/lining/index.ts';

export const LINING: LiningSettings = { clearanceMm: 2, overlapMm: 20, collarMm: 20 };
