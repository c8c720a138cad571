/** The number of loads against a general solver of whole-number programmes (HiGHS), which shares no code with ours. */
import loadHighs from 'highs';
import { describe, expect, it } from 'vitest';
import { partitionLoads } from '../../../src/compute/loads/index.ts';
import { between, seeded } from './random.ts';

/** The package's types describe its CommonJS form; imported, the loader is the default itself. */
const load = loadHighs as unknown as typeof loadHighs.default;

/**
 * Bin packing in LP format: y(b) = load b is used, x(i,b) = tin i goes into load b. Loads are numbered by their first
 * tin, largest first, so that tin i is in one of the loads 0 to i: each packing counts once, and none is lost.
 */
function packingModel(unsorted: readonly number[], limit: number, most: number): string {
  const sizes = unsorted.toSorted((a, b) => b - a);
  const bins = Array.from({ length: most }, (_, b) => b);
  const used = bins.map((b) => `y${b}`);
  const placed = sizes.map((_, i) => `${bins.map((b) => `x${i}_${b}`).join(' + ')} = 1`);
  const first = sizes.flatMap((_, i) => bins.filter((b) => b > i).map((b) => `x${i}_${b} = 0`));
  const holds = bins.map(
    (b) => `${sizes.map((size, i) => `${size} x${i}_${b}`).join(' + ')} - ${limit} y${b} <= 0`,
  );
  const ordered = bins.slice(1).map((b) => `y${b - 1} - y${b} >= 0`);
  const all = [...used, ...sizes.flatMap((_, i) => bins.map((b) => `x${i}_${b}`))];
  const rules = [...placed, ...holds, ...ordered, ...first].map((rule, n) => ` c${n}: ${rule}`);
  return `Minimize\n obj: ${used.join(' + ')}\nSubject To\n${rules.join('\n')}\nBinary\n ${all.join(' ')}\nEnd\n`;
}

describe('the number of loads', () => {
  it('equals a MILP solver’s optimum on 220 random mixes of 6 to 20 tins', async () => {
    const highs = await load();
    const random = seeded(42);
    for (let run = 0; run < 220; run++) {
      const limit = between(random, 900, 2400);
      const count = between(random, 6, run % 10 === 0 ? 20 : 11);
      const sizes = Array.from({ length: count }, () =>
        between(random, Math.ceil(limit / 9), Math.floor(limit * 0.65)),
      );
      const asks = sizes.map((batterG) => ({ batterG, count: 1 }));
      const result = partitionLoads({ asks, limitG: limit });
      const ours = result.ok ? result.value.loads.length : 0;
      expect(result.ok && result.value.proof.fewest).toBe(true);
      const solved = highs.solve(packingModel(sizes, limit, ours), { mip_rel_gap: 0, time_limit: 20 });
      expect(solved.Status).toBe('Optimal');
      expect(ours).toBe(Math.round(solved.ObjectiveValue));
    }
  });
});
