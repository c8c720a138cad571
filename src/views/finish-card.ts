/**
 * What goes on a finish card? Batches in round weights, shared among the parts as the kitchen's scale weighs them;
 * the method as written; how it keeps; the finishing chart's own amounts for a few tins; and the cautions.
 */

import { finishWeights } from '../compute/finishes/parts.ts';
import { isPoured } from '../compute/finishes/poured.ts';
import { hasRawEggGlaze, hasRawWhite } from '../compute/finishes/raw-white.ts';
import { weighedPartsG } from '../compute/finishes/weighed-parts.ts';
import type { Finish } from '../domain/finish.ts';
import { quantiseG } from '../domain/quantise.ts';
import { G_PER } from '../domain/units.ts';
import { type FinishCardWords, finishCardWordsFor } from '../wording/finish-card/index.ts';
import { finishingWordsFor } from '../wording/finishing/index.ts';
import { keptUnits } from '../wording/kept-units.ts';
import { formatLength } from '../wording/length.ts';
import { formatShare } from '../wording/number.ts';
import { orderWordsFor } from '../wording/orders/index.ts';
import type { Caution } from './figure.ts';
import { totalFigure } from './figures.ts';
import type { FinishBatch, FinishCardTin, FinishCardView } from './finish-card.types.ts';
import type { FinishingContent } from './finishing-chart.ts';
import type { FinishingChartView, FinishSummary } from './finishing-chart.types.ts';
import { type Mass, usualMass } from './home-units.ts';
import { methodPieces } from './method-text.ts';
import { finishPath } from './nav.ts';
import { partAmount } from './part-amount.ts';

/** What a batch comes to, in round weights of the kitchen's country; syrup is made in small ones. */
const BATCHES: Record<Mass, readonly number[]> = { g: [100, 250, 500, 1000, 2000], oz: [4, 8, 16, 32, 64] };
const ON_CARD = 4;

/** More than a card has room for. */
const MOST_TINS = 6;

export interface FinishCardSource {
  content: FinishingContent;
  /** The chart that the tins' amounts are taken from. */
  chart: FinishingChartView;
}

function batchSizesG({ use }: Finish, mass: Mass): number[] {
  const small = Object.keys(use).every((name) => name === 'brushed');
  const sizes = small ? BATCHES[mass].slice(0, ON_CARD) : BATCHES[mass].slice(-ON_CARD);
  return sizes.map((size) => (mass === 'oz' ? size * G_PER.oz : size));
}

function batch(finish: Finish, makeG: number, { kitchen, ingredients }: FinishingContent): FinishBatch {
  const { partsG } = finishWeights({ ...finish, lossShare: 0 }, makeG);
  const grams = weighedPartsG(finish, partsG.map(quantiseG), kitchen.scale);
  return {
    make: totalFigure(quantiseG(makeG)),
    parts: finish.parts.map((part, at) => partAmount(part, grams[at] ?? 0, { kitchen, ingredients })),
  };
}

/** Most cakes that are coated come from round tins, then from square ones; of each first what there is most of. */
const RANK: readonly string[] = ['round', 'square'];

/** A few tins, in order of size. */
function tinsOf(
  finishId: string,
  { columns, rows }: FinishingChartView,
  { tins }: FinishingContent['kitchen'],
): FinishCardTin[] {
  const rankOf = (tinId: string): number => {
    const at = RANK.indexOf(tins.find(({ id }) => id === tinId)?.shape.kind ?? '');
    return at < 0 ? RANK.length : at;
  };
  const places = columns.flatMap(({ finish }, at) => (finish.id === finishId ? [at] : []));
  const told = rows.map(({ id, tinName, sizeText, owned, cells }) => ({
    owned,
    tin: {
      ...{ id, name: tinName, sizeText },
      uses: places.map((at) => {
        const cell = cells[at] ?? null;
        return cell === null ? null : { make: cell.make, sheetText: cell.sheet?.text ?? null };
      }),
    },
  }));
  const used = told.filter(({ tin }) => tin.uses.some((use) => use !== null));
  const most = [...used]
    .sort((a, b) => rankOf(a.tin.id) - rankOf(b.tin.id) || b.owned - a.owned)
    .slice(0, MOST_TINS);
  return used.filter((one) => most.includes(one)).map(({ tin }) => tin);
}

