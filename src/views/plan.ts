/**
 * These tins together, in one recipe: batter, eggs, weights, bowlfuls, what each tin gets and how it bakes, what
 * goes round, and how many it serves. The planner shows it as one changes the question; all figures come from the
 * computations that charts and `mix` use.
 */
import { type Mix, planMix, type TinAsk } from '../compute/mixes/plan-mix.ts';
import { tinPortions } from '../compute/portions/tin-portions.ts';
import type { Content } from '../domain/content.ts';
import type { Flavour } from '../domain/flavour.ts';
import type { EggSetting } from '../domain/kitchen.ts';
import type { PortionSize } from '../domain/portion.ts';
import { quantiseRatio } from '../domain/quantise.ts';
import type { Recipe } from '../domain/recipe.ts';
import { type Result, succeed } from '../domain/result.ts';
import type { TinCount } from '../domain/tin.ts';
import { listInWords } from '../wording/list.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { planWordsFor } from '../wording/plan/index.ts';
import { surplusInWords } from '../wording/surplus.ts';
import { tinSize } from '../wording/tin-size.ts';
import type { Words } from '../wording/words.ts';
import { bakeCautions, bakeFigures, chartBake } from './bake-figures.ts';
import { allergenCautions, chartCautions, madeWithoutCautions } from './chart-cautions.ts';
import { chartAmounts, chartColumns } from './chart-columns.ts';
import { chartInput } from './chart-inputs.ts';
import { type ChartInput, chartFormula } from './chart-mixes.ts';
import { eggSizeText } from './chart-notes.ts';
import { eggFigures } from './egg-figures.ts';
import type { Figure } from './figure.ts';
import { countFigure, heightFigure, shareFigure, totalFigure } from './figures.ts';
import { pictureOfTin } from './picture-of-tin.ts';
import type { PlanLoad, PlanTin, PlanView } from './plan.types.ts';
import {
  type CakeToFinish,
  type FinishChoice,
  type FinishedCakes,
  finishedCakes,
  planFinishes,
  unfinishedTins,
} from './plan-finishes.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { chartId } from './tin-chart.ts';

export type PlanContent = Pick<
  Content,
  'kitchen' | 'ingredients' | 'finishes' | 'finishing' | 'altitudeM' | 'portionSizes'
>;

export interface PlanQuestion {
  recipe: Recipe;
  /** In the order in which they are applied. */
  flavours: readonly Flavour[];
  tins: readonly TinCount[];
  /** Left out: the recipe's own. */
  heightMm?: number;
  /** Left out: the kitchen's. */
  egg?: EggSetting;
  finishes: readonly FinishChoice[];
  sizeId: PortionSize['id'];
  /** What the log taught; no bake times when left out. */
  bakes?: RecipeBakes;
}

export interface Planned {
  /** What the mix was worked out from: `planWorking` tells how. */
  input: ChartInput;
  mix: Mix;
  /** What goes on the cakes. */
  finished: FinishedCakes[];
  view: PlanView;
}

function planLoad(mix: Mix, at: number, input: ChartInput, words: Words): PlanLoad[] {
  const load = mix.loads[at];
  if (load === undefined) return [];
  const own = planWordsFor(input.kitchen.locale);
  const columns = chartColumns(chartFormula(input), input.kitchen.egg);
  const fills = load.tins.flatMap(({ tin, count: filled, ofParts, parts = 1 }) => {
    const name = mix.tins[tin]?.tin.name;
    if (name === undefined) return [];
    return [ofParts === undefined ? words.chart.countOfTin(filled, name) : own.partOf(parts, ofParts, name)];
  });
  return [
    {
      name: mix.loads.length === 1 ? own.onlyBowl : own.bowl(at + 1, mix.loads.length),
      batter: totalFigure(load.batterG),
      eggs: eggFigures(load.eggs, load.lines, words),
      amounts: chartAmounts(columns, load.lines, input.ingredients, words),
      fillsText: listInWords(fills, words.and),
    },
  ];
}

/** Cutting is looked up for every change of a plan: a tin's portions are worked out once for each size. */
const known = new Map<string, number | null>();

function portionsOf(tin: TinCount['tin'], size: PortionSize | undefined): number | null {
  if (size === undefined) return null;
  const key = JSON.stringify([tin.shape, tin.depthMm, size]);
  const found = known.get(key);
  if (found !== undefined) return found;
  const portions = tinPortions(tin, size)?.rows.good ?? null;
  known.set(key, portions);
  return portions;
}

