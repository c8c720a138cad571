/**
 * Which boards, boxes, supports, ribbon and papers does an order take? One count for its cost and for the shopping.
 * Boards and boxes are the order's own (its plan says which cake stands on what), with a card inside each tall tier;
 * supports and dowel are the stack's. Ribbon: once round each covered cake, whole metres. Paper: one sheet for each tin filled.
 */
import { PACKAGING_PER, type PackagingPer } from '../../domain/costs.ts';
import { quantiseMm } from '../../domain/quantise.ts';
import { type BoardedPart, type BoardSettings, isCovered, orderBoards } from '../orders/order-boards.ts';
import { isDummyPart, type OrderStack, orderStack } from '../orders/order-stack.ts';
import type { PlannedOrder } from '../orders/planned-order.types.ts';
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

/** How wide the cards inside tall tiers are: as the bare cake. */
const innerCards = ({ tiers, plans }: OrderStack): number[] =>
  tiers.flatMap(({ innerBoardMm }, at) => {
    const plan = plans[at];
    return innerBoardMm === null || plan === undefined
      ? []
      : [quantiseMm(Math.max(plan.widthMm, plan.heightMm))];
  });

function supportsOf(stack: OrderStack | 'unknown-width' | null): number {
  if (stack === null || stack === 'unknown-width') return 0;
  return sum(
    stack.tiers.map(({ supports, innerSupports }) => (supports?.count ?? 0) + (innerSupports?.count ?? 0)),
  );
}

/** A board or a box for every cake of a tier. */
const eachOf = <T>({ part }: BoardedPart, one: T): T[] =>
  Array.from({ length: isDummyPart(part) ? 1 : part.count }, () => one);

const known = (values: readonly (number | null)[]): number[] => values.flatMap((value) => value ?? []);

/** What an order takes; the supports of a stack whose width nobody knows are not counted. */
export function orderPieces(planned: PlannedOrder, settings: BoardSettings): OrderPieces {
  const { order, tiers } = planned;
  const stack = orderStack(planned, settings);
  const plannedStack = stack === 'unknown-width' ? null : stack;
  const boards = orderBoards(planned, settings);
  const widths = (kind: BoardedPart['kind']): (number | null)[] =>
    boards.flatMap((one) => (one.kind === kind ? eachOf(one, one.acrossMm) : []));
  const drums = widths('drum');
  const cards = [...widths('card'), ...(plannedStack === null ? [] : innerCards(plannedStack))];
  const ribbons = boards.flatMap((one) => (isCovered(one.part) ? eachOf(one, one.part.ribbonMm) : []));
  return {
    counts: {
      ...packagedPieces(order),
      drum: drums.length,
      card: cards.length,
      'cake box': boards.flatMap((one) => (one.box === null ? [] : eachOf(one, one.box))).length,
      support: supportsOf(stack),
      'centre dowel': plannedStack !== null && plannedStack.dowel !== null ? 1 : 0,
      'metre of ribbon': Math.ceil(sum(known(ribbons)) / MM_PER_M),
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
