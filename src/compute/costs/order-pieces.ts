/**
 * Which boards, boxes, supports, ribbon and papers does an order take? One count for its cost and for the shopping.
 * A stack has the boards and supports of its plan: a drum below, a card under each further tier and inside a tall one.
 * By itself a covered cake stands on a drum, a plain one on a card. Put together it travels in one box, else each
 * cake in its own. Ribbon: once round each covered cake, whole metres. Paper: one sheet for each tin filled.
 */
import { PACKAGING_PER, type PackagingPer } from '../../domain/costs.ts';
import type { FinishingSettings } from '../../domain/finishing.ts';
import { type OrderStack, orderStack } from '../orders/order-stack.ts';
import type { PlannedDummy, PlannedOrder, PlannedTier } from '../orders/planned-order.types.ts';
import { packagedPieces } from './packaged-pieces.ts';

export interface OrderPieces {
  counts: Record<PackagingPer, number>;
  /** How wide the drums and cards are, mm, where that is known. */
  drumsMm: number[];
  cardsMm: number[];
}

const MM_PER_M = 1000;

type Counts = OrderPieces['counts'];

const NO_COUNTS = Object.fromEntries(PACKAGING_PER.map((per) => [per, 0])) as Counts;

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

type Standing = Pick<
  PlannedTier | PlannedDummy,
  'finishes' | 'boardAcrossMm' | 'coatedAcrossMm' | 'ribbonMm'
>;

const isCovered = ({ finishes }: Standing): boolean =>
  finishes.some(({ use }) => use === 'coating' || use === 'rolled');

interface Boards {
  drums: (number | null)[];
  cards: (number | null)[];
}

function stackBoards(parts: readonly Standing[], stack: OrderStack | 'unknown-width'): Boards {
  if (stack === 'unknown-width')
    return { drums: parts.slice(0, 1).map(() => null), cards: parts.slice(1).map(() => null) };
  const wide = stack.tiers.map(({ board }) => board.acrossMm);
  const inner = stack.tiers.flatMap(({ innerBoardMm }, at) =>
    innerBoardMm === null ? [] : [at === 0 ? (stack.tiers[at]?.acrossMm ?? null) : (wide[at] ?? null)],
  );
  return { drums: wide.slice(0, 1), cards: [...wide.slice(1), ...inner] };
}

function ownBoards(parts: readonly Standing[]): Boards {
  const covered = parts.filter(isCovered);
  const plain = parts.filter((part) => !isCovered(part));
  return {
    drums: covered.map(({ boardAcrossMm }) => boardAcrossMm),
    cards: plain.map(({ coatedAcrossMm }) => coatedAcrossMm),
  };
}

function supportsOf(stack: OrderStack | 'unknown-width' | null): number {
  if (stack === null || stack === 'unknown-width') return 0;
  return sum(
    stack.tiers.map(({ supports, innerSupports }) => (supports?.count ?? 0) + (innerSupports?.count ?? 0)),
  );
}

/** Every cake of a tier by itself. */
const eachOf = (tiers: readonly PlannedTier[]): PlannedTier[] =>
  tiers.flatMap((tier) => Array.from({ length: tier.count }, () => tier));

const known = (values: readonly (number | null)[]): number[] => values.flatMap((value) => value ?? []);

/** What an order takes; the supports of a stack whose width nobody knows are not counted. */
export function orderPieces(
  planned: PlannedOrder,
  settings: Pick<FinishingSettings, 'boardThicknessMm'>,
): OrderPieces {
  const { order, tiers, dummies } = planned;
  const stack = orderStack(planned, settings);
  const cakes = eachOf(tiers.filter(({ smallTins }) => smallTins === null));
  const standing = cakes.filter(({ ask }) => ask.beside === undefined);
  const stacked: Standing[] = stack === null ? [] : [...standing, ...dummies];
  const alone: Standing[] =
    stack === null ? [...cakes, ...dummies] : cakes.filter((one) => !standing.includes(one));
  const inStack = stack === null ? { drums: [], cards: [] } : stackBoards(stacked, stack);
  const own = ownBoards(alone);
  const drums = [...inStack.drums, ...own.drums];
  const cards = [...inStack.cards, ...own.cards];
  const ribbonMm = sum(known([...cakes, ...dummies].filter(isCovered).map((one) => one.ribbonMm)));
  return {
    counts: {
      ...packagedPieces(order),
      drum: drums.length,
      card: cards.length,
      'cake box': (order.travelsAssembled ? Math.min(1, stacked.length) : stacked.length) + alone.length,
      support: supportsOf(stack),
      'centre dowel': stack !== null && stack !== 'unknown-width' && stack.dowel !== null ? 1 : 0,
      'metre of ribbon': Math.ceil(ribbonMm / MM_PER_M),
      'lined tin': sum(tiers.map(({ smallTins, count, bakes }) => (smallTins === null ? count * bakes : 0))),
      drive: order.handOver.place === 'collected' ? 0 : 1,
    },
    drumsMm: known(drums),
    cardsMm: known(cards),
  };
}

/** What some orders take together; nothing where there are none. */
export function summedPieces(all: readonly OrderPieces[]): OrderPieces {
  return {
    counts: all.reduce((both, { counts }) => bothCounts(both, counts), NO_COUNTS),
    drumsMm: all.flatMap(({ drumsMm }) => drumsMm),
    cardsMm: all.flatMap(({ cardsMm }) => cardsMm),
  };
}

function bothCounts(a: Counts, b: Counts): Counts {
  const both = { ...a };
  for (const per of PACKAGING_PER) both[per] = a[per] + b[per];
  return both;
}
