import { describe, expect, it } from 'vitest';
import { costBound } from '../../../src/compute/loads/cost-bound.ts';
import { firstFit } from '../../../src/compute/loads/first-fit.ts';
import { improveLoads } from '../../../src/compute/loads/improve.ts';
import { loadItems, loadMg } from '../../../src/compute/loads/items.ts';
import { bestByTryingAll, objective } from './checker.ts';
import { eggSurplusG } from './egg-rule.ts';
import { between, seeded } from './random.ts';

const random = seeded(99);

describe('the bound on what loads cost', () => {
  it('is never above the best of all arrangements, and lets the long search find that best', () => {
    let compared = 0;
    for (let run = 0; run < 150; run++) {
      const limitG = between(random, 900, 2000);
      const asks = Array.from({ length: between(random, 4, 8) }, () => ({
        batterG: between(random, 150, 850) + random(),
        count: 1,
      }));
      const items = loadItems(asks, limitG);
      const rule = { limitG, surplusG: eggSurplusG, evenStepG: 5 };
      const tinsMg = asks.map((ask) => Math.round(ask.batterG * 1000));
      const best = bestByTryingAll(tinsMg, rule);
      const start = firstFit(items);
      if (start.length !== best.loads || best.loads < 2) continue;
      compared += 1;
      const wishes = { surplusG: eggSurplusG, evenStepG: 5, stepCap: 1e6, briefSteps: 0 };
      const found = improveLoads(items, start, wishes);
      expect(found.proven).toBe(true);
      expect(found.leastSurplusMg).toBe(best.surplusMg);
      expect(
        objective(
          found.packing.map((counts) => loadMg(items, counts)),
          rule,
        ),
      ).toEqual(best);
      const mean = items.totalMg / best.loads;
      const costOf = (mg: number) => ({
        surplusMg: Math.max(0, Math.round(eggSurplusG(mg / 1000) * 1000)),
        unevenness: Math.round(Math.abs(mg - mean) / 5000) ** 2,
      });
      // The hardest case for what is left out: something known that is only just dearer than the best.
      const known = { surplusMg: best.surplusMg, unevenness: best.unevenness + 1 };
      const floor = costBound(items, best.loads, costOf, known)?.(items.totalMg, best.loads);
      if (!floor) throw new Error('no bound');
      expect(floor.surplusMg).toBeLessThanOrEqual(best.surplusMg);
      if (floor.surplusMg === best.surplusMg) expect(floor.unevenness).toBeLessThanOrEqual(best.unevenness);
    }
    expect(compared).toBeGreaterThan(80);
  });
});
