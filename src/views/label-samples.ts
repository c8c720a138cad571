/**
 * A label for every recipe, plain and with each of its flavours, before there is an order: the batter of the sample
 * tin with the finishes that the kitchen names under `label: sample`. A cake that is not cut into layers is
 * labelled plain. Without a sample tin, or where the tin does not suit, the recipe as it is written.
 */
import { finishingFor } from '../compute/finishes/finishing.ts';
import { type LabelFinish, type LabelInput, NO_FACTS, type WeighedIn } from '../compute/labels/label.ts';
import { spongeKeepsDays, spongeUsual } from '../compute/labels/sponge-usual.ts';
import { planMix } from '../compute/mixes/plan-mix.ts';
import { tinPortions } from '../compute/portions/tin-portions.ts';
import type { Content } from '../domain/content.ts';
import type { Finish } from '../domain/finish.ts';
import type { LabelSample } from '../domain/label-settings.ts';
import type { Recipe } from '../domain/recipe.ts';
import type { Tin } from '../domain/tin.ts';
import { type Combination, chartCombinations, chartInput } from './chart-inputs.ts';
import { chartFormula } from './chart-mixes.ts';
import { labelOutcome } from './label.ts';
import type { SampleLabel } from './label.types.ts';
import { labelFoodName } from './label-food-name.ts';
import { rememberedBy } from './remembered-by.ts';

const LABEL_PARTS = [
  ...(['kitchen', 'ingredients', 'recipes', 'flavours', 'finishes', 'finishing', 'altitudeM'] as const),
  ...(['printables', 'business', 'label', 'portionSizes', 'times'] as const),
] as const satisfies readonly (keyof Content)[];

export type LabelContent = Pick<Content, (typeof LABEL_PARTS)[number]>;

/** What one tin gets of a rounded mix, line by line. */
function weighedIn(combination: Combination, tin: Tin | undefined, content: LabelContent): WeighedIn[] {
  const { recipe, flavours } = combination;
  const input = chartInput(content, recipe, flavours);
  const formula = chartFormula(input);
  const asked = { recipe, formula, kitchen: content.kitchen };
  const mix =
    tin === undefined
      ? null
      : planMix({
          ...asked,
          ...(input.flavours ? { flavours: input.flavours } : {}),
          asks: [{ tin, count: 1 }],
        });
  if (mix === null || !mix.ok) return formula.map(({ ingredientId, grams }) => ({ ingredientId, grams }));
  const { lines, batterG, tins } = mix.value;
  const share = Math.min(1, (tins[0]?.receivesG ?? batterG) / batterG);
  return lines.map(({ ingredientId, grams }) => ({ ingredientId, grams: grams * share }));
}

interface SampleCake {
  tin: Tin | undefined;
  finishes: LabelFinish[];
}

function onCake(
  finish: Finish,
  use: LabelFinish['use'],
  recipe: Recipe,
  tin: Tin,
  content: LabelContent,
): LabelFinish[] {
  const settings = { ...content.finishing, cakeHeightMm: recipe.finishedHeightMm, layers: recipe.layers };
  const amount = finishingFor(tin, [finish], settings)?.amounts.find((one) => one.use === use);
  return amount === undefined || amount.neededG === 0 ? [] : [{ finish, use, onCakeG: amount.neededG }];
}

function sampleCake(recipe: Recipe, sample: LabelSample | undefined, content: LabelContent): SampleCake {
  const tin = content.kitchen.tins.find(({ id }) => id === sample?.tinId);
  if (tin === undefined || sample === undefined) return { tin: undefined, finishes: [] };
  const asks = recipe.layers > 1 ? sample.finishes : [];
  const finishes = asks.flatMap(({ finishId, use }) => {
    const finish = content.finishes.find(({ id }) => id === finishId);
    return finish === undefined ? [] : onCake(finish, use, recipe, tin, content);
  });
  return { tin, finishes };
}

function portionsOf(tin: Tin | undefined, { portionSizes }: LabelContent): number | null {
  const [size] = portionSizes;
  if (tin === undefined || size === undefined) return null;
  const good = tinPortions(tin, size)?.rows.good ?? 0;
  return good > 0 ? good : null;
}

function sampleInput(
  combination: Combination,
  cake: SampleCake,
  portions: number | null,
  content: LabelContent,
): LabelInput {
  const { recipe, flavours } = combination;
  const usual = spongeUsual(recipe);
  return {
    id: [recipe.id, ...flavours.map(({ id }) => id)].join('--'),
    foodName: labelFoodName({ ...combination, finishes: cake.finishes }, content.kitchen),
    sponges: [
      {
        name: recipe.name,
        formula: weighedIn(combination, cake.tin, content),
        waterLossShare: usual.waterLossShare,
        keepsDays: spongeKeepsDays(recipe, content.times),
      },
    ],
    finishes: cake.finishes,
    ingredients: content.ingredients,
    settings: content.label,
    business: content.business,
    portions,
    named: null,
    facts: NO_FACTS,
  };
}

/** A finish that the cake's own name rules out is left off: butter has no place on 'made without milk'. */
function sampleOutcome(
  combination: Combination,
  cake: SampleCake,
  portions: number | null,
  content: LabelContent,
) {
  const whole = labelOutcome(sampleInput(combination, cake, portions, content), content.kitchen);
  if (cake.finishes.length === 0 || whole.refusals.every(({ code }) => code !== 'label-name-untrue'))
    return whole;
  const plain = { ...cake, finishes: [] };
  return labelOutcome(sampleInput(combination, plain, portions, content), content.kitchen);
}

function allSamples(content: LabelContent): SampleLabel[] {
  const tin = content.kitchen.tins.find(({ id }) => id === content.label.sample?.tinId);
  const portions = portionsOf(tin, content);
  return chartCombinations(content).map((combination) => {
    const { recipe, flavours } = combination;
    const cake = sampleCake(recipe, content.label.sample, content);
    return {
      ...sampleOutcome(combination, cake, portions, content),
      recipe: { id: recipe.id, name: recipe.name },
      flavours: flavours.map(({ id, name }) => ({ id, name })),
    };
  });
}

/** The sample labels of a kitchen, in the order of its charts; those who ask for the same are answered once. */
export const sampleLabels: (content: LabelContent) => SampleLabel[] = rememberedBy(LABEL_PARTS, allSamples);