function planTins(mix: Mix, input: ChartInput, size: PortionSize | undefined, words: Words): PlanTin[] {
  const { kitchen, bakes } = input;
  return mix.tins.map((filled) => {
    const { tin } = filled;
    const portions = portionsOf(tin, size);
    return {
      id: tin.id,
      name: tin.name,
      sizeText: tinSize(tin, words),
      count: filled.count,
      picture: pictureOfTin(tin, words),
      receives: totalFigure(filled.receivesG),
      rawFill: heightFigure(filled.rawFillMm),
      rawFillShare: shareFigure(quantiseRatio(filled.rawFillMm / tin.depthMm)),
      finishedHeight: heightFigure(filled.finishedHeightMm),
      bake: bakes ? bakeFigures(bakes, tin, filled.finishedHeightMm, kitchen.locale) : null,
      portions: portions === null ? null : countFigure(portions),
      warnings: filled.warnings,
    };
  });
}

function allPortions(tins: readonly PlanTin[]): Figure | null {
  const known = tins.flatMap(({ portions, count: cakes }) => (portions ? [portions.value * cakes] : []));
  return known.length < tins.length ? null : countFigure(known.reduce((sum, each) => sum + each, 0));
}

function planView(
  { mix, input, finished }: Omit<Planned, 'view'>,
  question: PlanQuestion,
  content: PlanContent,
): PlanView {
  const { kitchen, recipe, flavours } = input;
  const words = wordsFor(kitchen.locale);
  const formula = chartFormula(input);
  const columns = chartColumns(formula, kitchen.egg);
  const named = flavours?.named ?? [];
  const tins = planTins(
    mix,
    input,
    content.portionSizes.find(({ id }) => id === question.sizeId),
    words,
  );
  const finishInput = { ...content, kitchen };
  const finishes = planFinishes(finished, finishInput);
  const finishIds = finishes.flatMap(
    ({ finish }) =>
      content.finishes.find(({ id }) => id === finish.id)?.parts.map(({ ingredientId }) => ingredientId) ??
      [],
  );
  const title = words.chart.title(
    recipe.name,
    named.map(({ name }) => name),
  );
  const own = new Set(mix.tins.flatMap(({ warnings }) => warnings.map(({ message }) => message)));
  return {
    chartId: chartId(input),
    recipe: { id: recipe.id, name: recipe.name },
    flavours: named,
    title,
    batter: totalFigure(mix.batterG),
    eggs: eggFigures(mix.eggs, mix.lines, words),
    eggSizeText: eggSizeText(kitchen.egg, words),
    columns,
    amounts: chartAmounts(columns, mix.lines, input.ingredients, words),
    loads: mix.loads.flatMap((_, at) => planLoad(mix, at, input, words)),
    tins,
    surplusText: surplusInWords(mix.surplusG, kitchen.fairyCaseG, words),
    finishes,
    unfinished: question.finishes.length === 0 ? [] : unfinishedTins(finished, finishInput),
    portions: allPortions(tins),
    bake: input.bakes ? chartBake(input.bakes, kitchen.locale) : null,
    warnings: mix.warnings.filter(({ message }) => !own.has(message)),
    cautions: [
      ...madeWithoutCautions(recipe.formula, formula, input.ingredients, words),
      ...chartCautions(formula, input.ingredients, words),
      ...(finishIds.length === 0
        ? []
        : allergenCautions(finishIds, content.ingredients, words).map(({ code, text }) => ({
            code: `finish-${code}`,
            text,
          }))),
      ...bakeCautions(
        tins.map(({ bake }) => bake),
        kitchen.locale,
      ),
    ],
  };
}

/**
 * The plan, or what is wrong with the question.
 * @example plan({ recipe, flavours: [], tins: [{ tin, count: 2 }], finishes: [], sizeId: 'dessert' }, content)
 */
export function plan(question: PlanQuestion, content: PlanContent): Result<Planned> {
  const { recipe, tins, heightMm, egg, bakes } = question;
  const kitchen = egg === undefined ? content.kitchen : { ...content.kitchen, egg };
  const input = chartInput({ ...content, kitchen, recipes: [recipe] }, recipe, question.flavours, bakes);
  const asks = tins.map((ask): TinAsk => (heightMm === undefined ? ask : { ...ask, heightMm }));
  const asked = { recipe, formula: chartFormula(input), asks, kitchen };
  const mix = planMix(
    input.flavours === undefined
      ? { ...asked, flavours: { flavourIds: [], growth: 1, warnings: [] } }
      : { ...asked, flavours: input.flavours },
  );
  if (!mix.ok) return mix;
  const cakes = mix.value.tins.map(
    ({ tin, count, finishedHeightMm: heightMm }): CakeToFinish => ({
      tin,
      count,
      heightMm,
      layers: recipe.layers,
    }),
  );
  const worked = { input, mix: mix.value, finished: finishedCakes(question.finishes, cakes, content) };
  return succeed({ ...worked, view: planView(worked, question, content) });
}
