/**
 * Which boards, boxes, supports, ribbon and papers does an order take? One count for its cost and for the shopping.
 * Boards and boxes are the order's own (its plan says which cake stands on what), with a card inside each tall tier;
 * supports and dowel are the stack's. Ribbon: once round each covered cake, whole metres. Paper: one sheet for each tin filled.
 */
import { PACKAGING_PER, type PackagingPer, type SizedPer } from '../../domain/costs.ts';
import { type BoardedPart, type BoardSettings, isCovered, orderBoards } from '../orders/order-boards.ts';
import { isDummyPart } from '../orders/order-stack.ts';
import type { PlannedOrder } from '../orders/planned-order.types.ts';
import { stackPieces } from '../orders/stack-pieces.ts';
import { packagedPieces } from './packaged-pieces.ts';

export interface OrderPieces {
  counts: Record<PackagingPer, number>;
  /** How wide each board is, and the inside of each box, mm, where that is known. */
  widthsMm: Record<SizedPer, number[]>;
  /** Tins whose cakes stand on supports that nobody can count, because nobody knows how wide they are. */
  uncounted: string[];
}

const MM_PER_M = 1000;

type Counts = OrderPieces['counts'];

const NO_COUNTS = Object.fromEntries(PACKAGING_PER.map((per) => [per, 0])) as Counts;

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/** A board or a box for every cake of a tier. */
const eachOf = <T>({ part }: BoardedPart, one: T): T[] =>
  Array.from({ length: isDummyPart(part) ? 1 : part.count }, () => one);

const known = (values: readonly (number | null)[]): number[] => values.flatMap((value) => value ?? []);

/** What an order takes. */
export function orderPieces(planned: PlannedOrder, settings: BoardSettings): OrderPieces {
  const { order, tiers } = planned;
  const boards = orderBoards(planned, settings);
  const stack = stackPieces(planned);
  const widths = (kind: BoardedPart['kind']): (number | null)[] =>
    boards.flatMap((one) => (one.kind === kind ? eachOf(one, one.acrossMm) : []));
  const boxes = boards.flatMap((one) => (one.box === null ? [] : eachOf(one, one.box.acrossMm)));
  const [drums, cards] = [widths('drum'), [...widths('card'), ...stack.innerCardsMm]];
  const ribbons = boards.flatMap((one) => (isCovered(one.part) ? eachOf(one, one.part.ribbonMm) : []));
  return {
    counts: {
      ...packagedPieces(order),
      drum: drums.length,
      card: cards.length,
      'cake box': boxes.length,
      support: stack.supports,
      'centre dowel': stack.dowels,
      'metre of ribbon': Math.ceil(sum(known(ribbons)) / MM_PER_M),
      'lined tin': sum(tiers.map(({ smallTins, count, bakes }) => (smallTins === null ? count * bakes : 0))),
      drive: order.handOver.place === 'collected' ? 0 : 1,
    },
    widthsMm: { drum: known(drums), card: known(cards), 'cake box': known(boxes) },
    uncounted: stack.uncounted,
  };
}

/** What some orders take together; nothing where there are none. */
export function summedPieces(all: readonly OrderPieces[]): OrderPieces {
  return {
    counts: all.reduce((both, { counts }) => bothCounts(both, counts), NO_COUNTS),
    widthsMm: {
      drum: all.flatMap(({ widthsMm }) => widthsMm.drum),
      card: all.flatMap(({ widthsMm }) => widthsMm.card),
      'cake box': all.flatMap(({ widthsMm }) => widthsMm['cake box']),
    },
    uncounted: [...new Set(all.flatMap(({ uncounted }) => uncounted))],
  };
}

function bothCounts(a: Counts, b: Counts): Counts {
  const both = { ...a };
  for (const per of PACKAGING_PER) both[per] = a[per] + b[per];
  return both;
}
