import { describe, expect, it } from 'vitest';
import {
  BAKE_CONSTANTS,
  type BakeWindow,
  bakeWindow,
  fitLog,
  type LogFit,
  neutralBake,
  RECIPE_CLASSES,
} from '../../../src/compute/bake/index.ts';
import type { BakeLogRow } from '../../../src/domain/bake-log.ts';
import type { FvRow } from '../../outside/fv-minutes/fv-rows.ts';
import {
  logRow,
  SETTINGS,
  type SyntheticLog,
  syntheticLog,
  type Truth,
  trueMinutes,
} from './synthetic-logs.ts';

const SPONGE = { recipeClass: RECIPE_CLASSES.sponge, heightMm: 76.2 };
const fitSponge = (rows: BakeLogRow[]): LogFit => fitLog(rows, SPONGE, BAKE_CONSTANTS);

function windowFor(fit: LogFit, { tin, heightMm, ovenC }: FvRow): BakeWindow {
  const bake = neutralBake({ tin, heightMm, ovenC, core: 'none', band: false }, BAKE_CONSTANTS);
  if (!bake.ok) throw new Error(bake.problems[0]?.message);
  return bakeWindow(fit.plain.belief, bake.value, { ...BAKE_CONSTANTS, doneSdMin: fit.doneSdMin });
}

const width = (window: BakeWindow): number => window.expectedByMin - window.firstLookMin;

/** Share of the bakes to come that fall into their windows, with and without the log. */
function coverage(logs: SyntheticLog[]): { logged: number; unlogged: number; narrowing: number } {
  const tally = { bakes: 0, logged: 0, unlogged: 0, narrowing: 0 };
  const blank = fitSponge([]);
  for (const { rows, next } of logs) {
    const fit = fitSponge(rows);
    for (const { setting, minutes } of next) {
      const [after, before] = [windowFor(fit, setting), windowFor(blank, setting)];
      tally.bakes += 1;
      if (minutes >= after.firstLookMin && minutes <= after.expectedByMin) tally.logged += 1;
      if (minutes >= before.firstLookMin && minutes <= before.expectedByMin) tally.unlogged += 1;
      tally.narrowing += width(after) / width(before);
    }
  }
  const { bakes } = tally;
  return {
    logged: tally.logged / bakes,
    unlogged: tally.unlogged / bakes,
    narrowing: tally.narrowing / bakes,
  };
}

describe('windows over 500 invented logs', () => {
  const half = (truth: Truth, seed: number) =>
    coverage(Array.from({ length: 250 }, (_, n) => syntheticLog(seed + n, truth)));
  const halves = [half('series', 1), half('finite volume', 10_001)];

  it('hold 85 to 95 % of the bakes to come after five logged ones, whichever model is the truth', () => {
    for (const { logged } of halves) {
      expect(logged).toBeGreaterThanOrEqual(0.85);
      expect(logged).toBeLessThanOrEqual(0.95);
    }
  });

  it('hold 85 to 95 % before anything is logged', () => {
    for (const { unlogged } of halves) {
      expect(unlogged).toBeGreaterThanOrEqual(0.85);
      expect(unlogged).toBeLessThanOrEqual(0.95);
    }
  });

  it('are at most half as wide after five bakes as before', () => {
    for (const { narrowing } of halves) expect(narrowing).toBeLessThanOrEqual(0.5);
  });
});

