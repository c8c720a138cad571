/** The cakes of an order: how each is baked, what goes on it, and the board and box it stands on and in. */
import { isPoured } from '../compute/finishes/poured.ts';
import { type BoardedPart, isCovered } from '../compute/orders/order-boards.ts';
import type { PlannedDummy, PlannedOrder, PlannedTier, TierFinish } from '../compute/orders/plan-order.ts';
import { dummyId } from '../compute/orders/planned-dummy.ts';
import { tierOven } from '../compute/orders/tier-oven.ts';
import { batterName, tierId } from '../compute/orders/work-of.ts';
import type { Content } from '../domain/content.ts';
import { quantiseG } from '../domain/quantise.ts';
import { type FinishingWords, finishingWordsFor } from '../wording/finishing/index.ts';
import { formatLength } from '../wording/length.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatNumber } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { tinSize } from '../wording/tin-size.ts';
import { bakeFigures } from './bake-figures.ts';
import type { BakeFigures } from './bake-figures.types.ts';
import { heightFigure, totalFigure } from './figures.ts';
import { cutFigure } from './finishing-figures.ts';
import type { OrderDummy, OrderTier, TierFinishView } from './order.types.ts';
import { countFigure } from './order-batters.ts';
import { boardView } from './order-boards.ts';
import { dummyName, tierName } from './order-names.ts';
import { sizeText, smallBakeFigures, smallView } from './order-small-cakes.ts';
import { ovenFigures } from './oven-figures.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

const mm = (length: number): string => formatLength(length, 'mm');

function useText(
  { finish, use, amount }: TierFinish,
  { count, layers }: Covered,
  damMm: number,
  { uses }: FinishingWords,
  { sheet }: OrderWords,
): string {
  const { filling, coating, rolled, brushed } = finish.use;
  switch (use) {
    case 'filling': {
      const gaps = Math.max(1, layers - 1);
      const eachG = quantiseG(amount.neededG / (count * gaps));
      return sheet.filling(mm(filling?.thicknessMm ?? 0), layers, totalFigure(eachG).text);
    }
    case 'coating': {
      const { crumbMm = 0, finalMm = 0 } = coating ?? {};
      if (isPoured(finish)) return uses.poured(mm(finalMm));
      return crumbMm === 0 ? uses.coating('', mm(finalMm)) : sheet.coats(mm(crumbMm), mm(finalMm));
    }
    case 'rolled':
      return uses.rolled(mm(rolled?.thicknessMm ?? 0));
    case 'brushed':
      return uses.brushed(`${formatNumber(brushed?.gPerCm2 ?? 0, 2)} g/cm²`);
    case 'dam':
      return sheet.dam(mm(damMm));
    case 'topping':
      return '';
  }
}

function finishView(
  one: TierFinish,
  tier: Covered,
  damMm: number,
  words: FinishingWords,
  own: OrderWords,
): TierFinishView {
  const { finish, use, amount, colour } = one;
  const { sheet } = amount;
  const across = sheet === null ? '' : cutFigure(sheet.acrossMm).text;
  const other = sheet === null ? '' : cutFigure(sheet.otherAcrossMm).text;
  const rolled = sheet?.form === 'round' ? words.sheetRound(across) : words.sheetOblong(across, other);
  return {
    finish: { id: finish.id, name: finish.name },
    calledText: colour === undefined ? finish.name : `${finish.name}, ${colour}`,
    use,
    useText: useText(one, tier, damMm, words, own),
    on: totalFigure(amount.neededG),
    make: totalFigure(amount.makeG),
    sheetText: sheet === null ? null : rolled,
  };
}

/** What is on each small cake; all else by thickness. */
function placedView(one: TierFinish, tier: Covered, content: Content): TierFinishView {
  const { kitchen, finishing } = content;
  const own = orderWordsFor(kitchen.locale);
  const view = finishView(one, tier, finishing.damMm, finishingWordsFor(kitchen.locale), own);
  if (one.use !== 'topping') return view;
  const eachG = quantiseG(one.amount.neededG / tier.count);
  return { ...view, useText: own.beside.topping(totalFigure(eachG).text) };
}

type Covered = Pick<PlannedTier, 'count' | 'layers'>;

