import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { planOrder } from '../../src/compute/orders/plan-order.ts';
import type { Content } from '../../src/domain/content.ts';
import { POUNDS } from '../../src/domain/money.ts';
import { type OrderContext, parseOrderYaml } from '../../src/parse/orders.ts';
import { parseStockCsv } from '../../src/parse/stock.ts';
import { orderContent } from '../compute/orders/demo-orders.ts';
import { demoContent } from '../samples/demo.ts';

const FILES = readdirSync('content/orders').map((name) => readFileSync(`content/orders/${name}`, 'utf8'));
const STOCK = readFileSync('content/stock.csv', 'utf8');
const RUNS = process.env.TINWRIGHT_LONG === '1' ? 5000 : 120;

let content: Content;
let context: OrderContext;
beforeAll(async () => {
  content = await demoContent();
  const names = (all: readonly { id: string }[]) => ({ ids: all.map(({ id }) => id), broken: [] });
  const { kitchen, recipes, flavours, finishes } = content;
  context = {
    tins: names(kitchen.tins),
    recipes: names(recipes),
    flavours: names(flavours),
    finishes: names(finishes),
    bunTins: names(kitchen.bunTins ?? []),
    found: { tins: kitchen.tins, bunTins: kitchen.bunTins ?? [], recipes, finishes },
    currency: POUNDS,
    timeZone: 'Europe/London',
  };
});

interface Slip {
  at: number;
  cut: number;
  put: string;
}

const slips: fc.Arbitrary<Slip[]> = fc.array(
  fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.integer({ min: 0, max: 9 }),
    put: fc.oneof(
      fc.constantFrom(
        '',
        '0',
        '-1',
        '999',
        ' mm',
        '{',
        '}',
        ': ',
        '\n',
        'round-12',
        'sugarpaste',
        'rolled',
        'yes',
        '"',
      ),
      fc.string({ maxLength: 4 }),
    ),
  }),
  { minLength: 1, maxLength: 4 },
);

const slipped = (text: string, all: readonly Slip[]): string =>
  all.reduce((now, { at, cut, put }) => {
    const from = Math.floor(at * now.length);
    return now.slice(0, from) + put + now.slice(from + cut);
  }, text);

describe('an order with slips of the pen', () => {
  it('is read or told, never thrown; and what is read can be planned', () => {
    fc.assert(
      fc.property(fc.constantFrom(...FILES), slips, (file, all) => {
        const { order, problems } = parseOrderYaml(slipped(file, all), 'orders/slip.yaml', 'slip', context);
        const errors = problems.filter(({ severity }) => severity === 'error');
        expect(order === null).toBe(errors.length > 0);
        for (const { message, hint, file: where } of problems) {
          expect(message.length).toBeGreaterThan(10);
          expect(hint?.length ?? 0).toBeGreaterThan(5);
          expect(where).toBe('orders/slip.yaml');
        }
        if (order === null) return;
        const planned = planOrder(order, orderContent(content));
        expect(planned.ok).toBe(true);
        if (!planned.ok) return;
        expect(JSON.stringify(planned.value)).not.toMatch(/NaN|Infinity|null,"unit"/);
        expect(planned.value.weightG).toBeGreaterThan(0);
      }),
      { numRuns: RUNS },
    );
  });

  it('is the same for a shelf list', () => {
    const shelf = { ingredients: new Map(content.ingredients.map((item) => [item.id, item])), broken: [] };
    fc.assert(
      fc.property(slips, (all) => {
        const { stock, problems } = parseStockCsv(slipped(STOCK, all), 'stock.csv', shelf);
        for (const { amount } of stock) expect(amount).toBeGreaterThanOrEqual(0);
        for (const { hint } of problems) expect(hint).toBeDefined();
      }),
      { numRuns: RUNS },
    );
  });
});
