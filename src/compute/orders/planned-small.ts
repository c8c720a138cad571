/** Small cakes of an order worked out: so much batter in each, so much on each, so many to a box. */
import type { SmallCakes, TierAsk } from '../../domain/order.ts';
import { quantiseG, quantiseMm } from '../../domain/quantise.ts';
import { finishAmount } from '../finishes/amount.ts';
import { spongeUsual } from '../labels/sponge-usual.ts';
import { tinBoundsMm } from '../shapes/index.ts';
import { levelled } from './levelled.ts';
import { named, type OrderContent } from './order-content.ts';
import type { PlannedMix, PlannedTier, TierFinish } from './planned-order.types.ts';
import { smallFill, smallTinsOf, tinOfSmall } from './small-cakes.ts';
import { times } from './tier-finishes.ts';

function toppingsOf({ count }: TierAsk, { toppings }: SmallCakes, { finishes }: OrderContent): TierFinish[] {
  return toppings.map(({ finishId, eachG }) => {
    const finish = named(finishes, finishId);
    const amount = times(finishAmount(finish, 'topping', eachG / finish.densityGPerMl), count);
    return { finish, use: 'topping', amount };
  });
}

/** What one piece gets of the bowls it comes from. */
function receivesG(mix: PlannedMix, at: number, pieces: number): number {
  const own = mix.mix.tins.filter((_, tin) => mix.tierAt[tin] === at);
  return quantiseG(own.reduce((sum, tin) => sum + tin.receivesG * tin.count, 0) / pieces);
}

/** The small cakes at a place of the order, from the mix that holds them. */
export function plannedSmall(
  ask: TierAsk,
  small: SmallCakes,
  at: number,
  [mixAt, mix]: [number, PlannedMix],
  content: OrderContent,
): PlannedTier {
  const { recipe, flavours } = mix;
  const { kitchen } = content;
  const { vessel } = tinOfSmall(ask, kitchen);
  const smallTins = smallTinsOf(ask, kitchen);
  const fill = smallFill(ask, small, smallTins.cup, recipe, mix.mix.gPerMl);
  if (!fill.ok) throw new Error(`Small cakes ${at + 1} have no height.`);
  const finishes = toppingsOf(ask, small, content);
  const eachG = receivesG(mix, at, ask.count);
  const onEachG = small.toppings.reduce((sum, topping) => sum + topping.eachG, 0);
  const bounds = tinBoundsMm(smallTins.cup);
  const heightMm = quantiseMm(fill.value.heightMm);
  return {
    ...{ at, ask, tin: vessel, smallTins, recipe, flavours, count: ask.count, layers: 1 },
    ...{ mixAt, mixTinAt: mix.tierAt.indexOf(at), finishedHeightMm: heightMm, receivesG: eachG },
    ...{ bakes: 1, bakeHeightMm: heightMm },
    level: levelled({ bakes: 1, heightMm, layers: 1, spongeG: 0 }, 0),
    ...{ builtHeightMm: heightMm, coatedHeightMm: heightMm, finishes },
    coatedAcrossMm: bounds === null ? null : Math.max(bounds.widthMm, bounds.heightMm),
    ...{ boardAcrossMm: null, ribbonMm: null, portionsEach: 1, inRings: null },
    weightGEach: quantiseG(eachG * (1 - spongeUsual(recipe).waterLossShare) + onEachG),
    ...{ bake: null, withCore: false, withBand: false, warnings: fill.value.warnings },
  };
}
