/** A poured glaze on every paper: told as poured, over the coat below it, with what runs off and what is raw. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { finishCardViews } from '../../src/views/finish-card.ts';
import { finishingChartView } from '../../src/views/finishing-chart.ts';
import type { FinishingChartView } from '../../src/views/finishing-chart.types.ts';
import { ordersView } from '../../src/views/orders.ts';
import { demoContent } from '../samples/demo.ts';
import { CHOCOLATE_GLAZE, EGG_GLAZE } from '../samples/poured-glaze.ts';

let content: Content;
let chart: FinishingChartView;
beforeAll(async () => {
  const demo = await demoContent();
  content = { ...demo, finishes: [...demo.finishes, EGG_GLAZE, CHOCOLATE_GLAZE] };
  chart = finishingChartView(content);
});

const glazeOn = (tinId: string) => {
  const at = chart.columns.findIndex(({ id }) => id === 'chocolate-glaze--coating');
  return chart.rows.find(({ id }) => id === tinId)?.cells[at];
};

describe('a poured glaze on the finishing chart', () => {
  it('stands after ganache, as poured and not as a coat', () => {
    const ids = chart.columns.map(({ id }) => id);
    expect(ids.indexOf('chocolate-glaze--coating')).toBe(ids.indexOf('egg-glaze--coating') - 1);
    expect(ids.indexOf('chocolate-glaze--coating')).toBeGreaterThan(ids.indexOf('white-ganache--coating'));
    expect(ids.indexOf('egg-glaze--coating')).toBeLessThan(ids.indexOf('sugarpaste--rolled'));
    expect(chart.columns.find(({ id }) => id === 'chocolate-glaze--coating')?.useText).toBe('Poured, 3 mm');
    expect(chart.notes.join(' ')).toContain('over a cold cake that already wears 8 mm of a firm coat');
  });

  it('goes over the 8 mm of coat that lie on an eight-inch round 100 mm high, as one works it out by hand', () => {
    // π·(112.6²·111 − 109.6²·108) mm³ at 1.2 g/mL, 40 % on top; nothing of the bare cake.
    const byHand = ((Math.PI * (112.6 ** 2 * 111 - 109.6 ** 2 * 108)) / 1000) * 1.2;
    expect(glazeOn('round-8')?.needed.value).toBeCloseTo(byHand, 1);
    expect(glazeOn('round-8')?.make.value).toBeCloseTo(byHand * 1.4, 1);
  });

  it('is on a half sphere the difference of two caps', () => {
    // Six inches across: a ball of 76.2 mm, coated 84.2, glazed 87.2.
    const byHand = ((((2 * Math.PI) / 3) * (87.2 ** 3 - 84.2 ** 3)) / 1000) * 1.2;
    expect(glazeOn('dome-6')?.needed.value).toBeCloseTo(byHand, 1);
  });
});

describe('its card', () => {
  it('says what runs off, and warns of egg that nothing cooks', () => {
    const cards = finishCardViews({ content, chart });
    const [plain, egg] = ['chocolate-glaze', 'egg-glaze'].map((id) => cards.find((card) => card.id === id));
    expect(plain?.tinsText.replaceAll('\u00a0', ' ')).toMatch(
      /over the coat below it, with 40 % to spare for what runs off\.$/,
    );
    expect(plain?.cautions.map(({ code }) => code)).not.toContain('raw-glaze');
    expect(egg?.cautions.map(({ code }) => code)).toContain('raw-glaze');
  });
});

describe('its order', () => {
  it('is told as poured, over ganache, with as much as the chart of that height says', () => {
    const order = content.orders.find(({ id }) => id === 'orange-birthday');
    if (order === undefined) throw new Error('no order');
    const coats = ['dark-ganache', 'egg-glaze'].map((finishId) => ({ finishId, use: 'coating' as const }));
    const tiers = order.tiers.map((tier) => ({ ...tier, finishes: coats }));
    const glazed = { ...content, orders: [{ ...order, tiers }] };
    const view = ordersView(glazed).orders[0];
    expect(view?.warnings.map(({ code }) => code).filter((code) => code.startsWith('glaze'))).toEqual([]);
    // 65 mm of sponge: the recipe’s finished height, nothing between its layers.
    const byHand = ((Math.PI * (112.6 ** 2 * (65 + 11) - 109.6 ** 2 * (65 + 8))) / 1000) * 1.2;
    const glaze = view?.tiers[0]?.finishes.find(({ finish }) => finish.id === 'egg-glaze');
    expect(glaze?.useText).toBe('Poured, 3 mm');
    expect(glaze?.on.value).toBeCloseTo(byHand, 1);
    expect(view?.cautions.map(({ code }) => code)).toContain('raw-glaze');
  });
});
