import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { allergensOf } from '../../src/compute/allergens/allergens-of.ts';
import { labelCsv, labelJson, lineText } from '../../src/data/label-data.ts';
import { labelOutcome } from '../../src/views/label.ts';
import type { LabelView } from '../../src/views/label.types.ts';
import { labelMatrix } from '../../src/views/label-matrix.ts';
import { orderLabels } from '../../src/views/label-orders.ts';
import { sampleLabels } from '../../src/views/label-samples.ts';
import { labelWordsFor } from '../../src/wording/label/index.ts';
import { demoContent } from '../samples/demo.ts';
import { labelInput } from '../samples/label-input.ts';

const content = await demoContent();
const samples = sampleLabels(content);
const kitchen = { name: 'A kitchen', edition: '2026-11-01', locale: 'en-GB' as const };

function made(
  more: Parameters<typeof labelInput>[0] = {},
  own = kitchen as Parameters<typeof labelOutcome>[1],
): LabelView {
  const { view, refusals } = labelOutcome(labelInput(more), own);
  if (view === null) throw new Error(JSON.stringify(refusals));
  return view;
}

const textOf = (view: LabelView, id: string): string =>
  view.lines
    .filter((line) => line.id === id)
    .map(lineText)
    .join(' ');

describe('every recipe of the demo, plain and in its flavours', () => {
  it('has a label', () => {
    expect(samples.map(({ id }) => id)).toContain('vanilla-equal-weights--orange');
    expect(samples.length).toBeGreaterThanOrEqual(content.recipes.length);
    expect(samples.filter(({ view }) => view === null)).toEqual([]);
  });

  it.each(samples.flatMap(({ view }) => view ?? []))(
    '$id: shares the bowl, and emphasises what its ingredients contain',
    (view) => {
      const sum = view.ingredients.reduce((all, { share }) => all + share.value, 0);
      expect(sum).toBeGreaterThan(0.97);
      expect(sum).toBeLessThan(1.00001);
      const bold =
        view.lines[0]?.runs.filter(({ strong }) => strong).map(({ text }) => text.toLowerCase()) ?? [];
      for (const name of view.allergens)
        expect(bold.some((word) => word.startsWith(name.slice(0, 4)) || name === 'sulphites')).toBe(true);
      expect(JSON.parse(JSON.stringify(view))).toEqual(view);
      expect(view.nutrition?.rows).toHaveLength(8);
    },
  );

  it('says of none that it is free from anything, and beside what is left out that traces are possible', () => {
    for (const { view } of samples) {
      const said = [...(view?.lines ?? []), ...(view?.card ?? [])].map(lineText).join(' ');
      expect(said).not.toMatch(/\bfree from\b|-free\b|\bvegan\b/i);
      if (/without/.test(view?.foodName ?? '')) expect(said).toMatch(/traces are possible/);
    }
  });

  it('leaves a finish off that the name rules out', () => {
    const plain = samples.find(({ id }) => id === 'vanilla-equal-weights--made-without-milk');
    expect(plain?.view?.allergens).not.toContain('milk');
    expect(plain?.foodName).not.toMatch(/buttercream/);
  });

  it('stands in the matrix with the allergens of its formula', () => {
    const matrix = labelMatrix(content);
    for (const recipe of content.recipes) {
      const { contained } = allergensOf(
        recipe.formula.map(({ ingredientId }) => ingredientId),
        content.ingredients,
      );
      const row = matrix.rows.find(({ id }) => id === recipe.id);
      const told = matrix.columns.filter((_, at) => row?.cells[at]?.contains).map(({ id }) => id);
      expect(new Set(told)).toEqual(new Set(contained.map(({ allergen }) => allergen)));
    }
  });

  it('is refused, and so has no text at all, once the allergens of its flour are unknown', () => {
    const shelf = content.ingredients.map((one) => {
      const { allergens, ...rest } = one;
      return one.id === 'self-raising-flour' ? rest : one;
    });
    const sponge = sampleLabels({ ...content, ingredients: shelf }).find(
      ({ id }) => id === 'vanilla-equal-weights',
    );
    expect(sponge?.view).toBeNull();
    expect(sponge?.refusals.map(({ code }) => code)).toEqual(['label-allergens-missing']);
  });
});

describe('the orders of the demo', () => {
  const orders = orderLabels(content);
  const labelOf = (orderId: string, at: number): LabelView => {
    const view = orders.find((one) => one.orderId === orderId)?.labels[at]?.view;
    if (view == null) throw new Error(`no label of ${orderId}`);
    return view;
  };

  it('have a label for every kind of cake, as many as there are cakes, or boxes of small ones', () => {
    for (const order of content.orders) {
      const labels = orders.find(({ orderId }) => orderId === order.id)?.labels ?? [];
      const wanted = order.tiers.map(({ count, small }) => (small === undefined ? count : count / small.box));
      expect(labels.map(({ copies }) => copies)).toEqual(wanted);
      expect(labels.every(({ view }) => view !== null)).toBe(true);
    }
  });

  it('say what must come off, and which order it is', () => {
    const view = labelOf('three-tiers-for-sixty', 0);
    expect(textOf(view, 'inedible')).toMatch(/supports and boards.*fresh flowers in picks/);
    expect(textOf(view, 'order')).toBe('Order R-1042');
    expect(textOf(view, 'storage')).toMatch(/Not in a fridge/);
  });

  it('carry the day to eat them by, counted from the days of the timetable', () => {
    // W48 bakes the three tiers on Thursday the 26th; the sponge keeps four days (common practice), so Monday.
    const view = labelOf('three-tiers-for-sixty', 0);
    expect(textOf(view, 'date')).toBe('Best before: 30 November 2026');
    expect(view.keepsText).toContain('Equal-weights vanilla sponge, made on 26 November 2026');
    for (const { labels } of orders) {
      for (const { view: label } of labels)
        expect(label?.lines.find(({ id }) => id === 'date')?.toWrite).toBe(false);
    }
  });

  it('leave the day to write where the week has no timetable', () => {
    const work = { ...content.work, workingDay: { fromMin: 600, toMin: 630 } };
    const weeks = content.weeks.map((week) => ({
      ...week,
      calendar: {
        ...week.calendar,
        days: week.calendar.days.map((day) => ({ ...day, workToMinute: day.workFromMinute + 30 })),
      },
    }));
    const [first] = orderLabels({ ...content, work, weeks });
    expect(first?.labels[0]?.view?.lines.find(({ id }) => id === 'date')?.toWrite).toBe(true);
  });

  it('are prepacked for direct sale at a stall', () => {
    expect(labelOf('fair-trays', 0).sale).toBe('prepacked for direct sale');
    expect(labelOf('three-tiers-for-sixty', 0).sale).toBe('made to order');
  });
});