/** Size, board, box and ribbon of a cake or a dummy. */
const aroundView = (tier: PlannedTier | PlannedDummy, boards: readonly BoardedPart[], words: OrderWords) => ({
  coatedHeight: heightFigure(tier.coatedHeightMm),
  coatedAcross: tier.coatedAcrossMm === null ? null : heightFigure(tier.coatedAcrossMm),
  ...boardView(
    boards.find(({ part }) => part === tier),
    words,
  ),
  ribbon: tier.ribbonMm === null || !isCovered(tier) ? null : cutFigure(tier.ribbonMm),
  weight: totalFigure(tier.weightGEach),
});

function bakeView(
  tier: PlannedTier,
  { kitchen }: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
): BakeFigures | null {
  const { ask, recipe, tin, bakeHeightMm } = tier;
  const oven = tierOven(tier);
  if (oven === null) return null;
  if (ask.small !== undefined) return smallBakeFigures(oven, kitchen);
  const own = bakes.get(recipe.id);
  const figures = own ? bakeFigures(own, tin, bakeHeightMm, kitchen.locale) : null;
  return figures === null ? null : { ...figures, ...ovenFigures(oven) };
}

function bakesView({ bakes, bakeHeightMm, layers }: PlannedTier, words: OrderWords): OrderTier['bakes'] {
  if (bakes === 1) return null;
  return {
    count: countFigure(bakes),
    height: heightFigure(bakeHeightMm),
    text: words.sheet.bakes(bakes, mm(bakeHeightMm), layers / bakes),
  };
}

function levelView({ level }: PlannedTier, words: OrderWords): OrderTier['level'] {
  if (level.cutMm === 0) return null;
  const offcuts = totalFigure(level.offcutG);
  return {
    cut: heightFigure(level.cutMm),
    offcuts,
    text: words.sheet.level(mm(level.cutMm), offcuts.text, mm(level.layerMm)),
  };
}

function orderTier(
  planned: PlannedOrder,
  tier: PlannedTier,
  content: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
  boards: readonly BoardedPart[],
): OrderTier {
  const { kitchen } = content;
  const words = wordsFor(kitchen.locale);
  const own = orderWordsFor(kitchen.locale);
  const { tin, recipe, flavours, ask } = tier;
  const name = tierName(planned, tier.at, own);
  return {
    id: tierId(tier.at),
    name,
    countedName:
      ask.small === undefined ? own.count(tier.count, name) : own.beside.pieces(tier.count, ask.small.kind),
    tin: { id: tin.id, name: tin.name },
    sizeText: sizeText(tier, words, own),
    picture: pictureOfTin(tin, words),
    recipe: { id: recipe.id, name: recipe.name },
    flavours: flavours.map(({ id, name: called }) => ({ id, name: called })),
    batterText: batterName(tier),
    count: countFigure(tier.count),
    small: smallView(tier, own),
    layers: countFigure(tier.layers),
    receives: totalFigure(tier.receivesG),
    bakedHeight: heightFigure(tier.finishedHeightMm),
    bakes: bakesView(tier, own),
    layerHeight: heightFigure(tier.level.layerMm),
    level: levelView(tier, own),
    ...aroundView(tier, boards, own),
    portions: tier.portionsEach === null ? null : countFigure(tier.portionsEach),
    inRings: tier.inRings === null ? null : countFigure(tier.inRings),
    bake: bakeView(tier, content, bakes),
    finishes: tier.finishes.map((one) => placedView(one, tier, content)),
  };
}

/** The cakes, bottom first, then what stands beside them. */
export const orderTiers = (
  planned: PlannedOrder,
  content: Content,
  bakes: ReadonlyMap<string, RecipeBakes>,
  boards: readonly BoardedPart[],
): OrderTier[] => planned.tiers.map((tier) => orderTier(planned, tier, content, bakes, boards));

/** The tiers that are not cake, bottom first. */
export function orderDummies(
  planned: PlannedOrder,
  content: Content,
  boards: readonly BoardedPart[],
): OrderDummy[] {
  const { locale } = content.kitchen;
  const own = orderWordsFor(locale);
  return planned.dummies.map((dummy) => {
    const name = dummyName(planned, dummy.at, own);
    return {
      id: dummyId(dummy.at),
      ...{ name, countedName: name, small: null },
      sizeText: tinSize(dummy.tin, wordsFor(locale)),
      ...aroundView(dummy, boards, own),
      finishes: dummy.finishes.map((one) => placedView(one, { count: 1, layers: 1 }, content)),
      supplyText: own.beside.supply[dummy.ask.supply],
    };
  });
}
