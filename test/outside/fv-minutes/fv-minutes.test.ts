/**
 * Compared: column min_95 (minutes until the coldest point is at 95 °C, our own meaning of done), for tins of 4
 * to 12 in and heights of 2 to 4 in, against lag + neutral minutes with a time factor of 1. Not compared: min_93
 * and min_98 (another meaning of done), the edge, wall and crust columns (another question), 13 and 14 in (beyond
 * what was promised; reported below), and core solidhot_45, a core put in hot, for which there is no rule.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BAKE_CONSTANTS, neutralBake } from '../../../src/compute/bake/index.ts';
import { FV_ROWS, type FvRow } from './fv-rows.ts';

const source = JSON.parse(readFileSync(new URL('source.json', import.meta.url), 'utf8'));
const WITH_CORE = 2 * source.tolerance;

function departure(row: FvRow): number {
  const bake = neutralBake(
    { tin: row.tin, heightMm: row.heightMm, ovenC: row.ovenC, core: row.core, band: false },
    BAKE_CONSTANTS,
  );
  if (!bake.ok) throw new Error(bake.problems[0]?.message);
  return (BAKE_CONSTANTS.lagMin + bake.value.neutralMin) / row.min95 - 1;
}

const promised = FV_ROWS.filter(
  (row) => row.sizeIn >= 4 && row.sizeIn <= 12 && row.coreText !== 'solidhot_45',
);

describe('the series against an independent finite-volume model', () => {
  const plain = promised.filter((row) => row.core === 'none');
  const cored = promised.filter((row) => row.core !== 'none');

  it(`is within 6 % on all ${plain.length} rows without a core`, () => {
    expect(plain.length).toBeGreaterThan(50);
    for (const row of plain) expect(Math.abs(departure(row)), row.tin.name).toBeLessThan(source.tolerance);
  });

  it(`is within 12 % on all ${cored.length} rows with a core`, () => {
    expect(cored.length).toBeGreaterThan(60);
    for (const row of cored) expect(Math.abs(departure(row)), row.tin.name).toBeLessThan(WITH_CORE);
  });

  it('would be right that a core put in hot saves more than either rule says (reported, not promised)', () => {
    const hot = FV_ROWS.filter((row) => row.coreText === 'solidhot_45');
    expect(hot.map((row) => departure(row) > 0)).toEqual([true, true]);
  });
});
