/**
 * What the kitchen wants printed of one kind: everything, or what `printables` lists, each entry as a content of
 * its own that holds only the recipes, tins, finishes and papers asked for.
 */
import type { Content } from '../domain/content.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { type CardSize, PRINT_KINDS, type Printable, type WallSize } from '../domain/printable.ts';
import type { BakeGuideView } from './bake-guide.types.ts';
import { bakesOfRecipes, chartInput } from './chart-inputs.ts';
import type { PrintedViews } from './chart-views.ts';
import { inHomeUnits, type Mass, usualMass } from './home-units.ts';
import { chartInOunces } from './in-ounces.ts';
import type { RecipeBakes } from './recipe-bakes.ts';
import { tinChartView } from './tin-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';

export interface WantedPrints {
  /** Sets the files apart; null for the usual ones. */
  name: string | null;
  content: Content;
  /** Charts of the recipes and flavours asked for, with the tins asked for, in the unit asked for. */
  charts: { readonly chart: TinChartView }[];
  /** How the recipes asked for bake. */
  guides: BakeGuideView[];
  mass: Mass;
  /** Null for the sizes that are usual. */
  cardSizes: CardSize[] | null;
  wallSizes: WallSize[] | null;
  /** Null for all. */
  orderIds: string[] | null;
}

function only<T extends { id: string }>(all: T[], ids: readonly string[] | undefined): T[] {
  return ids === undefined ? all : all.filter(({ id }) => ids.includes(id));
}

function narrowed(content: Content, { recipeIds, tinIds, finishIds, papers }: Printable): Content {
  const { kitchen } = content;
  return {
    ...content,
    kitchen: { ...kitchen, tins: only(kitchen.tins, tinIds), paper: papers ?? kitchen.paper },
    recipes: only(content.recipes, recipeIds),
    finishes: only(content.finishes, finishIds),
  };
}

const flavoursOf = ({ flavours }: TinChartView): string => flavours.map(({ id }) => id).join(' ');

type OneChart = Pick<PrintedViews, 'chart'>;

function chosenCharts(content: Content, entry: Printable, charts: readonly OneChart[]): OneChart[] {
  const recipes = new Set(content.recipes.map(({ id }) => id));
  const asked = entry.flavourIds?.join(' ');
  return charts.filter(
    ({ chart }) => recipes.has(chart.recipe.id) && (asked === undefined || flavoursOf(chart) === asked),
  );
}

const guidesOf = ({ recipes }: Content, charts: readonly PrintedViews[]): BakeGuideView[] =>
  charts.flatMap(({ guide }) => (guide && recipes.some(({ id }) => id === guide.id) ? [guide] : []));

/** The same chart for fewer tins: its rows and its egg ladder know no others. */
function forTins(chart: TinChartView, content: Content, bakes: Map<string, RecipeBakes>): TinChartView {
  const recipe = content.recipes.find(({ id }) => id === chart.recipe.id);
  if (recipe === undefined) throw new Error(`no recipe ${chart.recipe.id}`);
  const flavours = chart.flavours.flatMap(({ id }) => content.flavours.find((one) => one.id === id) ?? []);
  return tinChartView(chartInput(content, recipe, flavours, bakes.get(recipe.id)));
}

function allForTins(charts: readonly OneChart[], content: Content): OneChart[] {
  const bakes = bakesOfRecipes(content);
  return charts.map(({ chart }) => ({ chart: forTins(chart, content, bakes) }));
}

/** Shown when it is asked for: a large kitchen's charts are not held all at once. */
const lazily = (views: OneChart, show: (chart: TinChartView) => TinChartView): OneChart => ({
  get chart() {
    return show(views.chart);
  },
});

/** Wall references turn to ounces as a whole, finishes and all. */
function shownChart(chart: TinChartView, kind: string, mass: Mass, kitchen: Kitchen): TinChartView {
  const weighed = mass === 'oz' && kind !== 'wall-reference' ? chartInOunces(chart, kitchen) : chart;
  return inHomeUnits(weighed, kitchen, 'g');
}

function wanted(content: Content, entry: Printable, charts: readonly PrintedViews[]): WantedPrints {
  const own = narrowed(content, entry);
  const chosen = chosenCharts(own, entry, charts);
  const tinned = entry.tinIds === undefined ? chosen : allForTins(chosen, own);
  const mass = entry.mass ?? usualMass(own.kitchen);
  return {
    name: entry.name ?? null,
    content: own,
    charts: tinned.map((one) => lazily(one, (chart) => shownChart(chart, entry.print, mass, own.kitchen))),
    guides: inHomeUnits(guidesOf(own, charts), own.kitchen),
    mass,
    cardSizes: entry.cardSizes ?? null,
    wallSizes: entry.wallSizes ?? null,
    orderIds: entry.orderIds ?? null,
  };
}

/**
 * The prints of a kind: one for everything while the kitchen has no `printables`, otherwise one an entry, and
 * none when no entry names the kind. `charts` are those of the whole content.
 */
export function wantedPrints(
  content: Content,
  charts: readonly PrintedViews[],
  kind: string,
): WantedPrints[] {
  const known = PRINT_KINDS.find((print) => print === kind);
  if (content.printables === null || known === undefined) {
    const sizes = { cardSizes: null, wallSizes: null, orderIds: null };
    const mass = usualMass(content.kitchen);
    const guides = inHomeUnits(guidesOf(content, charts), content.kitchen);
    const all = charts.map((one) => lazily(one, (chart) => shownChart(chart, kind, mass, content.kitchen)));
    return [{ name: null, content, charts: all, guides, mass, ...sizes }];
  }
  return content.printables
    .filter(({ print }) => print === known)
    .map((entry) => wanted(content, entry, charts));
}
