import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { POUNDS } from '../../src/domain/money.ts';
import { USUAL_WORK } from '../../src/domain/work-settings.ts';
import { parseOrderYaml } from '../../src/parse/orders.ts';
import { readContent } from '../../src/read/content.ts';

async function read(folder: string): Promise<Content> {
  const { content, problems } = await readContent(folder);
  expect(problems).toEqual([]);
  if (content === null) throw new Error('not read');
  return content;
}

describe('orders of the demo', () => {
  it('are read as written, earliest hand-over first', async () => {
    const { orders } = await read('content');
    const times = orders.map(({ handOver }) => handOver.localTime);
    expect(orders.length).toBeGreaterThanOrEqual(5);
    expect(times).toEqual([...times].sort());
    const wedding = orders.find(({ id }) => id === 'three-tiers-for-sixty');
    expect(wedding).toMatchObject({
      reference: 'R-1042',
      arrangement: 'stacked',
      travelsAssembled: false,
      keepsTopTier: true,
      portions: { wanted: 60, size: 'dessert' },
      handOver: { localTime: '2026-11-28T14:00', zone: 'Europe/London', place: 'set up at the venue' },
      notes: 'Lift at the back of the hall; ring the kitchen bell.',
    });
    expect(wedding?.tiers.map(({ tinId, flavourIds }) => [tinId, flavourIds])).toEqual([
      ['round-10', []],
      ['round-8', ['orange']],
      ['round-6', ['orange']],
    ]);
    expect(wedding?.tiers[0]).toMatchObject({ count: 1, finishedHeightMm: 65, layers: 3 });
    expect(wedding?.extras[0]).toEqual({
      name: 'Cake stand',
      count: 1,
      eachMinor: 1200,
      inedible: false,
      vatShare: 0.2,
      comesBack: true,
      backBy: '2026-12-01',
    });
    expect(wedding?.decisions.map(({ answer }) => answer === null)).toEqual([false, false, true]);
  });

  it('come with money, packs, stock and a working day', async () => {
    const { costs, stock, ingredients, work, business, publishesOrders } = await read('content');
    expect(costs).toMatchObject({
      currency: { code: 'GBP', minorPerMajor: 100 },
      labourMinorPerH: 1400,
      overheadMinorPerH: 150,
      electricityMinorPerKwh: 27,
      margin: 0.2,
      roundUpToMinor: 50,
    });
    const [drum, card] = costs.packaging;
    expect(card).toEqual({ name: 'Cake card', eachMinor: 65, per: 'card' });
    // 12 in are 304.8 mm.
    expect(drum).toMatchObject({ name: 'Cake drum', eachMinor: 480, per: 'drum' });
    expect(drum?.sizes?.[1]).toEqual({ acrossMm: expect.closeTo(304.8, 6), eachMinor: 260 });
    const packs = (id: string) => ingredients.find((one) => one.id === id)?.packs;
    expect(packs('egg')).toEqual([
      { size: 6, text: '6', priceMinor: 175 },
      { size: 12, text: '12', priceMinor: 305 },
      { size: 15, text: '15', priceMinor: 370 },
    ]);
    expect(packs('milk')?.[0]).toEqual({ size: 585.04, text: '568 ml', priceMinor: 95 });
    expect(stock).toContainEqual({ ingredientId: 'egg', amount: 5 });
    expect(stock).toContainEqual({ ingredientId: 'milk', amount: 0 });
    expect(work).toMatchObject({
      timeZone: 'Europe/London',
      workingDay: { fromMin: 420, toMin: 1260 },
      hands: 1,
    });
    expect(business?.address).toEqual(['3 Dunnock Stair', 'Orlenwick']);
    expect(publishesOrders).toBe(true);
  });
});

describe('the order in the guide', () => {
  it('is one that can be read, and says what the demo’s own says', async () => {
    const { orders, kitchen, recipes, finishes, flavours } = await read('content');
    const [, yaml = ''] =
      /\*\*An order\*\* is a file[\s\S]*?```yaml\n([\s\S]*?)```/.exec(readFileSync('README.md', 'utf8')) ??
      [];
    const names = (all: readonly { id: string }[]) => ({ ids: all.map(({ id }) => id), broken: [] });
    const { order, problems } = parseOrderYaml(yaml, 'README.md', 'orange-birthday', {
      tins: names(kitchen.tins),
      recipes: names(recipes),
      flavours: names(flavours),
      finishes: names(finishes),
      bunTins: names(kitchen.bunTins ?? []),
      found: { tins: kitchen.tins, bunTins: kitchen.bunTins ?? [], recipes, finishes },
      currency: POUNDS,
      timeZone: 'Europe/London',
    });
    expect(problems).toEqual([]);
    const own = orders.find(({ id }) => id === 'orange-birthday');
    expect(order).toMatchObject({ reference: own?.reference, handOver: own?.handOver, tiers: own?.tiers });
  });
});

describe('a kitchen that says nothing about orders', () => {
  it('has none, charges nothing and publishes nothing', async () => {
    const content = await read('test/kitchens/good/minimal');
    expect(content).toMatchObject({
      orders: [],
      stock: [],
      business: null,
      publishesOrders: false,
      work: USUAL_WORK,
    });
    expect(content.costs).toMatchObject({ labourMinorPerH: 0, margin: 0, packaging: [] });
  });
});