/** What may hurt someone, unless the method's own cautions already tell of it. */
function cautionsOf(
  finish: Finish,
  summary: FinishSummary,
  { kitchen: { locale } }: FinishingContent,
  words: FinishCardWords,
): Caution[] {
  const { hot } = finishingWordsFor(locale).cautions;
  const { rawWhite, rawGlaze } = orderWordsFor(locale).cautions;
  const isHot = finish.kind === 'syrup' || finish.cookingLossShare > 0;
  const told = methodPieces(finish.methodMarkdown).flatMap((piece) =>
    piece.kind === 'paragraph' && piece.caution ? [piece.spans.map(({ text }) => text).join('')] : [],
  );
  const tells = (pattern: RegExp): boolean => told.some((text) => pattern.test(text));
  return [
    ...summary.cautions,
    ...(isHot && !tells(words.tellsOfHeat) ? [{ code: 'hot-sugar', text: hot }] : []),
    ...(hasRawWhite({ finish }) ? [{ code: 'raw-white', text: rawWhite }] : []),
    ...(hasRawEggGlaze({ finish }) ? [{ code: 'raw-glaze', text: rawGlaze }] : []),
  ];
}

function tinsText(finish: Finish, { finishing }: FinishingContent, words: FinishCardWords): string {
  const { cakeHeightMm, layers } = finishing;
  const cake = words.forTinsAbout(formatLength(cakeHeightMm, 'mm'), layers);
  if (finish.lossShare === 0) return `${cake}.`;
  const spare = isPoured(finish) ? words.spareOfPoured : words.spare;
  return `${cake}, ${spare(formatShare(finish.lossShare))}.`;
}

function cardOf(finish: Finish, summary: FinishSummary, source: FinishCardSource): FinishCardView {
  const { content, chart } = source;
  const { kitchen } = content;
  const mass = usualMass(kitchen);
  const words = finishCardWordsFor(kitchen.locale);
  const { cookingLossShare } = finish;
  const isBought = finish.parts.length === 1;
  return {
    id: finish.id,
    title: finish.name,
    kitchenName: kitchen.name,
    edition: kitchen.edition,
    partsText: isBought ? words.bought : summary.partsText,
    keepsText: summary.keepsText,
    mass,
    parts: finish.parts.map(({ ingredientId, name }) => ({ id: ingredientId, name })),
    batches: isBought ? [] : batchSizesG(finish, mass).map((makeG) => batch(finish, makeG, content)),
    boilsAwayText: cookingLossShare === 0 ? null : words.boilsAway(formatShare(cookingLossShare)),
    uses: chart.columns
      .filter((column) => column.finish.id === finish.id)
      .map(({ use, useText }) => ({ id: use, text: keptUnits(useText) })),
    tins: tinsOf(finish.id, chart, kitchen),
    tinsText: keptUnits(tinsText(finish, content, words)),
    method: methodPieces(finish.methodMarkdown),
    cautions: cautionsOf(finish, summary, content, words),
    pageUrl:
      kitchen.siteUrl === undefined
        ? null
        : `${kitchen.siteUrl.replace(/\/*$/, '')}/${finishPath(finish.id)}`,
  };
}

/** The cards of a finishing chart's finishes, in its order. */
export const finishCardViews = (source: FinishCardSource): FinishCardView[] =>
  source.chart.finishes.flatMap((summary) => {
    const finish = source.content.finishes.find(({ id }) => id === summary.id);
    return finish === undefined ? [] : [cardOf(finish, summary, source)];
  });
