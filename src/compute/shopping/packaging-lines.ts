/**
 * What is to be bought of boards, boxes and supports? Each thing counted as the cost counts it, less what is on hand,
 * in the cheapest packs; once there is no size to sell it in, one by one. An order's own things count in its week too.
 */
import type { PackagingCost } from '../../domain/costs.ts';
import type { OrderPieces } from '../costs/order-pieces.ts';
import { cheapestPacks } from './cheapest-packs.ts';
import type { ShoppingLine, ShoppingList } from './shopping-list.ts';

const sizesOf = ({ per }: PackagingCost, { widthsMm }: OrderPieces): number[] =>
  per === 'drum' || per === 'card' || per === 'cake box' ? widthsMm[per] : [];

/** One line; null where the orders take none of it, and for drives, which no shop sells. */
function packagingLine(item: PackagingCost, pieces: OrderPieces): ShoppingLine | null {
  const needed = pieces.counts[item.per];
  if (needed === 0 || item.per === 'drive') return null;
  const packs = item.packs ?? [{ size: 1, text: '1', priceMinor: item.eachMinor }];
  const onHand = item.onHand ?? 0;
  const missing = Math.max(0, needed - onHand);
  const mix = cheapestPacks(missing, packs);
  const taken = packs.map((pack, at) => ({ ...pack, count: mix?.counts[at] ?? 0 }));
  const bought = taken.reduce((all, { size, count }) => all + size * count, 0);
  return {
    ...{ ingredientId: item.name, name: item.name, unit: 'pieces', needed, onHand, missing },
    packaging: { acrossMm: [...sizesOf(item, pieces)].sort((a, b) => b - a) },
    packs: taken.filter(({ count }) => count > 0).reverse(),
    boughtMinor: mix?.priceMinor ?? 0,
    left: onHand + bought - needed,
    usedMinor: null,
  };
}

/** The list with what the cakes stand in and on; what is used of food stays. */
export function withPackaging(
  list: ShoppingList,
  packaging: readonly PackagingCost[],
  pieces: OrderPieces,
): ShoppingList {
  const lines = packaging.flatMap((item) => packagingLine(item, pieces) ?? []);
  const boughtMinor = lines.reduce((all, one) => all + (one.boughtMinor ?? 0), list.boughtMinor);
  const uncounted = packaging.some(({ per }) => per === 'support') ? pieces.uncounted : [];
  return { ...list, lines: [...list.lines, ...lines], boughtMinor, uncounted };
}
