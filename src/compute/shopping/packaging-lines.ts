/**
 * What is to be bought of boards, boxes and supports? Each thing counted as the cost counts it, less what is on hand,
 * in the cheapest packs; once there is no size to sell it in, one by one. An order's own things count in its week too.
 */
import type { PackagingCost } from '../../domain/costs.ts';
import type { OrderPieces } from '../costs/order-pieces.ts';
import { type SizedPackaging, sizedPackaging } from '../costs/sized-packaging.ts';
import { cheapestPacks } from './cheapest-packs.ts';
import type { ShoppingLine, ShoppingList } from './shopping-list.ts';

/** Lines of one thing, one for each size it is bought in; none for drives, which no shop sells. */
function packagingLines(item: PackagingCost, pieces: OrderPieces): ShoppingLine[] {
  if (item.per === 'drive') return [];
  return sizedPackaging(item, pieces).map((one) => packagingLine(item, one));
}

function packagingLine(
  item: PackagingCost,
  { count: needed, eachMinor, sizeMm, forMm }: SizedPackaging,
): ShoppingLine {
  const packs = item.packs ?? [{ size: 1, text: '1', priceMinor: eachMinor }];
  const onHand = item.onHand ?? 0;
  const missing = Math.max(0, needed - onHand);
  const mix = cheapestPacks(missing, packs);
  const taken = packs.map((pack, at) => ({ ...pack, count: mix?.counts[at] ?? 0 }));
  const bought = taken.reduce((all, { size, count }) => all + size * count, 0);
  const id = sizeMm === null ? item.name : `${item.name} ${sizeMm}`;
  return {
    ...{ ingredientId: id, name: item.name, unit: 'pieces', needed, onHand, missing },
    packaging: { acrossMm: forMm, ...(item.sizes === undefined ? {} : { sizeMm }) },
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
  const lines = packaging.flatMap((item) => packagingLines(item, pieces));
  const boughtMinor = lines.reduce((all, one) => all + (one.boughtMinor ?? 0), list.boughtMinor);
  const uncounted = packaging.some(({ per }) => per === 'support') ? pieces.uncounted : [];
  return { ...list, lines: [...list.lines, ...lines], boughtMinor, uncounted };
}
