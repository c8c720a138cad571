import { beforeAll, describe, expect, it } from 'vitest';
import type { Content } from '../../src/domain/content.ts';
import { type ChartViews, chartViews } from '../../src/views/chart-views.ts';
import type { WorkingStep } from '../../src/views/working.types.ts';
import { demoContent } from '../samples/demo.ts';
import { agrees, evaluate } from './arithmetic.ts';

let views: ChartViews[] = [];

beforeAll(async () => {
  const content = await demoContent();
  const kitchen: Content['kitchen'] = {
    ...content.kitchen,
    oven: { fan: true, dial: 'C', core: 'hollow', band: true },
  };
  views = [
    ...chartViews({ ...content, flavours: [] }),
    ...chartViews({ ...content, kitchen, flavours: [], bakeLog: [] }),
  ].map((view) => {
    const working = view.working();
    return { ...view, working: () => working };
  });
});

function bakeStepsOf(view: ChartViews): WorkingStep[] {
  const { shared, rows } = view.working();
  return [...shared, ...rows.flatMap(({ steps }) => steps)].filter(({ id }) => id.startsWith('bake-'));
}

/** Proven bakes have steps called bake-1-…; those of the oven are words. */
const inOven = ({ id }: WorkingStep): boolean => !/^bake-\d/.test(id);

describe('the working of bake times', () => {
  it('recomputes from its own text, with and without a log', () => {
    const steps = views.flatMap(bakeStepsOf).filter(inOven);
    const wrong = steps
      .filter(({ operation, output }) => !agrees(operation, output.figure.text, new Map(), 5e-4))
      .map(
        ({ id, operation, output }) =>
          `${id}: ${operation} = ${evaluate(operation).join(' … ')}, printed ${output.figure.text}`,
      );
    expect(wrong).toEqual([]);
    expect(steps.length).toBeGreaterThan(2000);
  });

  it('shows in every operation all of its inputs', () => {
    for (const { operation, inputs } of views.flatMap(bakeStepsOf).filter(inOven))
      for (const { figure } of inputs) expect(operation).toContain(figure.text);
  });

  it('ends at the times that the chart tells', () => {
    let told = 0;
    for (const view of views) {
      const { chart } = view;
      const working = view.working();
      chart.rows.forEach((row, at) => {
        const steps = working.rows[at]?.steps ?? [];
        const output = (id: string) => steps.find((step) => step.id === id)?.output.figure.value;
        expect(output('bake-heat')).toBe(row.bake?.dial.value);
        expect(output('bake-first-look')).toBe(row.bake?.firstLook.value);
        expect(output('bake-likely')).toBe(row.bake?.likely.value);
        expect(output('bake-done-by')).toBe(row.bake?.expectedBy.value);
        told += row.bake ? 1 : 0;
      });
    }
    expect(told).toBeGreaterThan(100);
  });

  it('gives every step a rule and a source', () => {
    for (const { rule, source } of views.flatMap(bakeStepsOf).filter(inOven)) {
      expect(rule).toMatch(/\.$/);
      expect(source.length).toBeGreaterThan(5);
    }
  });
});
