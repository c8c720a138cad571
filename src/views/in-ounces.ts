/** A chart or sheet for those who weigh in ounces: the same values, shown in ounces wherever grams are shown. */
import type { Kitchen } from '../domain/kitchen.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { formatGrams } from '../wording/mass.ts';
import { formatOunces, ouncesInSentence } from '../wording/ounces.ts';
import type { Figure } from './figure.ts';
import { inHomeUnits, type Mass, usualMass } from './home-units.ts';
import type { TinChartView } from './tin-chart.types.ts';
import type { WallCell, WallTable, WallView } from './wall.types.ts';

const isFigure = (value: object): value is Figure =>
  'unit' in value && 'value' in value && 'text' in value && typeof value.text === 'string';

/** Names and ids are kept: they are the baker's own. */
const KEPT: ReadonlySet<string> = new Set(['id', 'tinId', 'name', 'tinName', 'picture', 'code']);

/** From the grams as shown, so that a sentence and a cell that show the same weight still agree. */
const ouncesOfText = (grams: string): string =>
  formatOunces(Number(grams.replaceAll(',', '').replace('−', '-')));

function shown(value: unknown): unknown {
  if (typeof value === 'string') return ouncesInSentence(value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(shown);
  if (isFigure(value)) return value.unit === 'g' ? { ...value, text: ouncesOfText(value.text) } : value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [key, KEPT.has(key) ? inner : shown(inner)]),
  );
}

/** The chart with every weight in ounces, to 2 % or better. */
export function chartInOunces(view: TinChartView, { locale, scale }: Kitchen): TinChartView {
  const { notes } = wordsFor(locale).chart;
  const steps = notes.grams(formatGrams(scale.stepG), formatGrams(scale.fineStepG));
  const plain = { ...view, notes: view.notes.map((note) => (note === steps ? notes.ounces : note)) };
  return shown(plain) as TinChartView;
}

/** The chart as the site shows it: in the units of the kitchen's country. */
export const homeChart = (view: TinChartView, kitchen: Kitchen): TinChartView =>
  usualMass(kitchen) === 'oz' ? inHomeUnits(chartInOunces(view, kitchen), kitchen) : view;

/** The chart as it is printed in a unit of weight; lengths and volumes by the kitchen's country. */
export const chartIn = (view: TinChartView, kitchen: Kitchen, mass: Mass): TinChartView =>
  inHomeUnits(mass === 'oz' ? chartInOunces(view, kitchen) : view, kitchen, 'g');

/** Any answer of the planner in the unit asked for. */
export const answerIn = <View>(view: View, kitchen: Kitchen, mass: Mass): View =>
  inHomeUnits(mass === 'oz' ? (shown(view) as View) : view, kitchen, mass);

const OZ = 'oz';
const unitInOunces = (unit: string): string => (unit === 'g' ? OZ : unit);
const wallCell = (cell: WallCell): WallCell => ({ ...cell, text: cell.figure?.text ?? cell.text });

function wallTable(table: WallTable): WallTable {
  return {
    ...table,
    columns: table.columns.map((column) => ({ ...column, unit: unitInOunces(column.unit) })),
    rows: table.rows.map((row) => ({ ...row, cells: row.cells.map(wallCell) })),
  };
}

/** The wall reference with every weight in ounces, to 2 % or better. */
export function wallInOunces(view: WallView): WallView {
  const inOunces = shown(view) as WallView;
  const { body } = inOunces;
  if (body.form === 'table') return { ...inOunces, body: wallTable(body) };
  return { ...inOunces, body: { ...body, batterUnit: unitInOunces(body.batterUnit) } };
}