describe('one recipe’s log', () => {
  const setting = (id: string): FvRow => {
    const found = SETTINGS.find((row) => row.tin.id === id && row.ovenC === 160 && row.heightMm > 70);
    if (!found) throw new Error(`no setting ${id}`);
    return found;
  };
  const logged = (ids: string[], factor: number): BakeLogRow[] =>
    ids.map((id) => logRow(setting(id), trueMinutes(setting(id), factor, 'series')));
  const MIXED = ['cyl-6', 'cyl-8', 'cyl-10', 'cyl-6', 'sq-7', 'cyl-12', 'cyl-8', 'sq-9', 'cyl-4', 'cyl-10'];

  it('narrows the windows bake by bake, and never widens them', () => {
    const widths = MIXED.map((_, n) =>
      width(windowFor(fitSponge(logged(MIXED.slice(0, n), 1.2)), setting('cyl-8'))),
    );
    for (let n = 1; n < widths.length; n++) expect(widths[n]).toBeLessThanOrEqual(widths[n - 1] ?? 0);
  });

  it('finds the recipe’s factor: 1.20 within 2 % from ten bakes', () => {
    const fit = fitSponge(logged(MIXED, 1.2));
    expect(Math.abs(fit.plain.timeFactor - 1.2)).toBeLessThan(0.024);
    expect(fit.plain.bakes).toBe(10);
    expect(fit.odd).toEqual([]);
  });

  it('learns how regularly this baker calls it done: 5 min at first, less for a steady hand, more for a loose one', () => {
    expect(fitSponge([]).doneSdMin).toBe(5);
    const rows = logged(MIXED, 1.2);
    expect(fitSponge(rows).doneSdMin).toBeLessThan(3.5);
    const loose = rows.map(
      (row, at): BakeLogRow => ({ ...row, minutes: row.minutes + (at % 2 === 0 ? 9 : -9) }),
    );
    expect(fitSponge(loose).doneSdMin).toBeGreaterThan(5);
    expect(fitSponge(loose).doneSdMin).toBeLessThan(8);
  });

  it('heeds a wild row little, and reports it with how far off it is', () => {
    const rows = logged(MIXED, 1.2);
    const wild = { ...logRow(setting('cyl-8'), 140), line: 12 };
    const fit = fitSponge([...rows, wild]);
    expect(Math.abs(fit.plain.timeFactor - 1.2)).toBeLessThan(0.05);
    expect(fit.odd).toHaveLength(1);
    expect(fit.odd[0]?.row.line).toBe(12);
    expect(fit.odd[0]?.lateByMin).toBeGreaterThan(55);
    expect(fit.odd[0]?.weight).toBeLessThan(0.2);
  });

  it('keeps bakes with a core apart: they move only the core’s windows', () => {
    const rows = logged(['cyl-8', 'cyl-10', 'cyl-12'], 1);
    const slowCores = rows.map((row): BakeLogRow => ({ ...row, core: 'solid', minutes: row.minutes + 20 }));
    const [plain, both] = [fitSponge(rows), fitSponge([...rows, ...slowCores])];
    expect(both.plain).toEqual(plain.plain);
    expect(both.withCore.bakes).toBe(3);
    expect(both.withCore.timeFactor).toBeGreaterThan(plain.withCore.timeFactor);
    expect(plain.withCore.logSd).toBeGreaterThan(plain.plain.logSd);
    expect(both.withCore.logSd).toBeLessThan(plain.withCore.logSd);
  });

  it('lets a row that cannot be reckoned hide no other, and points at its line', () => {
    const rows = logged(['cyl-8'], 1);
    const fit = fitSponge([...rows, { ...logRow(setting('cyl-8'), 60), ovenC: 90, line: 7 }]);
    expect(fit.plain.bakes).toBe(1);
    expect(fit.problems.map(({ code, line }) => [code, line])).toEqual([['oven-too-cool', 7]]);
  });

  it('takes a probe short of done for what it says', () => {
    const [row] = logged(['cyl-8'], 1);
    if (!row) throw new Error('no row');
    const early = fitSponge([{ ...row, probeC: 85 }]);
    expect(early.plain.timeFactor).toBeGreaterThan(fitSponge([row]).plain.timeFactor);
    const { belief } = fitSponge([row]).plain;
    expect(fitSponge([{ ...row, probeC: 99 }]).plain.belief).toEqual(belief);
  });

  it('never looks before the oven door is shut, however small the cake', () => {
    const tiny: FvRow = { ...setting('cyl-4'), heightMm: 15, ovenC: 200 };
    const window = windowFor(fitSponge([]), tiny);
    expect(window.firstLookMin).toBeGreaterThan(0);
    expect(window.firstLookMin).toBeLessThan(window.likelyMin);
  });
});
