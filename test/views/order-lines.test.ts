/** Cutting cakes, cupcakes and dummies as pages, sheets and quotes say them. */
import { beforeAll, describe, expect, it } from 'vitest';
import { orderCsv } from '../../src/data/order-data.ts';
import type { Content } from '../../src/domain/content.ts';
import type { DummyTier, Order } from '../../src/domain/order.ts';
import { bunTinViews } from '../../src/views/bun-tins.ts';
import type { OrderView } from '../../src/views/order.types.ts';
import { intoText } from '../../src/views/order-batters.ts';
import { orderSummary, tierName } from '../../src/views/order-names.ts';
import { ordersView } from '../../src/views/orders.ts';
import { orderWordsFor } from '../../src/wording/orders/index.ts';
import { demoContent } from '../samples/demo.ts';

let content: Content;
let fair: OrderView;
let square: OrderView;
beforeAll(async () => {
  content = await demoContent();
  const { orders } = ordersView(content);
  const named = (id: string): OrderView => {
    const found = orders.find((one) => one.id === id);
    if (found === undefined) throw new Error(`no ${id}`);
    return found;
  };
  fair = named('fair-trays');
  square = named('square-and-round');
});

const words = orderWordsFor('en-GB');

describe('an order with all of them', () => {
  it('says in one sentence what it is', () => {
    expect(square.summary).toBe(
      'Three tiers, stacked, one of them a dummy; a cutting cake: 78 dessert portions (75 wanted, 3 over).',
    );
    expect(fair.summary).toMatch(/^Four cakes; 24 cupcakes: /);
    expect(square.facts.find(({ id }) => id === 'beside')?.text).toBe('Cutting cake');
    expect(fair.facts.find(({ id }) => id === 'beside')?.text).toBe('24 cupcakes');
  });

  it('names each by its place or its kind', () => {
    expect(square.tiers.map(({ name }) => name)).toEqual(['Bottom tier', 'Middle tier', 'Cutting cake']);
    expect(square.dummies.map(({ name }) => name)).toEqual(['Top tier (dummy)']);
    expect(fair.tiers.map(({ countedName }) => countedName)).toEqual([
      'Cake 1',
      'Cake 2',
      '2 × Cake 3',
      '24 cupcakes',
    ]);
  });

  it('numbers several of one kind', () => {
    const order: Order | undefined = content.orders.find(({ id }) => id === 'fair-trays');
    const cupcakes = order?.tiers.at(-1);
    if (order === undefined || cupcakes === undefined) throw new Error('no cupcakes');
    const cutting = { ...cupcakes, beside: 'cutting cake' as const, small: undefined };
    const many = { ...order, tiers: [cutting, cutting, cupcakes, { ...cupcakes }] } as Order;
    const two = { ...many, tiers: many.tiers.map((tier) => ({ ...tier })) };
    expect(two.tiers.map((_, at) => tierName({ order: two }, at, words))).toEqual([
      'Cutting cake 1',
      'Cutting cake 2',
      'Cupcakes 1',
      'Cupcakes 2',
    ]);
    expect(orderSummary({ order: two }, 'x', words)).toBe('48 cutting cakes; 24 cupcakes; 24 cupcakes: x.');
  });

  it('says kitchen cake in America', () => {
    const us = orderWordsFor('en-US').beside;
    expect(us.cuttingCake(1, 1)).toBe('Kitchen cake');
    expect(us.pieces(1, 'cupcakes')).toBe('1 cupcake');
  });
});

describe('the sheet of cupcakes', () => {
  it('fills cups, not tins', () => {
    const tins = fair.batters.flatMap(({ bowlfuls }) => bowlfuls.flatMap((bowl) => bowl.tins));
    const cups = tins.filter(({ pieces }) => pieces !== null);
    expect(cups.map((tin) => `${tin.each.text} ${intoText(tin, words)}`)).toEqual([
      '40 g into each of 24 cups, cupcakes: 2 × Twelve-cup muffin tin',
    ]);
  });

  it('has the kitchen’s own minutes to the minute, tins, boxes and what goes on each', () => {
    const cupcakes = fair.tiers.at(-1);
    expect(cupcakes?.bake).toMatchObject({
      firstLook: { value: 18, text: '18\u00a0min' },
      expectedBy: { value: 22, text: '22\u00a0min' },
    });
    expect(cupcakes?.small).toMatchObject({
      tins: { value: 2 },
      boxes: { value: 4 },
      boxesText: '4 boxes of 6',
    });
    expect(cupcakes?.finishes.map(({ useText, on }) => [useText, on.value])).toEqual([
      ['On each, 30\u00a0g', 720],
    ]);
    expect(words.beside.boxes(3, 12, 6)).toBe('3 boxes of 12, the last with 6');
    expect(words.beside.boxes(1, 12, 6)).toBe('one box of 12, with 6');
  });

  it('buys a case for each and a box for six', () => {
    const rows = fair.cost.rows.map(({ name, amountText, cost }) => [name, amountText, cost.value]);
    // 24 × 4 p; 4 × 85 p; a card for each of the four cakes and none for cupcakes.
    expect(rows).toContainEqual(['Paper case', '24', 96]);
    expect(rows).toContainEqual(['Cupcake box for six', '4', 340]);
    expect(rows).toContainEqual(['Cake card', '4', 260]);
  });
});

