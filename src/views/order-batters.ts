/** Batter bowl by bowl: eggs, weights and what goes into which tin, for one order or for several sharing a bowl. */

import type { LoadTin, MixLoad } from '../compute/mixes/plan-mix.ts';
import type { PlannedTier } from '../compute/orders/planned-order.types.ts';
import type { MixOfTiers } from '../compute/orders/work-of.ts';
import type { Ingredient } from '../domain/ingredient.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseG } from '../domain/quantise.ts';
import { eggsInWords } from '../wording/eggs.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatWholeGrams } from '../wording/mass.ts';
import { formatNumber } from '../wording/number.ts';
import { type OrderWords, orderWordsFor } from '../wording/orders/index.ts';
import { spoonsFor } from '../wording/spoons.ts';
import { NOTHING_G, surplusInWords } from '../wording/surplus.ts';
import type { Words } from '../wording/words.ts';
import type { Figure } from './figure.ts';
import { totalFigure, weighedFigure, wholeEggsFigure } from './figures.ts';
import type { BatterView, Bowlful, BowlfulTin, WeighedLine } from './order.types.ts';
import { bakedWith } from './oven-figures.ts';

export interface BatterInput {
  kitchen: Kitchen;
  ingredients: readonly Ingredient[];
  /** How a tier is called: by itself, or with its order. */
  nameOf(ref: MixOfTiers['tiers'][number]): string;
  /** The tier itself. */
  tierOf(ref: MixOfTiers['tiers'][number]): PlannedTier | undefined;
}

interface Setting extends BatterInput {
  words: Words;
  own: OrderWords;
}

export const countFigure = (count: number): Figure => ({
  value: count,
  unit: 'count',
  text: formatNumber(count, 0),
});

function bowlfulTin(load: LoadTin, mix: MixOfTiers, { nameOf, tierOf, own, kitchen }: Setting): BowlfulTin[] {
  const ref = mix.tiers[load.tin];
  const of = mix.mix.tins[load.tin];
  if (ref === undefined || of === undefined) return [];
  const { tin, pieces } = of;
  const { ofParts, parts = 1 } = load;
  const tins = ofParts === undefined ? load.count : 1;
  const share = tins * (ofParts === undefined ? (pieces ?? 1) : 1);
  return [
    {
      name: nameOf(ref),
      tinName: tin.name,
      count: countFigure(load.count),
      each: totalFigure(quantiseG(load.receivesG / share)),
      aidText: bakedWith(tierOf(ref), kitchen.locale),
      partText: ofParts === undefined ? null : own.partOf(parts, ofParts, tin.name),
      pieces: pieces === undefined || ofParts !== undefined ? null : countFigure(tins * pieces),
    },
  ];
}

/** What stands beside the grams: which cakes, in which tins or cups, and with what in or round them. */
export const intoText = (
  { name, tinName, count, partText, pieces, aidText }: BowlfulTin,
  words: OrderWords,
): string => {
  const tins = partText ?? words.count(count.value, tinName);
  const into =
    pieces === null
      ? words.sheet.intoTin(name, tins, count.value)
      : words.beside.intoCups(name, pieces.value, tins);
  return aidText === '' ? into : `${into}, ${aidText}`;
};

/** A shortfall is in the tins' weights already; a gram or less of it is nothing to tell. */
const LEAST_SHORT_G = 1;

/** What a bowl leaves: nothing where bowl and tins are the same in the whole grams that they are told in. */
function afterFilling({ batterG, surplusG }: MixLoad, { own, kitchen, words }: Setting): string {
  if (surplusG <= -LEAST_SHORT_G)
    return own.papers.shortAfterFilling(`${formatWholeGrams(-surplusG)}\u00a0g`);
  const looksEven = formatWholeGrams(batterG) === formatWholeGrams(batterG - surplusG);
  if (surplusG < NOTHING_G || looksEven) return own.papers.nothingAfterFilling;
  return own.sheet.surplus(surplusInWords(surplusG, kitchen.fairyCaseG, words));
}

/** Eggs counted or beaten; where the kitchen weighs beaten egg it is a line like the others. */
function eggsOf({ eggs, lines }: MixLoad, words: Words): Pick<Bowlful, 'eggs' | 'eggsText'> {
  if (eggs === null || eggs.rule === 'weigh') return { eggs: [], eggsText: null };
  return {
    eggsText: eggsInWords(eggs.parts, words),
    eggs: eggs.parts.map(({ ingredientId, part, whole }) => ({
      part,
      partText: whole === 1 ? words.eggParts[part].one : words.eggParts[part].many,
      count: wholeEggsFigure(whole),
      grams: totalFigure(lines.find((line) => line.ingredientId === ingredientId)?.grams ?? 0),
    })),
  };
}

function linesOf({ eggs, lines }: MixLoad, { ingredients, words }: Setting): WeighedLine[] {
  return lines
    .filter(({ eggPart, grams }) => grams > 0 && (eggPart === undefined || eggs?.rule === 'weigh'))
    .map(({ ingredientId, name, grams }) => ({
      ingredient: { id: ingredientId, name },
      grams: weighedFigure(grams),
      beside: spoonsFor(
        grams,
        ingredients.find(({ id }) => id === ingredientId),
        words,
      ),
    }));
}

/** Bowls of one batter before this mix, and in all: timetables number them on through every mix of it. */
interface BowlCount {
  before: number;
  of: number;
}

const batterKey = ({ recipe, flavours }: MixOfTiers): string =>
  [recipe.id, ...flavours.map(({ id }) => id)].join('+');

function bowlCount(mixes: readonly MixOfTiers[], at: number, key: string): BowlCount {
  const bowls = (some: readonly MixOfTiers[]): number =>
    some.reduce((sum, one) => sum + (batterKey(one) === key ? one.mix.loads.length : 0), 0);
  return { before: bowls(mixes.slice(0, at)), of: bowls(mixes) };
}

function bowlful(load: MixLoad, at: number, mix: MixOfTiers, count: BowlCount, setting: Setting): Bowlful {
  const { before, of } = count;
  return {
    id: `bowl-${at + 1}`,
    name: of === 1 ? setting.own.onlyBowl : setting.own.bowl(before + at + 1, of),
    batter: totalFigure(load.batterG),
    ...eggsOf(load, setting.words),
    lines: linesOf(load, setting),
    tins: load.tins.flatMap((tin) => bowlfulTin(tin, mix, setting)),
    surplus: totalFigure(load.surplusG),
    afterText: afterFilling(load, setting),
  };
}

/** The mixes of an order or a week, bowl by bowl. */
export function batterViews(mixes: readonly MixOfTiers[], input: BatterInput): BatterView[] {
  const { kitchen } = input;
  const words = wordsFor(kitchen.locale);
  const own = orderWordsFor(kitchen.locale);
  const setting = { ...input, words, own };
  return mixes.map((planned, at) => {
    const { mix, recipe, flavours } = planned;
    const count = bowlCount(mixes, at, batterKey(planned));
    return {
      id: `mix-${at + 1}`,
      name: own.mixOf(
        recipe.name,
        flavours.map(({ name }) => name),
      ),
      recipe: { id: recipe.id, name: recipe.name },
      flavours: flavours.map(({ id, name }) => ({ id, name })),
      batter: totalFigure(mix.batterG),
      eggs: mix.eggs === null ? null : wholeEggsFigure(mix.eggs.whole),
      surplus: totalFigure(mix.surplusG),
      bowlfuls: mix.loads.map((load, index) => bowlful(load, index, planned, count, setting)),
    };
  });
}
