/**
 * bake-log.csv: one bake a row, as the baker wrote it down: '2026-03-14,vanilla-equal-weights,,round-8,2,900 g,
 * 160C,52 min,probe 95C,none,,65 mm,812 g,Level'. Units stand in the cells, as everywhere. A row with a mistake is
 * told by line and column, and hides none of the others.
 */
import { BAKE_CONSTANTS, caseOfRow, neutralBake } from '../compute/bake/index.ts';
import { type BakeLogRow, CORE_KINDS, DONE_TESTS, type DoneTest } from '../domain/bake-log.ts';
import type { Problem } from '../domain/problem.ts';
import type { Recipe } from '../domain/recipe.ts';
import { fail, type Result, succeed } from '../domain/result.ts';
import type { Tin } from '../domain/tin.ts';
import { type LogCells, logTable } from './bake-log-table.ts';
import { FLAVOURS, type KnownNames, OVENS, oneName, RECIPES } from './known-names.ts';
import { suggest } from './nearest.ts';
import { ONE_OVEN } from './ovens.ts';
import { error, locate, refuse, warning } from './problems.ts';
import { orList, quote } from './quote.ts';
import { parseSpec, type SpecContext } from './spec.ts';
import { shownMm } from './tins/tin-sense.ts';
import { parseBatterTemperature } from './units/batter-temperature.ts';
import { parseDay } from './units/date.ts';
import { parseDuration } from './units/duration.ts';
import { parseFinishedHeight } from './units/length.ts';
import { parseMass } from './units/mass.ts';
import { parseTemperature } from './units/temperature.ts';
import { hiddenCharacter, lineColumn, plainLines } from './yaml/readable-text.ts';
import { complete, present } from './yaml/yaml-reader.ts';

export interface BakeLogContext {
  spec: SpecContext;
  recipes: KnownNames;
  flavours: KnownNames;
  /** The main oven alone when left out. */
  ovens?: KnownNames;
  /** The recipes that could be read: rise above the rim and height by default come from them. */
  found: readonly Recipe[];
}

export interface BakeLogOutcome {
  /** The sound rows, oldest first; of one day in the order written. */
  rows: BakeLogRow[];
  problems: Problem[];
}

const MOST_TINS = 50;
/** A dome may stand this far above what the recipe allows before somebody has misread the rule, mm. */
const DOME_MM = 25;
const HOTTEST_CRUMB_C = 105;
const LONGEST_MIN = 24 * 60;

/** 'lemon + poppy-seed': several flavours in one cell, parted by a plus sign. */
function flavourNames(text: string, known: KnownNames): Result<string[]> {
  const all = text.split('+').map((name) => oneName(name.trim(), FLAVOURS, known));
  const bad = all.filter((one) => !one.ok);
  if (bad.length > 0) return fail(...bad.flatMap((one) => (one.ok ? [] : one.problems)));
  return succeed(all.flatMap((one) => (one.ok ? [one.value] : [])));
}

/** A tin by its id or by a description: as in a list of tins, without a count. */
function oneTin(text: string, context: SpecContext): Result<Tin> {
  const lead = '1 x ';
  const found = parseSpec(`${lead}${text}`, context);
  if (!found.ok)
    return fail(
      ...found.problems.map((one) => ({ ...one, column: Math.max(1, (one.column ?? 1) - lead.length) })),
    );
  const [first, second] = found.value;
  if (first !== undefined && second === undefined) return succeed(first.tin);
  return refuse(
    'spec-unreadable',
    `${quote(text)} is more than one tin`,
    'Write a row for each kind of tin.',
  );
}

function howMany(text: string): Result<number> {
  const count = /^\d{1,3}$/.test(text) ? Number(text) : 0;
  if (count >= 1 && count <= MOST_TINS) return succeed(count);
  return refuse(
    'log-count',
    `${quote(text)} is not a number of tins`,
    `Write a whole number from 1 to ${MOST_TINS}.`,
  );
}

function oneOf<W extends string>(text: string, words: readonly W[]): Result<W> {
  const found = words.find((word) => word === text);
  if (found !== undefined) return succeed(found);
  return refuse(
    'value-not-one-of',
    `${quote(text)} is not one of ${orList(words)}`,
    suggest(text, words, 'words'),
  );
}

interface Done {
  probeC?: number;
  doneBy?: DoneTest;
}

/** 'probe 95C', or one of the tests. */
function doneBy(text: string): Result<Done> {
  const probe = /^probe\s+(.+)$/i.exec(text);
  if (probe === null) {
    const test = oneOf(text, [...DONE_TESTS, 'probe']);
    if (!test.ok) return test;
    if (test.value !== 'probe') return succeed({ doneBy: test.value });
  }
  const read = parseTemperature(probe?.[1] ?? '');
  const { batterC } = BAKE_CONSTANTS;
  const sane = read.ok && read.value.kind === 'conventional' && read.value.scale !== 'gas';
  if (read.ok && sane && read.value.ovenC > batterC && read.value.ovenC <= HOTTEST_CRUMB_C)
    return succeed({ probeC: read.value.ovenC });
  const hint = `Write what the probe in the middle read, like 'probe 96C'; cake is done near 95C and never passes ${HOTTEST_CRUMB_C}C.`;
  return refuse('log-probe', `${quote(text)} is not a probe's reading in cake`, hint);
}