describe('the tins of a kitchen', () => {
  it('end with those for small cakes: cups, what one holds, what the oven takes, and the minutes', () => {
    // π·32/12·(70² + 70·50 + 50²) = 91.3 mL.
    expect(bunTinViews(content.kitchen)).toEqual([
      {
        ...{ id: 'muffin-12', name: 'Twelve-cup muffin tin', ownedText: '× 2' },
        text: '12 cups, round 70 × 32 mm, base 50 mm, 91\u00a0mL each; 350 mm × 265 mm outside. Look after 18\u00a0min, out by 22\u00a0min, by the kitchen’s own watch.',
      },
    ]);
  });
});

describe('a dummy', () => {
  it('is told to the customer, first of all on the stack sheet', () => {
    expect(square.inedible).toContain('Top tier (dummy)');
    expect(square.cautions.find(({ code }) => code === 'dummy')?.text).toMatch(
      /^Top tier \(dummy\): polystyrene, not food.*Hired: agree when it comes back\.$/,
    );
    expect(square.stack?.cautions[0]?.code).toBe('dummy-tier');
    expect(square.stack?.facts.find(({ id }) => id === 'inside')?.text).toContain('a dummy tier');
    expect(square.stack?.tiers.map(({ id, dummy }) => [id, dummy])).toEqual([
      ['tier-1', false],
      ['tier-2', false],
      ['dummy-1', true],
    ]);
    expect(square.stack?.picture.parts.filter(({ kind }) => kind === 'dummy')).toHaveLength(1);
  });

  it('below all else needs no supports: a show of dummies says so, and has no template', () => {
    const order = content.orders.find(({ id }) => id === 'square-and-round');
    if (order === undefined) throw new Error('no order');
    const dummy = (at: number, acrossMm: number): DummyTier => ({
      ...{ at, form: { shape: { kind: 'round', acrossMm }, depthMm: 100 }, unit: 'mm' },
      ...{ finishes: [{ finishId: 'sugarpaste', use: 'rolled' }], supply: 'bought', eachMinor: 320 },
    });
    const show = {
      ...order,
      tiers: order.tiers.filter(({ beside }) => beside !== undefined),
      dummies: [dummy(0, 250), dummy(1, 150)],
    };
    const orders = content.orders.map((one) => (one === order ? show : one));
    const view = ordersView({ ...content, orders }).orders.find(({ id }) => id === show.id);
    expect(view?.summary).toMatch(/^Two tiers, stacked, all of them dummies; a cutting cake: /);
    expect(view?.stack?.sets).toEqual([]);
    expect(view?.stack?.placesAbout).toBe('No tier needs supports: dummies hold what stands on them.');
    expect(view?.stack?.steps.join(' ')).not.toContain('Prick');
    // Both are bought: things on the list, and costs under their own names.
    const things = view?.shopping.rows.filter(({ ingredient }) => ingredient.name.startsWith('Dummy')) ?? [];
    expect(
      things.map(({ ingredient, buyText, cost, used }) => [ingredient.name, buyText, cost?.value, used]),
    ).toEqual([
      ['Dummy tier, round 250 × 100 mm', '1', 320, null],
      ['Dummy tier, round 150 × 100 mm', '1', 320, null],
    ]);
    expect(view?.cost.rows.filter(({ kind }) => kind === 'materials').map(({ cost }) => cost.value)).toEqual([
      320, 320,
    ]);
    expect(view?.cost.notes).toEqual([expect.stringMatching(/^The drive’s hours, there and back/)]);
  });

  it('is a hire with VAT on the quote and no cake', () => {
    const hire = square.quote.rows.find(({ name }) => name.startsWith('Hire of a dummy'));
    // 6.00 and a fifth of it.
    expect([hire?.net.value, hire?.vat.value]).toEqual([600, 120]);
    expect(square.quote.includes.at(-1)).toMatch(/^Top tier \(dummy\), .*: polystyrene, not food; /);
  });

  it('stands in the CSV as what it is', () => {
    const lines = orderCsv(square).split('\r\n');
    expect(lines.filter((line) => line.startsWith('dummy,dummy-1,')).length).toBeGreaterThanOrEqual(5);
    expect(lines.some((line) => line.startsWith('on the dummy,dummy-1,dark-ganache,coating,338'))).toBe(true);
    expect(lines.some((line) => line.startsWith('cake,dummy'))).toBe(false);
  });
});
