import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CostBasis, orderCost } from '../../../src/compute/costs/order-cost.ts';
import { priceMinor } from '../../../src/compute/costs/price.ts';
import { type CostSettings, NO_COSTS } from '../../../src/domain/costs.ts';

const BASE: CostSettings = {
  ...NO_COSTS,
  labourMinorPerH: 1400,
  overheadMinorPerH: 150,
  electricityMinorPerKwh: 27,
  margin: 0.2,
  roundUpToMinor: 50,
  packaging: [{ name: 'Cake box and board', eachMinor: 460, per: 'order' }],
};

const packaged = (changes: Partial<CostBasis['pieces']>): CostBasis['pieces'] => ({
  order: 1,
  cake: 0,
  'cutting cake': 0,
  'small cake': 0,
  'box of 6': 0,
  'box of 12': 0,
  'box of 24': 0,
  drum: 0,
  card: 0,
  'cake box': 0,
  support: 0,
  'centre dowel': 0,
  'metre of ribbon': 0,
  'lined tin': 0,
  drive: 0,
  ...changes,
});

const basis = (changes: Partial<CostBasis> = {}): CostBasis => ({
  ingredients: [{ name: 'all of them', usedMinor: 940 }],
  materials: [],
  pieces: packaged({ cake: 1 }),
  ovenKwh: 2,
  handsOnMin: 270,
  extras: [],
  ...changes,
});

const amounts = (cost: ReturnType<typeof orderCost>): number[] => cost.lines.map(({ minor }) => minor);