describe('a label', () => {
  it('says its lines in the words of the country', () => {
    const view = made({ named: ['butter'] });
    expect(textOf(view, 'ingredients')).toBe(
      'Ingredients: sugar, butter 27.6\u00a0% (MILK), self-raising flour (WHEAT), EGG, strawberry jam (sugar, strawberry, pectin).',
    );
    expect(textOf(view, 'see')).toBe('Allergens: see ingredients in BOLD CAPITALS.');
    expect(textOf(view, 'net')).toBe('Net weight: 1,450\u00a0g');
    expect(textOf(view, 'rules')).toBe('Written by the UK rules of 1 October 2021.');
    expect(textOf(view, 'business')).toBe('Made by Dunnock Stair Cakes, 3 Dunnock Stair, Orlenwick');
    expect(view.lines.find(({ id }) => id === 'date')?.toWrite).toBe(true);
  });

  it('in the US ends its list with what it contains, and weighs in pounds first', () => {
    const settings = { ...labelInput().settings, rules: 'US' as const };
    const view = made({ settings }, { ...kitchen, locale: 'en-US' });
    expect(textOf(view, 'contains')).toBe('Contains: MILK, WHEAT, EGG.');
    expect(textOf(view, 'see')).toBe('');
    // 1,450 g are 51.147 oz: 3 lb and 3.147 oz, told down to a tenth.
    expect(textOf(view, 'net')).toBe('Net Wt 3\u00a0lb 3.1\u00a0oz (1,450\u00a0g)');
  });

  it('says how many portions there are where figures are told for one', () => {
    const told = samples.flatMap(({ view }) => (view?.nutrition?.perPortionHead ? [view] : []));
    expect(told.length).toBeGreaterThan(10);
    for (const view of told) {
      const portions = Number(/^Net weight: .*\u00a0g\. (\d+) portions\.$/.exec(textOf(view, 'net'))?.[1]);
      const grams = Number(/\((\d+) g\)/.exec(view.nutrition?.perPortionHead ?? '')?.[1]);
      // A portion is told in whole grams.
      expect(Math.abs(portions * grams - view.finished.value)).toBeLessThanOrEqual(portions / 2 + 0.01);
    }
    // Without figures per portion nobody counts them.
    expect(textOf(made({ portions: 12 }), 'net')).toBe('Net weight: 1,450\u00a0g');
    expect(labelWordsFor('en-US').portions(12)).toBe('12 servings per container.');
  });

  it('has a short card that names the allergens and never a list', () => {
    const card = made().card.map(lineText);
    expect(card[0]).toBe('Contains: MILK, WHEAT, EGG.');
    expect(card.join(' ')).not.toMatch(/ingredients:/i);
    expect(card.join(' ')).toMatch(/traces are possible/);
  });

  it('tells what was made on a day by when to eat it', () => {
    const facts = { madeOn: '2026-11-27', inedible: [], reference: null };
    expect(textOf(made({ facts }), 'date')).toBe('Best before: 30 November 2026');
  });

  it('keeps the baker’s own words for storage', () => {
    const settings = { ...labelInput().settings, storage: 'Under the glass bell.' };
    expect(textOf(made({ settings }), 'storage')).toBe('Under the glass bell.');
  });

  it('is the same in its JSON, its CSV and its lines', () => {
    const view = samples.find(({ id }) => id === 'harvest-fruit')?.view;
    if (view == null) throw new Error('no label');
    const json = JSON.parse(labelJson(view));
    const rows: Record<string, string>[] = parse(labelCsv(view), { columns: true, bom: true });
    const inCsv = (kind: string): (string | undefined)[] =>
      rows.filter((row) => row.kind === kind).map(({ value }) => value);
    expect(inCsv('ingredient in the bowl').map(Number)).toEqual(
      json.ingredients.map((one: { bowl: { value: number } }) => one.bowl.value),
    );
    expect(rows.filter(({ kind }) => kind === 'line of the label').map(({ shown }) => shown)).toEqual(
      view.lines.map(lineText),
    );
    expect(json.lines.map(({ text }: { text: string }) => text)).toEqual(view.lines.map(lineText));
    const told = textOf(view, 'nutrition');
    for (const row of view.nutrition?.rows ?? []) {
      expect(told).toContain(row.per100GText);
      for (const figure of row.per100G)
        expect(rows.some(({ kind, shown }) => kind === 'nutrient per 100 g' && shown === figure.text)).toBe(
          true,
        );
    }
  });
});
