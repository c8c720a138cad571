/**
 * A week's orders together: mixes shared where batter and day allow, one shopping list, and what sharing saves.
 * Finishes stay each order's own: they are made fresh for it.
 */
import type { Content } from '../../domain/content.ts';
import type { OrderWeek } from '../../domain/order-week.ts';
import { quantiseG } from '../../domain/quantise.ts';
import { type Result, succeed } from '../../domain/result.ts';
import { orderPieces, summedPieces } from '../costs/order-pieces.ts';
import { summedUses, usesOf } from '../orders/ingredient-uses.ts';
import type { OrderContent } from '../orders/order-content.ts';
import type { IngredientUse, PlannedOrder } from '../orders/planned-order.types.ts';
import { workOf } from '../orders/work-of.ts';
import { eggNeed } from '../shopping/eggs-to-buy.ts';
import { withPackaging } from '../shopping/packaging-lines.ts';
import { materialsOf, type ShoppingList, shoppingList } from '../shopping/shopping-list.ts';
import type { Work } from '../timeline/work.ts';
import { type WeekMix, weekMixes } from './week-mixes.ts';

export interface PlannedWeek {
  week: OrderWeek;
  orders: PlannedOrder[];
  mixes: WeekMix[];
  uses: IngredientUse[];
  shopping: ShoppingList;
  /** Batter beyond what the tins ask for, made alone and made together, g. */
  surplusAloneG: number;
  surplusG: number;
  /** Whole eggs cracked, order by order and together. */
  eggsAlone: number;
  eggs: number;
  /** What the week's timetable is made from. */
  work: Work;
}

export type WeekContent = OrderContent & Pick<Content, 'times' | 'stock' | 'ingredients' | 'costs'>;

type Mixed = Pick<WeekMix, 'mix'>;

const surplusOf = (mixes: readonly Mixed[]): number =>
  quantiseG(mixes.reduce((sum, { mix }) => sum + mix.surplusG, 0));
/** Whole eggs to crack, fillings and coatings included. */
const eggsOf = (uses: readonly IngredientUse[], shelf: Content['ingredients']): number =>
  eggNeed(uses, shelf)?.eggs ?? 0;

/** Plans a week; `orders` are those of the week, planned. Fails where a shared mix cannot be made. */
export function planWeek(
  week: OrderWeek,
  orders: readonly PlannedOrder[],
  content: WeekContent,
): Result<PlannedWeek> {
  const mixes = weekMixes(orders, week, content.times, content);
  if (!mixes.ok) return mixes;
  const alone = orders.flatMap((planned) => planned.mixes);
  const uses = summedUses([
    ...usesOf(mixes.value, []),
    ...orders.flatMap(({ finishes }) => usesOf([], finishes)),
  ]);
  return succeed({
    week,
    orders: [...orders],
    mixes: mixes.value,
    uses,
    shopping: withPackaging(
      shoppingList(uses, content.stock, content.ingredients, materialsOf(orders)),
      content.costs.packaging,
      summedPieces(orders.map((planned) => orderPieces(planned, content.finishing))),
    ),
    surplusAloneG: surplusOf(alone),
    surplusG: surplusOf(mixes.value),
    eggsAlone: orders.reduce((sum, one) => sum + eggsOf(one.uses, content.ingredients), 0),
    eggs: eggsOf(uses, content.ingredients),
    work: workOf(orders, mixes.value),
  });
}
