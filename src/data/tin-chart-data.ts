/**
 * The tin chart as data: for each tin the numbers under names that carry their unit, and under `shown` the
 * same numbers as pages and prints show them. JSON and CSV are both made from this, so neither can have
 * a figure the other lacks.
 */
import type { Figure } from '../views/figure.ts';
import type { Amount, EggFigures, TinChartRow, TinChartView } from '../views/tin-chart.types.ts';
import type { Json } from './canonical-json.ts';

type Shown = { [key: string]: Json };

/** A chart without its drawings and without its ladder (which is a file of its own). */
export function tinChartData(view: TinChartView): Json {
  return {
    id: view.id,
    title: view.title,
    kitchen: view.kitchenName,
    edition: view.edition,
    recipe: { ...view.recipe },
    flavours: view.flavours.map((flavour) => ({ ...flavour })),
    finished_height_mm: view.finishedHeight.value,
    finished_height: view.finishedHeightText,
    egg_size: view.eggSizeText,
    basis: view.basisText,
    cautions: view.cautions.map(({ code, text }) => ({ code, text })),
    warnings: view.warnings.map(({ code, message }) => ({ code, message })),
    bake_basis: view.bake?.basisText ?? null,
    baked_basis: view.bake?.waterText ?? null,
    tins: view.rows.map((row) => rowData(row, view)),
  };
}

function rowData(row: TinChartRow, view: TinChartView): Json {
  return {
    id: row.id,
    tin: row.tinId,
    name: row.tinName,
    size: row.sizeText,
    other_size: row.otherSizeText,
    count: row.count,
    owned: row.owned,
    volume_ml: row.volume.value,
    batter_g_each: row.batterEach.value,
    receives_g_each: row.receives.value,
    batter_g: row.batter.value,
    baked_g_each: row.baked?.value ?? null,
    eggs: row.eggs === null ? null : eggData(row.eggs),
    ingredients: view.columns.map((column, at) => amountData(column.id, column.name, row.amounts[at])),
    raw_fill_mm: row.rawFill.value,
    raw_fill_share: row.rawFillShare.value,
    finished_height_mm: row.finishedHeight.value,
    surplus_g: row.surplus.value,
    surplus: row.surplusText,
    warnings: row.warnings.map(({ code, message }) => ({ code, message })),
    bake: bakeData(row),
    shown: shownOf(row),
  };
}

/** Null where bake times are not worked out. */
function bakeData({ bake }: TinChartRow): Json {
  if (!bake) return null;
  return {
    dial_c: bake.dial.value,
    dial: bake.dial.text,
    dial_elsewhere: bake.dialOthers,
    first_look_min: bake.firstLook.value,
    likely_min: bake.likely.value,
    done_by_min: bake.expectedBy.value,
    core: bake.core,
    band: bake.band,
    advice: bake.advice,
    logged_bakes: bake.bakes.value,
    shown: {
      first_look: bake.firstLook.text,
      likely: bake.likely.text,
      done_by: bake.expectedBy.text,
      logged_bakes: bake.bakes.text,
    },
  };
}

function eggData(eggs: EggFigures): Json {
  return {
    rule: eggs.rule,
    exact: eggs.exact.value,
    whole: eggs.whole.value,
    deviation: eggs.deviation.value,
    grams: eggs.grams.value,
    text: eggs.text,
  };
}

/** One ingredient's amount: grams, as shown, and in spoons where that is how one measures it. */
export function amountData(id: string, name: string, amount: Amount | undefined): Json {
  if (amount === undefined) throw new Error(`no amount of ${id}`);
  return { id, name, grams: amount.figure.value, shown: amount.figure.text, spoons: amount.spoons };
}

function shownOf(row: TinChartRow): Shown {
  const figures: Record<string, Figure> = {
    volume_ml: row.volume,
    batter_g_each: row.batterEach,
    receives_g_each: row.receives,
    batter_g: row.batter,
    raw_fill_mm: row.rawFill,
    raw_fill_share: row.rawFillShare,
    finished_height_mm: row.finishedHeight,
    surplus_g: row.surplus,
  };
  if (row.baked) figures.baked_g_each = row.baked;
  if (row.eggs !== null) {
    figures.eggs_exact = row.eggs.exact;
    figures.eggs_whole = row.eggs.whole;
    figures.eggs_deviation = row.eggs.deviation;
    figures.eggs_grams = row.eggs.grams;
  }
  return Object.fromEntries(Object.entries(figures).map(([key, figure]) => [key, figure.text]));
}
