/**
 * A stack from the table up: where each tier stands, on what, held by what, and what it weighs. Lengths mm,
 * masses g. Boards: a drum below all, a thin card below every further tier; a board in the middle of a tier over
 * six inches tall; a centre dowel for three tiers and more, and for any stack that travels put together. All
 * common practice, no source.
 */
import { quantiseG, quantiseMm } from '../../domain/quantise.ts';
import { MM_PER } from '../../domain/units.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { type Supports, supportsUnder } from './supports.ts';

/** One tier as it is stacked. */
export interface StackTier {
  name: string;
  /** The bare cake. */
  plan: CakePlan;
  /** Across and high with all its coats. */
  coatedAcrossMm: number;
  coatedHeightMm: number;
  /** Sponge, fillings and coats. */
  weightG: number;
}

export interface StackBoards {
  drumAcrossMm: number;
  drumThicknessMm: number;
  cardThicknessMm: number;
}

export interface StackedTier {
  name: string;
  /** Of the cake's foot above the table. */
  footMm: number;
  topMm: number;
  acrossMm: number;
  weightG: number;
  /** Below this tier: the drum, or a card as wide as the bare cake. */
  board: { acrossMm: number; thicknessMm: number };
  /** A second board inside, this high above the tier's foot; null where the tier is not tall. */
  innerBoardMm: number | null;
  /** In this tier, for the one above; null on top. */
  supports: (Supports & { lengthMm: number; carriesG: number }) | null;
}

export interface StackPlan {
  tiers: StackedTier[];
  totalHeightMm: number;
  totalWeightG: number;
  /** Through all tiers from the drum's top, ending inside the top one; null where none is called for. */
  dowel: { lengthMm: number } | null;
}

const TALL_MM = 6 * MM_PER.in;
const DOWEL_TIERS = 3;
/** The dowel ends this far below the top, out of sight. */
const DOWEL_SHORT_MM = 25;

/** The plan of a stack, bottom tier first. */
export function stackPlan(
  tiers: readonly StackTier[],
  boards: StackBoards,
  travelsAssembled: boolean,
): StackPlan {
  const stacked: StackedTier[] = [];
  let foot = boards.drumThicknessMm;
  tiers.forEach((tier, index) => {
    const above = tiers[index + 1];
    const bareMm = Math.max(tier.plan.widthMm, tier.plan.heightMm);
    const board =
      index === 0
        ? { acrossMm: boards.drumAcrossMm, thicknessMm: boards.drumThicknessMm }
        : { acrossMm: bareMm, thicknessMm: boards.cardThicknessMm };
    const carriesG = tiers.slice(index + 1).reduce((sum, { weightG }) => sum + weightG, 0);
    const top = foot + tier.coatedHeightMm;
    stacked.push({
      name: tier.name,
      footMm: quantiseMm(foot),
      topMm: quantiseMm(top),
      acrossMm: quantiseMm(tier.coatedAcrossMm),
      weightG: quantiseG(tier.weightG),
      board: { acrossMm: quantiseMm(board.acrossMm), thicknessMm: board.thicknessMm },
      innerBoardMm: tier.coatedHeightMm > TALL_MM ? quantiseMm(tier.coatedHeightMm / 2) : null,
      supports:
        above === undefined
          ? null
          : {
              ...supportsUnder(above.plan),
              lengthMm: quantiseMm(tier.coatedHeightMm),
              carriesG: quantiseG(carriesG),
            },
    });
    foot = top + boards.cardThicknessMm;
  });
  const totalHeightMm = stacked[stacked.length - 1]?.topMm ?? 0;
  const wantsDowel = tiers.length >= DOWEL_TIERS || (tiers.length > 1 && travelsAssembled);
  return {
    tiers: stacked,
    totalHeightMm,
    totalWeightG: quantiseG(tiers.reduce((sum, { weightG }) => sum + weightG, 0)),
    dowel: wantsDowel
      ? { lengthMm: quantiseMm(totalHeightMm - boards.drumThicknessMm - DOWEL_SHORT_MM) }
      : null,
  };
}
