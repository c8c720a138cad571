import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import type { Printable } from '../../src/domain/printable.ts';
import type { ChartViews } from '../../src/views/chart-views.ts';
import { type WantedPrints, wantedPrints } from '../../src/views/wanted-prints.ts';
import { ouncesInSentence } from '../../src/wording/ounces.ts';
import { chartsOf, readDemo } from '../samples/demo.ts';

let content: Content;
let charts: ChartViews[];
beforeAll(async () => {
  const read = await readDemo();
  if (read.content === null) throw new Error('the demo content is wrong');
  const { content: demo } = read;
  content = { ...demo, recipes: demo.recipes.filter(({ id }) => id.startsWith('vanilla-equal')) };
  charts = chartsOf(content);
});

const FOUR = ['round-6', 'round-8', 'square-8', 'tray-13-9'];
const myFour: Printable = {
  print: 'tin-chart',
  name: 'my-four',
  recipeIds: ['vanilla-equal-weights'],
  flavourIds: [],
  tinIds: FOUR,
  papers: ['Letter'],
  mass: 'oz',
};

function asked(...printables: Printable[]): WantedPrints[] {
  return wantedPrints({ ...content, printables }, charts, 'tin-chart');
}

describe('wantedPrints(content, charts, kind)', () => {
  it('are everything once while the kitchen lists nothing', () => {
    const [all, ...more] = wantedPrints(content, charts, 'tin-chart');
    expect(more).toEqual([]);
    expect(all?.charts).toHaveLength(charts.length);
    expect(all?.name).toBeNull();
  });

  it('are none of a kind that the list does not name', () => {
    expect(wantedPrints({ ...content, printables: [myFour] }, charts, 'booklet')).toEqual([]);
  });

  it('give a chart of only my four favourite tins, in ounces, on Letter', () => {
    const [four] = asked(myFour);
    expect(four?.name).toBe('my-four');
    expect(four?.content.kitchen.paper).toEqual(['Letter']);
    expect(four?.charts).toHaveLength(1);
    const [{ chart } = { chart: null }] = four?.charts ?? [];
    expect(new Set(chart?.rows.map(({ tinId }) => tinId))).toEqual(new Set(FOUR));
    const text = JSON.stringify(chart).replace(/"picture":\{.*?"alt":"[^"]*"\}/g, '');
    expect(text).not.toMatch(/\d[ \u00a0]g\b(?!\/)/);
    expect(text).toMatch(/\d oz of batter/);
  });

  it('show ounces within 2 % of the grams, and one number for one weight', () => {
    const [four] = asked(myFour);
    const [{ chart } = { chart: null }] = four?.charts ?? [];
    if (chart === null) throw new Error('no chart');
    for (const row of chart.rows) {
      for (const { figure } of row.amounts) {
        const ounces = Number(figure.text.replaceAll(',', ''));
        expect(Math.abs((ounces * 28.349523125) / figure.value - 1)).toBeLessThanOrEqual(0.0201);
      }
    }
    const batters = chart.rows.map(({ batter }) => `${batter.text} oz of batter`);
    expect(batters.some((text) => chart.summary.includes(text))).toBe(true);
  });

  it('keep recipes, flavours and grams as they are listed', () => {
    const [orange] = asked({ print: 'tin-chart', flavourIds: ['orange'], mass: 'g' });
    expect(orange?.charts.map(({ chart }) => chart.id)).toEqual(['vanilla-equal-weights--orange']);
    expect(orange?.charts[0]?.chart).toBe(charts.find(({ chart }) => chart.id.endsWith('--orange'))?.chart);
  });
});

describe('ouncesInSentence(text)', () => {
  it.each([
    ['250 g of batter', '8.8 oz of batter'],
    ['1,417 g and 15 g', '50 oz and 0.53 oz'],
    ['2 g of salt', '0.071 oz of salt'],
    ['0.431 g/mL stays', '0.431 g/mL stays'],
    ['3 gingers, 5 grams', '3 gingers, 5 grams'],
  ])('%j is %j', (text, expected) => expect(ouncesInSentence(text)).toBe(expected));
});