describe('orders costed by hand, every figure invented', () => {
  it('a cake of 4½ hours: 9.40 + 4.60 + 0.54 + 63.00 + 6.75 = 84.29; ÷ 0.8 = 105.3625; up to 105.50', () => {
    const cost = orderCost('Cake', basis(), BASE);
    expect(amounts(cost)).toEqual([940, 460, 54, 6300, 675]);
    expect(cost).toMatchObject({
      costMinor: 8429,
      exactPriceMinor: 10536.25,
      netMinor: 10550,
      vatMinor: 0,
      totalMinor: 10550,
      marginMinor: 2121,
    });
  });

  it('rounds each line before adding: 3 × 0.335 h is 4.69 of labour and 0.50 of overhead, not a sum rounded late', () => {
    // 20.1 min = 0.335 h; × 14.00 = 4.69; × 1.50 = 0.5025 → 0.50; 1.3 kWh × 0.27 = 0.351 → 0.35
    const cost = orderCost('Cake', basis({ handsOnMin: 20.1, ovenKwh: 1.3 }), BASE);
    expect(amounts(cost)).toEqual([940, 460, 35, 469, 50]);
    expect(cost.costMinor).toBe(1954);
    // 19.54 ÷ 0.8 = 24.425 → 24.50
    expect(cost.netMinor).toBe(2450);
  });

  it('half a penny goes up: 0.5 kWh at 27 p is 13.5 p, charged as 14 p', () => {
    expect(amounts(orderCost('Cake', basis({ ovenKwh: 0.5 }), BASE))[2]).toBe(14);
  });

  it('a price that comes out even is left alone: 80.00 ÷ 0.8 = 100.00', () => {
    // 17.00 + 63.00 and no packaging, energy or overhead
    const settings = { ...BASE, packaging: [], electricityMinorPerKwh: 0, overheadMinorPerH: 0 };
    const cost = orderCost('Cake', basis({ ingredients: [{ name: 'all', usedMinor: 1700 }] }), settings);
    expect(cost.costMinor).toBe(8000);
    expect(cost.netMinor).toBe(10000);
  });

  it('counts packaging by the order or by the cake: 4.60 + 3 × 0.65 = 6.55', () => {
    const packaging = [...BASE.packaging, { name: 'Card', eachMinor: 65, per: 'cake' } as const];
    const cost = orderCost('Cake', basis({ pieces: packaged({ cake: 3 }) }), { ...BASE, packaging });
    expect(amounts(cost).slice(1, 3)).toEqual([460, 195]);
    // 9.40 + 6.55 + 0.54 + 63.00 + 6.75 = 86.24; ÷ 0.8 = 107.80 → 108.00
    expect([cost.costMinor, cost.netMinor]).toEqual([8624, 10800]);
  });

  it('a bought dummy and three boxes of cupcakes: 9.40 + 3.20 + 4.60 + 24 × 0.04 + 3 × 0.55 + 0.54 + 63.00 + 6.75 = 90.10', () => {
    const packaging = [
      ...BASE.packaging,
      { name: 'Paper case', eachMinor: 4, per: 'small cake' } as const,
      { name: 'Cupcake box', eachMinor: 55, per: 'box of 12' } as const,
      { name: 'Half-dozen box', eachMinor: 40, per: 'box of 6' } as const,
    ];
    const changes = {
      materials: [{ name: 'Dummy', eachMinor: 320, count: 1 }],
      pieces: packaged({ cake: 2, 'small cake': 24, 'box of 12': 3 }),
    };
    const cost = orderCost('Cake', basis(changes), { ...BASE, packaging });
    expect(amounts(cost)).toEqual([940, 320, 460, 96, 165, 54, 6300, 675]);
    expect(cost.costMinor).toBe(9010);
    // Of the small boxes none is taken, so they have no line. 90.10 ÷ 0.8 = 112.625 → 113.00
    expect(cost.lines.map(({ name }) => name)).not.toContain('Half-dozen box');
    expect(cost.netMinor).toBe(11300);
  });

  it('VAT line by line: cake at 0 %, hire at 20 %, three flowers at 20 %', () => {
    const extras = [
      { name: 'Stand hire', count: 1, eachMinor: 1200, inedible: true, vatShare: 0.2 },
      { name: 'Flowers', count: 3, eachMinor: 333, inedible: true, vatShare: 0.2 },
    ];
    const cost = orderCost('Cake', basis({ extras }), BASE);
    // 12.00 → 2.40; 9.99 → 1.998 → 2.00; 105.50 + 12.00 + 9.99 = 127.49; + 4.40 = 131.89
    expect(cost.prices.map(({ vatMinor }) => vatMinor)).toEqual([0, 240, 200]);
    expect(cost).toMatchObject({ netMinor: 12749, vatMinor: 440, totalMinor: 13189 });
  });

  it('VAT on everything where the kitchen says so: 105.50 × 20 % = 21.10, an extra without its own share too', () => {
    const extras = [{ name: 'Delivery', count: 1, eachMinor: 800, inedible: false }];
    const cost = orderCost('Cake', basis({ extras }), { ...BASE, vatShare: 0.2 });
    expect(cost.prices.map(({ vatMinor }) => vatMinor)).toEqual([2110, 160]);
    expect(cost.totalMinor).toBe(10550 + 800 + 2270);
  });

  it('sold at cost, to the penny, without margin or steps: 84.29', () => {
    const cost = orderCost('Cake', basis(), { ...BASE, margin: 0, roundUpToMinor: 1 });
    expect([cost.netMinor, cost.marginMinor]).toEqual([8429, 0]);
  });
});

describe('priceMinor', () => {
  it('is the least multiple of the step that leaves the margin', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5_000_000 }),
        fc.integer({ min: 0, max: 900_000 }),
        fc.constantFrom(1, 5, 25, 50, 100, 500),
        (cost, millionths, step) => {
          const price = priceMinor(cost, millionths / 1e6, step);
          const kept = (asked: number): bigint => BigInt(asked) * BigInt(1_000_000 - millionths);
          expect(price % step).toBe(0);
          expect(kept(price) >= BigInt(cost) * 1_000_000n).toBe(true);
          if (price > 0) expect(kept(price - step) < BigInt(cost) * 1_000_000n).toBe(true);
        },
      ),
    );
  });
});
