import { beforeAll, describe, expect, it } from 'vitest';
import { finishingChartView } from '../../src/views/finishing-chart.ts';
import type { FinishingChartView } from '../../src/views/finishing-chart.types.ts';
import type { WorkingStep, WorkingView } from '../../src/views/working.types.ts';
import { finishingWorkingView } from '../../src/views/working-finishing.ts';
import { demoContent } from '../samples/demo.ts';
import { CHOCOLATE_GLAZE } from '../samples/poured-glaze.ts';
import { agrees, evaluate } from './arithmetic.ts';

let views: { chart: FinishingChartView; working: WorkingView }[] = [];

beforeAll(async () => {
  const demo = await demoContent();
  const content = { ...demo, finishes: [...demo.finishes, CHOCOLATE_GLAZE] };
  const tall = { ...content.finishing, cakeHeightMm: 130, layers: 5, damMm: 0, undercoatMm: 5 };
  const sharp = content.finishes.map((finish) =>
    finish.use.coating
      ? { ...finish, use: { ...finish.use, coating: { ...finish.use.coating, corners: 'sharp' as const } } }
      : finish,
  );
  views = [content, { ...content, finishing: tall, finishes: sharp }].map((kitchen) => {
    const chart = finishingChartView(kitchen);
    return { chart, working: finishingWorkingView(kitchen, chart) };
  });
});

const stepsOf = ({ shared, rows }: WorkingView): WorkingStep[] => [
  ...shared,
  ...rows.flatMap(({ steps }) => steps),
];

describe('the working of fillings and coatings', () => {
  it('recomputes from its own text', () => {
    const steps = views.flatMap(({ working }) => stepsOf(working));
    const wrong = steps
      .filter(({ operation, output }) => !agrees(operation, output.figure.text, new Map(), 1e-3))
      .map(
        ({ id, operation, output }) =>
          `${id}: ${operation} = ${evaluate(operation).join(' … ')}, printed ${output.figure.text}`,
      );
    expect(wrong).toEqual([]);
    expect(steps.length).toBeGreaterThan(1500);
  });

  it('can tell a wrong result', () => {
    const [step] = stepsOf(views[0]?.working ?? { chartId: '', title: '', shared: [], rows: [] });
    expect(agrees(step?.operation ?? '1', '123456.78')).toBe(false);
  });

  it('shows in every operation all of its inputs', () => {
    for (const { working } of views)
      for (const { operation, inputs } of stepsOf(working))
        for (const { figure } of inputs) expect(operation).toContain(figure.text);
  });

  it('never starts from a number that no step before it made or said to be a measure of the kitchen', () => {
    const measured = /^(plan|wall|plan with coat|wall with coat|volume|sheet|on the cake|to make)$/;
    for (const { working } of views) {
      for (const { steps } of working.rows) {
        const made = new Set<string>();
        for (const { inputs, output } of steps) {
          for (const { label, figure } of inputs)
            if (measured.test(label)) expect([...made], label).toContain(figure.text);
          made.add(output.figure.text);
        }
      }
    }
  });

  it('ends at the amounts that the chart tells, and has one id a step', () => {
    let told = 0;
    for (const { chart, working } of views) {
      chart.rows.forEach((row, at) => {
        const steps = working.rows[at]?.steps ?? [];
        expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
        const output = (id: string) => steps.find((step) => step.id === id)?.output.figure.value;
        row.cells.forEach((cell, column) => {
          const id = chart.columns[column]?.id ?? '';
          if (cell === null) {
            expect(output(`made-${id}`)).toBeUndefined();
            return;
          }
          expect(output(`made-${id}`)).toBe(cell.make.value);
          if (cell.buy) expect(output(`bought-${id}`)).toBe(cell.buy.value);
          told += 1;
        });
        expect(output('coated-across')).toBe(row.coatedAcross.value);
        expect(output('board')).toBe(row.board.value);
        expect(output('box-height')).toBe(row.boxHeight.value);
        expect(output('ribbon')).toBe(row.ribbon.value);
      });
    }
    expect(told).toBeGreaterThan(300);
  });
});
