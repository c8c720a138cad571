import { describe, expect, it } from 'vitest';
import {
  type BatterAsk,
  bowlLimitG,
  type LoadPlan,
  partitionLoads,
} from '../../../src/compute/loads/index.ts';
import { bestByTryingAll, faults, objective } from './checker.ts';
import { eggSurplusG } from './egg-rule.ts';
import { between, seeded } from './random.ts';

function plan(input: Parameters<typeof partitionLoads>[0]): LoadPlan {
  const result = partitionLoads(input);
  if (!result.ok) throw new Error(result.problems.map((problem) => problem.message).join('; '));
  return result.value;
}

describe('partitionLoads, by hand', () => {
  it('keeps a mix that fits the bowl in one load', () => {
    const { loads, proof } = plan({
      asks: [
        { batterG: 650, count: 2 },
        { batterG: 300, count: 1 },
      ],
      limitG: 1600,
    });
    expect(loads).toEqual([
      {
        batterG: 1600,
        shares: [
          { ask: 0, tins: 2, batterG: 1300 },
          { ask: 1, tins: 1, batterG: 300 },
        ],
      },
    ]);
    expect(proof).toMatchObject({ leastLoads: 1, fewest: true, best: true, surplusG: 0 });
  });

  it('never splits a tin that fits the bowl, even when that takes a load more', () => {
    const { loads } = plan({ asks: [{ batterG: 700, count: 3 }], limitG: 1200 });
    expect(loads.map((load) => load.batterG)).toEqual([700, 700, 700]);
  });

  it('splits a tin that exceeds the bowl in the fewest equal parts', () => {
    const { loads } = plan({ asks: [{ batterG: 5000, count: 1 }], limitG: 2244 });
    expect(loads.map((load) => load.batterG)).toEqual([1666.667, 1666.667, 1666.666]);
    expect(loads[0]?.shares).toEqual([{ ask: 0, tins: 0, ofParts: 3, batterG: 1666.667 }]);
  });

  it('finds the two loads that first-fit decreasing misses', () => {
    // First fit: 7 + 6, then 5 + 4 + 4, and the last 4 alone; 7 + 4 + 4 and 6 + 5 + 4 need two.
    const asks = [7, 6, 5, 4, 4, 4].map((hundreds) => ({ batterG: hundreds * 100, count: 1 }));
    expect(plan({ asks, limitG: 1500 }).loads).toHaveLength(2);
  });

  it('prefers less egg surplus to evenness, and evenness to nothing', () => {
    const asks = [
      { batterG: 400, count: 1 },
      { batterG: 300, count: 1 },
      { batterG: 200, count: 1 },
      { batterG: 100, count: 1 },
    ];
    const even = plan({ asks, limitG: 800 });
    expect(even.loads.map((load) => load.batterG)).toEqual([500, 500]);
    const eggs = plan({ asks, limitG: 800, surplusG: eggSurplusG });
    expect(eggs.loads.map((load) => load.batterG)).toEqual([600, 400]);
    expect(eggs.proof.surplusG).toBe(0);
  });

  it('warns of a load under the least that the bowl mixes well', () => {
    const { warnings } = plan({ asks: [{ batterG: 200, count: 1 }], limitG: 2244, minimumG: 489.6 });
    expect(warnings).toEqual([
      {
        code: 'load-below-minimum',
        message: 'A load of 200 g is less than the 489.6 g that the bowl mixes well.',
      },
    ]);
  });

  it('takes the limit from the bowl, the share it may be full and the batter’s density', () => {
    expect(bowlLimitG({ bowlMl: 4800, maxFill: 0.55, minFill: 0.12 }, 0.85)).toEqual({
      limitG: 2244,
      minimumG: 489.6,
    });
    expect(bowlLimitG({ bowlMl: 4800, maxFill: 0.55, minFill: 0.12 }, 0.5).limitG).toBe(1320);
  });

  it('reports every wrong number at once and makes no load of them', () => {
    const result = partitionLoads({
      asks: [
        { batterG: -5, count: 1 },
        { batterG: Number.NaN, count: 1.5 },
      ],
      limitG: 0,
    });
    expect(result.ok ? [] : result.problems.map((problem) => problem.code)).toEqual([
      'load-limit',
      'load-batter',
      'load-batter',
      'load-count',
    ]);
  });
});

describe('partitionLoads against every arrangement', () => {
  it('is best in loads, then surplus, then evenness for 400 random mixes of up to eight tins', () => {
    const random = seeded(20261101);
    for (let run = 0; run < 400; run++) {
      const limitG = between(random, 900, 2400);
      const asks: BatterAsk[] = Array.from({ length: between(random, 1, 8) }, () => ({
        batterG: between(random, 150, run % 2 === 0 ? 900 : limitG) + (run % 3 === 0 ? random() : 0),
        count: 1,
      })).filter((ask) => ask.batterG <= limitG);
      if (asks.length === 0) continue;
      const rule = { limitG, surplusG: run % 4 === 0 ? () => 0 : eggSurplusG, evenStepG: 5 };
      const found = plan({ asks, ...rule });
      expect(faults(asks, limitG, found)).toEqual([]);
      expect(found.proof.best).toBe(true);
      const tinsMg = asks.map((ask) => Math.round(ask.batterG * 1000));
      const massesMg = found.loads.map((load) => Math.round(load.batterG * 1000));
      expect(objective(massesMg, rule)).toEqual(bestByTryingAll(tinsMg, rule));
    }
  });
});

describe('partitionLoads on larger mixes', () => {
  it('passes the independent checker, oversize tins and repeats included, on 300 random mixes', () => {
    const random = seeded(7);
    for (let run = 0; run < 300; run++) {
      const limitG = between(random, 600, 2600);
      const asks = Array.from({ length: between(random, 1, 6) }, () => ({
        batterG: between(random, 100, 3000) + random(),
        count: between(random, 1, 4),
      }));
      const found = plan({ asks, limitG, surplusG: eggSurplusG, stepCap: 5_000 });
      expect(faults(asks, limitG, found)).toEqual([]);
      expect(found.loads.length).toBeGreaterThanOrEqual(found.proof.leastLoads);
    }
  });

  it('gives up at the cap, says so, and still hands over a sound plan with its bound', () => {
    const random = seeded(11);
    const asks = Array.from({ length: 20 }, () => ({
      batterG: between(random, 300, 700) + random(),
      count: 1,
    }));
    const found = plan({ asks, limitG: 2000, surplusG: () => 1, stepCap: 50 });
    expect(faults(asks, 2000, found)).toEqual([]);
    expect(found.proof.best).toBe(false);
    expect(found.proof.leastLoads).toBeGreaterThan(0);
  });

  it('gives the same plan when asked twice, and with the asks in another order the same loads', () => {
    const asks = [820, 410, 655, 655, 300, 512.5, 990].map((batterG) => ({ batterG, count: 1 }));
    const once = plan({ asks, limitG: 1500, surplusG: eggSurplusG });
    expect(plan({ asks, limitG: 1500, surplusG: eggSurplusG })).toEqual(once);
    const turned = plan({ asks: [...asks].reverse(), limitG: 1500, surplusG: eggSurplusG });
    expect(turned.loads.map((load) => load.batterG)).toEqual(once.loads.map((load) => load.batterG));
  });
});
