/** The cakes of an order: how each is baked, what goes on it, and the board and box it stands on and in. */
import type { PlannedOrder, PlannedTier, TierFinish } from '../compute/orders/plan-order.ts';
import { batterName } from '../compute/orders/work-of.ts';
import type { Content } from '../domain/content.ts';
import { type FinishingWords, finishingWordsFor } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import { bakeFigures } from './bake-figures.ts';
import { heightFigure, totalFigure } from './figures.ts';
import { boardFigure, cutFigure } from './finishing-figures.ts';
import type { OrderTier, TierFinishView } from './order.types.ts';
import { countFigure } from './order-batters.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

const mm = (length: number): string => formatLength(length, 'mm');

function useText({ finish, use }: TierFinish, damMm: number, { uses }: FinishingWords): string {
  const { filling, coating, rolled, brushed } = finish.use;
  switch (use) {
    case 'filling':
      return uses.filling(mm(filling?.thicknessMm ?? 0));
    case 'coating': {
      const { crumbMm = 0, finalMm = 0 } = coating ?? {};
      return uses.coating(crumbMm === 0 ? '' : mm(crumbMm), mm(finalMm));
    }
    case 'rolled':
      return uses.rolled(mm(rolled?.thicknessMm ?? 0));
    case 'brushed':
      return uses.brushed(`${formatNumber(brushed?.gPerCm2 ?? 0, 2)} g/cm²`);
    case 'dam':
      return uses.dam(mm(damMm));
  }
}

function finishView(one: TierFinish, damMm: number, words: FinishingWords): TierFinishView {
  const { finish, use, amount } = one;
  const { sheet } = amount;
  const across = sheet === null ? '' : cutFigure(sheet.acrossMm).text;
  const other = sheet === null ? '' : cutFigure(sheet.otherAcrossMm).text;
  const rolled = sheet?.form === 'round' ? words.sheetRound(across) : words.sheetOblong(across, other);
  return {
    finish: { id: finish.id, name: finish.name },
    use,
    useText: useText(one, damMm, words),
    on: totalFigure(amount.neededG),
    make: totalFigure(amount.makeG),
    sheetText: sheet === null ? null : rolled,
  };
}

/** How a tier of an order is called. */
export const tierName = ({ order }: Pick<PlannedOrder, 'order'>, at: number, words: OrderWords): string =>
  words.tierName(at, order.tiers.length, order.arrangement === 'stacked');

function orderTier(
  planned: PlannedOrder,
  tier: PlannedTier,
  content: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
): OrderTier {
  const { kitchen, finishing } = content;
  const words = wordsFor(kitchen.locale);
  const own = finishingWordsFor(kitchen.locale);
  const { tin, recipe, flavours } = tier;
  const recipeBakes = bakes.get(recipe.id);
  return {
    id: `tier-${tier.at + 1}`,
    name: tierName(planned, tier.at, orderWordsFor(kitchen.locale)),
    tin: { id: tin.id, name: tin.name },
    sizeText: tinSize(tin, words),
    picture: pictureOfTin(tin, words),
    recipe: { id: recipe.id, name: recipe.name },
    flavours: flavours.map(({ id, name }) => ({ id, name })),
    batterText: batterName(tier),
    count: countFigure(tier.count),
    layers: countFigure(tier.layers),
    receives: totalFigure(tier.receivesG),
    bakedHeight: heightFigure(tier.finishedHeightMm),
    coatedHeight: heightFigure(tier.coatedHeightMm),
    coatedAcross: tier.coatedAcrossMm === null ? null : heightFigure(tier.coatedAcrossMm),
    board: tier.boardAcrossMm === null ? null : boardFigure(tier.boardAcrossMm),
    boxHeight: tier.boxHeightMm === null ? null : cutFigure(tier.boxHeightMm),
    ribbon: tier.ribbonMm === null ? null : cutFigure(tier.ribbonMm),
    weight: totalFigure(tier.weightGEach),
    portions: tier.portionsEach === null ? null : countFigure(tier.portionsEach),
    inRings: tier.inRings === null ? null : countFigure(tier.inRings),
    bake: recipeBakes ? bakeFigures(recipeBakes, tin, tier.finishedHeightMm, kitchen.locale) : null,
    finishes: tier.finishes.map((one) => finishView(one, finishing.damMm, own)),
  };
}

/** The cakes, bottom first. */
export const orderTiers = (
  planned: PlannedOrder,
  content: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
): OrderTier[] => planned.tiers.map((tier) => orderTier(planned, tier, content, bakes));
