/**
 * What is made for a round cake under a chocolate glaze lies in the range that bakers give, a third and more of it to
 * run off. Tolerance: none, the ranges are wide as they stand.
 */
import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { finishedTier } from '../../../src/compute/orders/tier-finishes.ts';
import type { Finish } from '../../../src/domain/finish.ts';
import { USUAL_FINISHING } from '../../../src/domain/finishing.ts';
import type { Tin } from '../../../src/domain/tin.ts';

const folder = new URL('.', import.meta.url);
const { tolerance } = JSON.parse(readFileSync(new URL('source.json', folder), 'utf8'));
const text = readFileSync(new URL('poured-glaze.csv', folder), 'utf8');
const rows: Record<string, string>[] = parse(text, { columns: true });
const IN = 25.4;

const finish = (id: string, kind: Finish['kind'], crumbMm: number, finalMm: number): Finish => ({
  ...{ id, name: id, kind, parts: [], keepsDays: 3, chilled: false, methodMarkdown: '' },
  use: { coating: { crumbMm, finalMm, corners: 'rounded' } },
  ...{ densityGPerMl: 1.2, lossShare: 0.4, cookingLossShare: 0 },
});
const all = [finish('ganache', 'ganache', 2, 4), finish('glaze', 'poured glaze', 0, 3)];

function glazeG(acrossIn: number, heightIn: number): number {
  const tin: Tin = {
    ...{ id: 'round', name: 'Round', owned: 1, unit: 'in' as const },
    ...{ shape: { kind: 'round' as const, acrossMm: acrossIn * IN }, depthMm: heightIn * IN },
  };
  const cake = { tin, count: 1, layers: 2, heightMm: heightIn * IN };
  const asks = all.map(({ id }) => ({ finishId: id, use: 'coating' as const }));
  const { finishes } = finishedTier({ finishes: asks }, cake, all, USUAL_FINISHING);
  return finishes.find((one) => one.finish.id === 'glaze')?.amount.makeG ?? Number.NaN;
}

describe('chocolate glaze, 3 mm of it at 1.2 g/mL and two fifths to run off', () => {
  it.each(rows)('over a $across_in in cake: $low_g to $high_g g ($source)', (row) => {
    const made = glazeG(Number(row.across_in), Number(row.height_in));
    expect(made).toBeGreaterThanOrEqual(Number(row.low_g) * (1 - tolerance));
    expect(made).toBeLessThanOrEqual(Number(row.high_g) * (1 + tolerance));
  });
});
