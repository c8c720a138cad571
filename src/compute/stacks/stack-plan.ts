/**
 * A stack from the table up: where each tier stands, on what, held by what, and what it weighs. Lengths mm,
 * masses g. Boards: a drum below all, a thin card below every further tier; a board in the middle of a tier over
 * six inches tall, which is then two cakes, the lower holding the upper; a dummy needs neither that card nor
 * supports; a centre dowel for three tiers and more, and for any stack that travels put together. All common
 * practice, no source.
 */
import { quantiseG, quantiseMm } from '../../domain/quantise.ts';
import { MM_PER } from '../../domain/units.ts';
import type { CakePlan } from '../finishes/plan.ts';
import { type Supports, supportsUnder } from './supports.ts';

/** A card of its own under every tier but the lowest: 2 to 4 mm, common practice, no source. */
export const CARD_THICKNESS_MM = 3;

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
  /** A dummy: it holds what stands on it by itself, and nothing is pushed into it. */
  solid?: boolean;
}

export interface StackBoards {
  drumAcrossMm: number;
  drumThicknessMm: number;
  cardThicknessMm: number;
}

/** Supports of one length that end under a board. */
export interface HeldBy extends Supports {
  lengthMm: number;
  /** Cake that stands on them. */
  carriesG: number;
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
  /** A second card inside, this high above the tier's foot; null where the tier is not tall. */
  innerBoardMm: number | null;
  /** Up to the card inside, for the upper half and all above; null where the tier is not tall. */
  innerSupports: HeldBy | null;
  /** In this tier, from its foot or the card inside, for the one above; null on top and in a dummy. */
  supports: HeldBy | null;
  /** All that stands on it; null on top. */
  carriesG: number | null;
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

/** Over six inches, and cake: it has a card inside. */
export const isTall = ({ coatedHeightMm, solid }: Pick<StackTier, 'coatedHeightMm' | 'solid'>): boolean =>
  coatedHeightMm > TALL_MM && solid !== true;

/** From its foot to its top, the card inside a tall tier counted, mm. */
export const standsHighMm = (
  tier: Pick<StackTier, 'coatedHeightMm' | 'solid'>,
  cardThicknessMm: number,
): number => tier.coatedHeightMm + (isTall(tier) ? cardThicknessMm : 0);

/** Boards and supports of one tier, its foot so high above the table. */
function stackedTier(
  tiers: readonly StackTier[],
  index: number,
  tier: StackTier,
  foot: number,
  boards: StackBoards,
): StackedTier {
  const above = tiers[index + 1];
  const isSolid = tier.solid === true;
  const halfMm = isTall(tier) ? tier.coatedHeightMm / 2 : null;
  const carriesG = tiers.slice(index + 1).reduce((sum, { weightG }) => sum + weightG, 0);
  const held = (plan: CakePlan, lengthMm: number, onTopG: number): HeldBy => ({
    ...supportsUnder(plan),
    lengthMm: quantiseMm(lengthMm),
    carriesG: quantiseG(onTopG),
  });
  // A card is as wide as the tier with its coats on, so that nothing soft hangs over its edge.
  const [acrossMm, thicknessMm] =
    index === 0
      ? [boards.drumAcrossMm, boards.drumThicknessMm]
      : [tier.coatedAcrossMm, boards.cardThicknessMm];
  return {
    name: tier.name,
    footMm: quantiseMm(foot),
    topMm: quantiseMm(foot + standsHighMm(tier, boards.cardThicknessMm)),
    acrossMm: quantiseMm(tier.coatedAcrossMm),
    weightG: quantiseG(tier.weightG),
    board: { acrossMm: quantiseMm(acrossMm), thicknessMm },
    innerBoardMm: halfMm === null ? null : quantiseMm(halfMm),
    innerSupports: halfMm === null ? null : held(tier.plan, halfMm, carriesG + tier.weightG / 2),
    supports:
      above === undefined || isSolid ? null : held(above.plan, halfMm ?? tier.coatedHeightMm, carriesG),
    carriesG: above === undefined ? null : quantiseG(carriesG),
  };
}

/** Three tiers and more, and any stack that travels put together. */
export const wantsDowel = (tiers: number, travelsAssembled: boolean): boolean =>
  tiers >= DOWEL_TIERS || (tiers > 1 && travelsAssembled);

/** The plan of a stack, bottom tier first. */
export function stackPlan(
  tiers: readonly StackTier[],
  boards: StackBoards,
  travelsAssembled: boolean,
): StackPlan {
  const stacked: StackedTier[] = [];
  let foot = boards.drumThicknessMm;
  for (const [index, tier] of tiers.entries()) {
    const one = stackedTier(tiers, index, tier, foot, boards);
    stacked.push(one);
    foot = one.topMm + boards.cardThicknessMm;
  }
  const totalHeightMm = stacked.at(-1)?.topMm ?? 0;
  return {
    tiers: stacked,
    totalHeightMm,
    totalWeightG: quantiseG(tiers.reduce((sum, { weightG }) => sum + weightG, 0)),
    dowel: wantsDowel(tiers.length, travelsAssembled)
      ? { lengthMm: quantiseMm(totalHeightMm - boards.drumThicknessMm - DOWEL_SHORT_MM) }
      : null,
  };
}