function minutes(text: string): Result<number> {
  const read = parseDuration(text);
  if (!read.ok || read.value <= LONGEST_MIN) return read;
  return refuse(
    'quantity-out-of-range',
    `${quote(text)} is longer than any cake bakes`,
    'Use minutes or hours, up to 24 h.',
  );
}

function checkHeight(cells: LogCells, tin: Tin, heightMm: number, recipe: Recipe | undefined): void {
  const mostMm = tin.depthMm + (recipe?.allowedRiseMm ?? 0) + DOME_MM;
  if (heightMm <= mostMm) return;
  const message = `A cake ${shownMm(heightMm)} high cannot have stood in ${quote(tin.id)}, which is ${shownMm(tin.depthMm)} deep`;
  cells.report(
    error(
      'log-height-over-rim',
      message,
      'Measure from the base of the tin to the top of the cake, levelled.',
    ),
    'height',
  );
}

function checkMassOut(cells: LogCells, batterG: number, massOutG: number): void {
  if (massOutG < batterG && massOutG > batterG * 0.5) return;
  const message = `${massOutG} g of cake from ${batterG} g of batter cannot be: some water leaves, never half of it all`;
  cells.report(
    error('log-mass-out', message, 'Both are for one tin. Weigh the cake without tin and paper.'),
    'mass_out',
  );
}

/** Whether the bake can be reckoned at all: an oven hotter than the cake, a core in a tin that takes one. */
function checkBake(cells: LogCells, row: BakeLogRow, recipe: Recipe | undefined): boolean {
  const heightMm =
    row.finishedHeightMm ?? Math.min(recipe?.finishedHeightMm ?? row.tin.depthMm, row.tin.depthMm);
  const bake = neutralBake(caseOfRow(row, heightMm, BAKE_CONSTANTS), BAKE_CONSTANTS);
  if (bake.ok) return true;
  for (const problem of bake.problems) cells.report(problem, problem.code === 'core-size' ? 'core' : 'oven');
  return false;
}

function readRow(cells: LogCells, context: BakeLogContext): BakeLogRow | null {
  const recipeId = cells.needed('recipe', (text) => oneName(text, RECIPES, context.recipes));
  const tin = cells.needed('tin', (text) => oneTin(text, context.spec));
  const batterG = cells.needed('batter', parseMass);
  const band = cells.optional('band', (text) => oneOf(text, ['yes', 'no']));
  const whole = complete<BakeLogRow>({
    date: cells.needed('date', parseDay),
    recipeId,
    flavourIds:
      cells.text('flavours') === ''
        ? []
        : cells.optional('flavours', (text) => flavourNames(text, context.flavours)),
    tin,
    count: cells.text('count') === '' ? 1 : cells.optional('count', howMany),
    batterG,
    ovenC: cells.needed('oven', parseTemperature)?.ovenC,
    minutes: cells.needed('minutes', minutes),
    core: cells.text('core') === '' ? 'none' : cells.optional('core', (text) => oneOf(text, CORE_KINDS)),
    band: cells.text('band') === '' ? false : band === undefined ? undefined : band === 'yes',
    line: cells.line,
  });
  const finishedHeightMm = cells.optional('height', parseFinishedHeight)?.mm;
  const massOutG = cells.optional('mass_out', parseMass);
  const done = cells.optional('done_by', doneBy);
  const ovenId = cells.optional('which_oven', (text) => oneName(text, OVENS, context.ovens ?? ONE_OVEN));
  const batterC = cells.optional('batter_temperature', parseBatterTemperature);
  const recipe = context.found.find(({ id }) => id === recipeId);
  if (tin !== undefined && finishedHeightMm !== undefined) checkHeight(cells, tin, finishedHeightMm, recipe);
  if (batterG !== undefined && massOutG !== undefined) checkMassOut(cells, batterG, massOutG);
  if (whole === null) return null;
  const notes = cells.text('notes') === '' ? undefined : cells.text('notes');
  const row = { ...whole, ...done, ...present({ finishedHeightMm, massOutG, notes, ovenId, batterC }) };
  return checkBake(cells, row, recipe) ? row : null;
}

/** A row written twice would count twice. */
function repeated(rows: readonly BakeLogRow[], file: string): Problem[] {
  const lines = new Map<string, number>();
  return rows.flatMap(({ line = 0, ...row }) => {
    const key = JSON.stringify(row);
    const earlier = lines.get(key);
    if (earlier === undefined) lines.set(key, line);
    if (earlier === undefined) return [];
    const hint = 'Delete one of the two, or note in what they differed.';
    return [
      locate(warning('log-row-repeated', `The same bake stands on line ${earlier} already`, hint), {
        file,
        line,
        column: 1,
      }),
    ];
  });
}

/** The bakes of a log's text, or everything that is wrong with it. */
export function parseBakeLogCsv(written: string, file: string, context: BakeLogContext): BakeLogOutcome {
  const text = plainLines(written);
  const hidden = hiddenCharacter(text);
  if (hidden !== null)
    return { rows: [], problems: [{ ...hidden.problem, file, ...lineColumn(text, hidden.index) }] };
  const { rows, problems } = logTable(text, file);
  const read = rows.flatMap((cells) => readRow(cells, context) ?? []);
  const inOrder = read.sort((a, b) => (a.date < b.date ? -1 : a.date > b.date ? 1 : 0));
  return { rows: inOrder, problems: [...problems, ...repeated(read, file)] };
}
