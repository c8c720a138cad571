/**
 * The tin chart as a table for a spreadsheet: a record per tin, units in the header, what holds for the whole
 * chart repeated in the last columns so that charts can be stacked under one another and filtered.
 */
import type { BakeFigures } from '../views/bake-figures.types.ts';
import type { ChartColumn, EggFigures, TinChartRow, TinChartView } from '../views/tin-chart.types.ts';
import { type Cell, csvText } from './csv.ts';

interface Column {
  header: string;
  cell: (row: TinChartRow) => Cell;
}

/** The CSV file of a tin chart. */
export function tinChartCsv(view: TinChartView): string {
  const columns = [
    ...tinColumns(),
    ...(view.rows.some((row) => row.eggs !== null) ? eggColumns() : []),
    ...view.columns.flatMap(ingredientColumns),
    ...fillColumns(),
    ...bakeColumns(),
    ...chartColumns(view),
  ];
  return csvText(
    columns.map((column) => column.header),
    view.rows.map((row) => columns.map((column) => column.cell(row))),
  );
}

function tinColumns(): Column[] {
  return [
    { header: 'row', cell: (row) => row.id },
    { header: 'tin', cell: (row) => row.tinId },
    { header: 'name', cell: (row) => row.tinName },
    { header: 'size', cell: (row) => row.sizeText },
    { header: 'size in other units', cell: (row) => row.otherSizeText },
    { header: 'tins together', cell: (row) => row.count },
    { header: 'owned', cell: (row) => row.owned },
    { header: 'volume (mL)', cell: (row) => row.volume.value },
    { header: 'volume shown (mL)', cell: (row) => row.volume.text },
    { header: 'batter each (g)', cell: (row) => row.batterEach.value },
    { header: 'batter each shown (g)', cell: (row) => row.batterEach.text },
    { header: 'pour into each (g)', cell: (row) => row.receives.value },
    { header: 'pour into each shown (g)', cell: (row) => row.receives.text },
    { header: 'baked each (g)', cell: (row) => row.baked?.value ?? null },
    { header: 'baked each shown (g)', cell: (row) => row.baked?.text ?? null },
    { header: 'batter (g)', cell: (row) => row.batter.value },
    { header: 'batter shown (g)', cell: (row) => row.batter.text },
  ];
}

function eggColumns(): Column[] {
  const of = (pick: (eggs: EggFigures) => Cell) => (row: TinChartRow) =>
    row.eggs === null ? null : pick(row.eggs);
  return [
    { header: 'eggs', cell: of((eggs) => eggs.text) },
    { header: 'egg rule', cell: of((eggs) => eggs.rule) },
    { header: 'eggs whole (count)', cell: of((eggs) => eggs.whole.value) },
    { header: 'eggs whole shown (count)', cell: of((eggs) => eggs.whole.text) },
    { header: 'eggs exact (count)', cell: of((eggs) => eggs.exact.value) },
    { header: 'eggs exact shown (count)', cell: of((eggs) => eggs.exact.text) },
    { header: 'egg deviation (share)', cell: of((eggs) => eggs.deviation.value) },
    { header: 'egg deviation shown', cell: of((eggs) => eggs.deviation.text) },
    { header: 'egg shelled (g)', cell: of((eggs) => eggs.grams.value) },
    { header: 'egg shelled shown (g)', cell: of((eggs) => eggs.grams.text) },
  ];
}

function ingredientColumns(column: ChartColumn, at: number): Column[] {
  const amount = (row: TinChartRow) => row.amounts[at];
  return [
    { header: `${column.name} [${column.id}] (g)`, cell: (row) => amount(row)?.figure.value ?? null },
    { header: `${column.name} shown (g)`, cell: (row) => amount(row)?.figure.text ?? null },
    { header: `${column.name} in spoons`, cell: (row) => amount(row)?.spoons ?? null },
  ];
}

function fillColumns(): Column[] {
  return [
    { header: 'raw fill (mm)', cell: (row) => row.rawFill.value },
    { header: 'raw fill shown (mm)', cell: (row) => row.rawFill.text },
    { header: 'raw fill (share of depth)', cell: (row) => row.rawFillShare.value },
    { header: 'raw fill shown', cell: (row) => row.rawFillShare.text },
    { header: 'finished height (mm)', cell: (row) => row.finishedHeight.value },
    { header: 'finished height shown', cell: (row) => row.finishedHeight.text },
    { header: 'surplus (g)', cell: (row) => row.surplus.value },
    { header: 'surplus shown (g)', cell: (row) => row.surplus.text },
    { header: 'surplus', cell: (row) => row.surplusText },
    {
      header: 'warnings',
      cell: (row) => listed(row.warnings.map(({ code, message }) => `[${code}] ${message}`)),
    },
  ];
}

function bakeColumns(): Column[] {
  const of = (pick: (bake: BakeFigures) => Cell) => (row: TinChartRow) => (row.bake ? pick(row.bake) : null);
  return [
    { header: 'dial (C conventional)', cell: of(({ dial }) => dial.value) },
    { header: 'dial', cell: of(({ dial }) => dial.text) },
    { header: 'dial elsewhere', cell: of(({ dialOthers }) => dialOthers) },
    { header: 'first look (min)', cell: of(({ firstLook }) => firstLook.value) },
    { header: 'first look shown', cell: of(({ firstLook }) => firstLook.text) },
    { header: 'most likely (min)', cell: of(({ likely }) => likely.value) },
    { header: 'most likely shown', cell: of(({ likely }) => likely.text) },
    { header: 'done by (min)', cell: of(({ expectedBy }) => expectedBy.value) },
    { header: 'done by shown', cell: of(({ expectedBy }) => expectedBy.text) },
    { header: 'heating core', cell: of(({ core }) => String(core)) },
    { header: 'insulated band', cell: of(({ band }) => String(band)) },
    { header: 'core and band', cell: of(({ advice }) => advice) },
    { header: 'logged bakes (count)', cell: of(({ bakes }) => bakes.value) },
    { header: 'logged bakes', cell: of(({ bakes }) => bakes.text) },
  ];
}

function chartColumns(view: TinChartView): Column[] {
  const whole: [string, Cell][] = [
    ['chart', view.id],
    ['title', view.title],
    ['kitchen', view.kitchenName],
    ['edition', view.edition],
    ['recipe', view.recipe.id],
    ['recipe name', view.recipe.name],
    ['flavours', listed(view.flavours.map((flavour) => flavour.id))],
    ['flavour names', listed(view.flavours.map((flavour) => flavour.name))],
    ['chart height (mm)', view.finishedHeight.value],
    ['chart height', view.finishedHeightText],
    ['egg size', view.eggSizeText],
    ['basis', view.basisText],
    ['bake basis', view.bake?.basisText ?? null],
    ['baked basis', view.bake?.waterText ?? null],
    ['cautions', listed(view.cautions.map(({ code, text }) => `[${code}] ${text}`))],
    ['chart warnings', listed(view.warnings.map(({ code, message }) => `[${code}] ${message}`))],
  ];
  return whole.map(([header, value]) => ({ header, cell: () => value }));
}

function listed(texts: string[]): string {
  return texts.join('\n');
}
