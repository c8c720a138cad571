/**
 * What goes on a recipe card? The chart's own figures for the tins it fills best, the method as written and what
 * its flavours change, the oven on every dial, how to tell that the cake is done, and the cautions.
 */
import { bowlLimitG } from '../compute/loads/index.ts';
import type { Flavour } from '../domain/flavour.ts';
import { type Kitchen, ovenNamed } from '../domain/kitchen.ts';
import type { Recipe } from '../domain/recipe.ts';
import { bakeWordsFor } from '../wording/bake/index.ts';
import { keptUnits } from '../wording/kept-units.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { cardWordsFor } from '../wording/recipe-card/index.ts';
import { dialTextsOf } from './bake-figures.ts';
import { cardCautions, withoutAllergenList } from './card-cautions.ts';
import { methodPieces } from './method-text.ts';
import { workingPath } from './nav.ts';
import type { CardBake, CardTin, RecipeCardView } from './recipe-card.types.ts';
import type { TinChartRow, TinChartView } from './tin-chart.types.ts';

export interface CardSource {
  kitchen: Kitchen;
  recipe: Recipe;
  /** Flavours of the kitchen: those of the chart are told of in the method. */
  flavours?: readonly Flavour[];
  chart: TinChartView;
  /** The unit that the chart's weights are shown in; grams when left out. */
  mass?: 'g' | 'oz';
  /** Only these tins; every owned one when left out. */
  tinIds?: readonly string[];
}

const share = ({ surplus, batter }: TinChartRow): number => Math.abs(surplus.value) / batter.value;

/** Tins the recipe was proven in, then the rest; those with warnings last; then least over or short. */
function bestFirst(rows: readonly TinChartRow[], { provenBakes }: Recipe): TinChartRow[] {
  const proven = new Set(provenBakes.flatMap(({ tins }) => tins.map(({ tin }) => tin.id)));
  const rank = (row: TinChartRow): number =>
    (row.warnings.length > 0 ? 2 : 0) + (proven.has(row.tinId) ? 0 : 1);
  return [...rows].sort(
    (a, b) => rank(a) - rank(b) || share(a) - share(b) || rows.indexOf(a) - rows.indexOf(b),
  );
}

function oneForEachTin(rows: readonly TinChartRow[]): TinChartRow[] {
  const seen = new Set<string>();
  return rows.filter(({ tinId }) => {
    if (seen.has(tinId)) return false;
    seen.add(tinId);
    return true;
  });
}

/** 'Eight-inch square' needs no 'square 8 × 3 in' below it, and a measured tin no word for its shape: '8 × 3 in'. */
function sizeBeside(name: string, sizeText: string, measured: boolean): string {
  const [shape = '', rest] = /^([a-z]+) (.+)$/.exec(sizeText)?.slice(1) ?? [];
  return rest !== undefined && (measured || name.toLowerCase().includes(shape)) ? rest : sizeText;
}

function cardBake({ bake }: TinChartRow): CardBake | null {
  if (!bake) return null;
  const { dial, firstLook, expectedBy, core, band } = bake;
  return { dial, firstLook, expectedBy, core, band };
}

/** What the chart says once for all its tins stands with those that it concerns. */
function warningsOf(row: TinChartRow, { kitchen, recipe, chart }: CardSource): string[] {
  const { minimumG } = bowlLimitG(kitchen.mixer, recipe.rawDensityGPerMl);
  const tooLittle = row.batterEach.value * row.count < minimumG;
  const shared = chart.warnings.filter(({ code }) => code === 'bowl-low' && tooLittle);
  return [...row.warnings, ...shared].map(({ message }) => keptUnits(message));
}

function cardTin(row: TinChartRow, source: CardSource): CardTin {
  const { id, sizeText, eggs, batter, amounts, rawFill } = row;
  return {
    id,
    name: row.count > 1 ? `${row.tinName}\u00a0×\u00a0${row.count}` : row.tinName,
    sizeText: sizeBeside(row.tinName, sizeText, row.picture.plan === null),
    eggs,
    batter,
    amounts,
    rawFill,
    bake: cardBake(row),
    warnings: warningsOf(row, source),
  };
}

function flavoursTold(chart: TinChartView, flavours: readonly Flavour[]): RecipeCardView['flavours'] {
  const used = chart.flavours.flatMap(({ id }) => flavours.find((flavour) => flavour.id === id) ?? []);
  return used.flatMap(({ name, method }) =>
    method === undefined ? [] : [{ name, text: keptUnits(method.replace(/\s+/g, ' ').trim()) }],
  );
}

function summaryOf({ summary }: Recipe, chart: TinChartView, flavours: readonly Flavour[]): string {
  const own = chart.flavours.flatMap(
    ({ id }) => flavours.find((flavour) => flavour.id === id)?.summary ?? [],
  );
  return own.length === 0 ? summary : own.join(' ');
}

function workingUrlOf({ siteUrl }: Kitchen, { id }: TinChartView): string | null {
  return siteUrl === undefined ? null : `${siteUrl.replace(/\/*$/, '')}/${workingPath(id)}`;
}

/** The card of one chart; its figures are the chart's. */
export function recipeCardView(source: CardSource): RecipeCardView {
  const { kitchen, recipe, chart, flavours = [], mass = 'g', tinIds } = source;
  const rows = chart.rows.filter(({ tinId }) => tinIds?.includes(tinId) ?? true);
  const best = oneForEachTin(bestFirst(rows, recipe));
  const { set, others } = dialTextsOf(
    recipe.ovenC,
    ovenNamed(kitchen, recipe.ovenId),
    bakeWordsFor(kitchen.locale),
  );
  const words = cardWordsFor(kitchen.locale);
  const method = methodPieces(recipe.methodMarkdown);
  const cautions = cardCautions(chart.cautions, method, words);
  return {
    id: chart.id,
    title: chart.title,
    recipe: chart.recipe,
    kitchenName: chart.kitchenName,
    edition: chart.edition,
    summary: summaryOf(recipe, chart, flavours),
    ovenText: keptUnits(others === '' ? set : `${set} (${others})`),
    heightText: keptUnits(chart.finishedHeightText),
    eggSizeText: rows.some(({ eggs }) => eggs !== null) ? keptUnits(chart.eggSizeText) : null,
    mass,
    columns: chart.columns,
    tins: best.map((row) => cardTin(row, source)),
    sizeRank: best.map((row) => chart.rows.indexOf(row)),
    bakeBasisText: best.some(({ bake }) => bake) ? (chart.bake?.basisText ?? null) : null,
    methodTimes: words.givesTimes.test(recipe.methodMarkdown),
    flavours: flavoursTold(chart, flavours),
    method: withoutAllergenList(method, words),
    readyText: wordsFor(kitchen.locale).cautions.ready,
    warnings: chart.warnings
      .filter(({ code }) => code !== 'bowl-low')
      .map(({ message }) => keptUnits(message)),
    allergens: cautions.allergens,
    cautions: cautions.others,
    workingUrl: workingUrlOf(kitchen, chart),
  };
}
