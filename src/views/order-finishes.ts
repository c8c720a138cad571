/** What is made to fill and cover an order, each finish in one go. */

import type { PlannedFinish, PlannedOrder, PlannedTier } from '../compute/orders/plan-order.ts';
import type { Content } from '../domain/content.ts';
import { quantiseG } from '../domain/quantise.ts';
import { finishingWordsFor } from '../wording/finishing/index.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatShare } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { uncapitalised } from '../wording/sentence-case.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { NOTHING_G } from '../wording/surplus.ts';
import { totalFigure, weighedFigure } from './figures.ts';
import type { FinishView, WeighedLine } from './order.types.ts';
import { dummyName, tierName } from './order-names.ts';

function weighedLines({ finish, lines }: PlannedFinish, content: Content): WeighedLine[] {
  const { kitchen, ingredients } = content;
  const words = wordsFor(kitchen.locale);
  const finishing = finishingWordsFor(kitchen.locale);
  return lines.map(({ ingredientId, name, grams, eggs }, at) => {
    const item = ingredients.find(({ id }) => id === ingredientId);
    const part = finish.parts[at]?.eggPart;
    const { one, many } = words.eggParts[part ?? 'egg'];
    return {
      ingredient: { id: ingredientId, name },
      grams: weighedFigure(grams),
      beside:
        eggs === null ? spoonsFor(grams, item, words) : finishing.fromEggs(eggs, eggs === 1 ? one : many),
    };
  });
}

/** 'the bottom tier and the top tier': the cakes that a finish goes on. */
function forWhom(planned: PlannedOrder, finishId: string, content: Content): string {
  const { kitchen } = content;
  const words = orderWordsFor(kitchen.locale);
  const isOn = ({ finishes }: Pick<PlannedTier, 'finishes'>): boolean =>
    finishes.some(({ finish }) => finish.id === finishId);
  const names = [
    ...planned.tiers.filter(isOn).map(({ at }) => tierName(planned, at, words)),
    ...planned.dummies.filter(isOn).map(({ at }) => dummyName(planned, at, words)),
  ];
  const lower = names.map((name) => uncapitalised(name));
  return words.finishFor(listInWords(lower, wordsFor(kitchen.locale).and));
}

/** How much of it is tinted in which colour. */
function coloursView(
  { colours }: PlannedFinish,
  { kitchen }: Content,
): Pick<FinishView, 'colours' | 'coloursText'> {
  const words = orderWordsFor(kitchen.locale);
  const named = colours.map(({ colour, makeG }) => ({
    name: colour ?? words.plainColour,
    make: totalFigure(makeG),
  }));
  const list = named.map(({ name, make }) => `${make.text}\u00a0g ${name}`);
  return {
    colours: named,
    coloursText: list.length === 0 ? '' : words.coloured(listInWords(list, wordsFor(kitchen.locale).and)),
  };
}

/** What is made beyond what goes on the cakes, from the two amounts themselves. */
function spareText({ finish, makeG, neededG }: PlannedFinish, { kitchen }: Content): string {
  const { papers } = orderWordsFor(kitchen.locale);
  if (neededG === 0 || makeG - neededG < NOTHING_G) return '';
  if (finish.use.rolled !== undefined)
    return papers.trimmings(`${totalFigure(quantiseG(makeG - neededG)).text}\u00a0g`);
  return papers.toSpare(formatShare(makeG / neededG - 1));
}

function boilsAwayText({ finish }: PlannedFinish, { kitchen }: Content): string {
  const { cookingLossShare } = finish;
  if (cookingLossShare === 0) return '';
  return orderWordsFor(kitchen.locale).papers.boilsAway(formatShare(cookingLossShare));
}

/** The finishes of an order, in the order in which they go on. */
export function orderFinishes(planned: PlannedOrder, content: Content): FinishView[] {
  const finishing = finishingWordsFor(content.kitchen.locale);
  return planned.finishes.map((made) => ({
    finish: { id: made.finish.id, name: made.finish.name },
    kindText: finishing.kinds[made.finish.kind],
    make: totalFigure(made.makeG),
    needed: totalFigure(made.neededG),
    lines: weighedLines(made, content),
    ...coloursView(made, content),
    spareText: spareText(made, content),
    boilsAwayText: boilsAwayText(made, content),
    forText: forWhom(planned, made.finish.id, content),
    keepsText: finishing.keeps(made.finish.keepsDays, made.finish.chilled),
    methodMarkdown: made.finish.methodMarkdown,
  }));
}

/** 'Raspberry jam, 368 g, with 8 % to spare'. */
export function finishTitle(
  { finish, make, spareText: spare }: Pick<FinishView, 'finish' | 'make' | 'spareText'>,
  { sheet }: OrderWords,
): string {
  const title = sheet.finishMade(finish.name, make.text);
  return spare === '' ? title : `${title}, ${spare}`;
}
