import { describe, expect, it } from 'vitest';
import type { EggSetting, Kitchen } from '../../src/domain/kitchen.ts';
import type { Recipe } from '../../src/domain/recipe.ts';
import type { Shape } from '../../src/domain/shape.ts';
import type { Tin } from '../../src/domain/tin.ts';
import type { FigureUnit } from '../../src/views/figure.ts';
import { tinChartView } from '../../src/views/tin-chart.ts';
import { workingView } from '../../src/views/working.ts';
import type { WorkingStep, WorkingView } from '../../src/views/working.types.ts';
import { bigBowl, equalWeights, kitchen, line, MEDIUM_G, round, tin } from '../compute/mixes/sample.ts';
import { agrees, evaluate, printed } from './arithmetic.ts';

const square = (mm: number) => ({
  rings: [
    {
      start: { x: -mm / 2, y: -mm / 2 },
      segments: [
        { kind: 'line' as const, to: { x: mm / 2, y: -mm / 2 } },
        { kind: 'line' as const, to: { x: mm / 2, y: mm / 2 } },
        { kind: 'line' as const, to: { x: -mm / 2, y: mm / 2 } },
      ],
    },
  ],
});

const SHAPES: Shape[] = [
  { kind: 'round', acrossMm: 203.2 },
  { kind: 'round', acrossMm: 203.2, baseAcrossMm: 190.5 },
  { kind: 'square', sideMm: 200 },
  { kind: 'square', sideMm: 200, baseSideMm: 180 },
  { kind: 'rectangle', lengthMm: 330.2, widthMm: 228.6 },
  { kind: 'loaf', lengthMm: 228.6, widthMm: 127, baseLengthMm: 203.2, baseWidthMm: 101.6 },
  { kind: 'hexagon', acrossMm: 203.2, measured: 'flats' },
  { kind: 'hexagon', acrossMm: 203.2, measured: 'corners' },
  { kind: 'octagon', acrossMm: 203.2, measured: 'flats' },
  { kind: 'octagon', acrossMm: 203.2, measured: 'corners' },
  { kind: 'long-octagon', lengthMm: 304.8, widthMm: 228.6, slantMm: 76.2 },
  { kind: 'oval', lengthMm: 254, widthMm: 203.2 },
  { kind: 'heart', acrossMm: 203.2, measured: 'across' },
  { kind: 'heart', acrossMm: 203.2, measured: 'point' },
  { kind: 'petal', petals: 6, acrossMm: 228.6 },
  { kind: 'petal', petals: 5, acrossMm: 228.6 },
  { kind: 'ring', acrossMm: 254, tubeMm: 76.2 },
  { kind: 'ring', acrossMm: 254, tubeMm: 76.2, baseAcrossMm: 220, baseTubeMm: 90 },
  { kind: 'dome', acrossMm: 152.4 },
  { kind: 'outline', outlineId: 'block', outline: square(170) },
  { kind: 'measured', volumeMl: 1850 },
];

/** Each shape deep, shallow (so that the cake stands above the rim), and deep with water measured. */
const TINS: Tin[] = SHAPES.flatMap((shape, at) => [
  { ...tin(`deep-${at}`, shape, 76.2, 2) },
  { ...tin(`shallow-${at}`, shape, 50) },
  { ...tin(`water-${at}`, shape, 76.2), ...(shape.kind === 'measured' ? {} : { measuredVolumeMl: 1734.5 }) },
]);

const mixed: Recipe = {
  ...equalWeights,
  id: 'mixed',
  allowedRiseMm: 10,
  formula: [
    ...equalWeights.formula,
    line('yolk', 2 * 17.35, { role: 'egg', eggPart: 'yolk' }),
    line('baking-powder', 3.7, { role: 'raising', fine: true }),
    line('milk', 41, { role: 'liquid' }),
  ],
  provenBakes: [
    { tins: [{ tin: round(7), count: 2 }], finishedHeightMm: 65, batterG: 1370 },
    {
      tins: [
        { tin: round(8), count: 1 },
        { tin: tin('loaf', SHAPES[5] as Shape, 69.85), count: 2 },
      ],
      finishedHeightMm: 60,
      batterG: 2140,
    },
  ],
};
const eggFree: Recipe = {
  ...mixed,
  id: 'egg-free',
  formula: mixed.formula.filter(({ eggPart }) => !eggPart),
};

const withEggs = (egg: Partial<EggSetting>, base: Kitchen = kitchen): Kitchen => ({
  ...base,
  tins: TINS,
  egg: { ...base.egg, ...egg },
});

const VIEWS: [string, WorkingView][] = [
  ['stepping up', workingView({ kitchen: withEggs({}), recipe: mixed, ingredients: [] })],
  ['weighing', workingView({ kitchen: withEggs({ otherwise: 'weigh' }), recipe: mixed, ingredients: [] })],
  ['one bowl', workingView({ kitchen: withEggs({ shelledG: 50 }, bigBowl), recipe: mixed, ingredients: [] })],
  ['without eggs', workingView({ kitchen: withEggs({}), recipe: eggFree, ingredients: [] })],
  [
    'with a growing flavour',
    workingView({
      kitchen: withEggs({}),
      recipe: mixed,
      ingredients: [],
      flavours: {
        flavourIds: ['nut'],
        growth: 1.08,
        warnings: [],
        named: [{ id: 'nut', name: 'Nut' }],
        formula: [...mixed.formula, line('nuts', 87.2)],
      },
    }),
  ],
];

VIEWS.push([
  'with bakes from the log',
  workingView({
    kitchen: withEggs({}),
    recipe: {
      ...mixed,
      loggedFills: [
        { date: '2026-05-01', tin: round(8), count: 1, finishedHeightMm: 65, batterG: 930 },
        { date: '2026-06-01', tin: round(6), count: 2, finishedHeightMm: 62, batterG: 1010 },
        { date: '2026-07-01', tin: round(8), count: 1, finishedHeightMm: 65, batterG: 1400 },
      ],
    },
    ingredients: [],
  }),
]);

/** Half of the step that values of a unit are quantised to. */
const QUANTUM: Partial<Record<FigureUnit, number>> = { mm: 5e-4, mL: 5e-4, g: 5e-4, mm2: 5e-3 };

/** Numbers whose text is their whole value are only as far off as that value is quantised. */
const knownErrors = (step: WorkingStep): Map<string, number> =>
  new Map(
    step.inputs
      .map(({ figure }) => figure)
      .filter(
        ({ text, value }) => Math.abs(Number(text.replaceAll(',', '').replace('−', '-')) - value) < 1e-9,
      )
      .map(({ text, unit }) => [text, QUANTUM[unit] ?? 5e-7]),
  );

const stepAgrees = (step: WorkingStep): boolean =>
  agrees(
    step.operation,
    step.output.figure.text,
    knownErrors(step),
    QUANTUM[step.output.figure.unit] ?? 5e-7,
  );

const allSteps = (view: WorkingView): WorkingStep[] => [
  ...view.shared,
  ...view.rows.flatMap((row) => row.steps),
];

describe('the working', () => {
  it.each(VIEWS)('recomputes from its own text, %s', (_, view) => {
    const wrong = allSteps(view)
      .filter((step) => !stepAgrees(step))
      .map(
        (step) =>
          `${step.id}: ${step.operation} = ${evaluate(step.operation, knownErrors(step)).join(' … ')}, printed ${step.output.figure.text}`,
      );
    expect(wrong).toEqual([]);
    expect(allSteps(view).length).toBeGreaterThan(500);
  });

  it.each(VIEWS)('shows in every operation only its inputs and plain numbers, %s', (_, view) => {
    for (const step of allSteps(view)) {
      for (const input of step.inputs) expect(step.operation).toContain(input.figure.text);
    }
  });

  it('is exact enough that the interval of a result is never wider than 0.05 % of it', () => {
    for (const [, view] of VIEWS) {
      for (const step of allSteps(view)) {
        const isRounding = /round|up|down|− 1$/.test(step.operation) || step.id.endsWith('surplus');
        if (isRounding) continue;
        const [low, high] = evaluate(step.operation, knownErrors(step));
        expect(high - low, `${step.id}: ${step.operation}`).toBeLessThanOrEqual(0.0005 * Math.abs(high));
      }
    }
  });

  it('has an anchor for every row of its chart, and ends at the figures that the chart prints', () => {
    const input = { kitchen: withEggs({}), recipe: mixed, ingredients: [] };
    const [chart, working] = [tinChartView(input), workingView(input)];
    expect(working.rows.map((row) => row.anchor)).toEqual(chart.rows.map((row) => row.id));
    chart.rows.forEach((row, at) => {
      const steps = working.rows[at]?.steps ?? [];
      const output = (id: string) => steps.find((step) => step.id === id)?.output.figure.value;
      expect(output('batter-each')).toBe(row.batterEach.value);
      expect(output('batter')).toBe(row.batter.value);
      expect(output('surplus')).toBe(row.surplus.value);
      chart.columns.forEach((column, index) => {
        expect(output(column.id)).toBe(row.amounts[index]?.figure.value);
      });
    });
  });

  it('gives every step an id of its own within its row', () => {
    for (const [, view] of VIEWS) {
      for (const steps of [view.shared, ...view.rows.map((row) => row.steps)]) {
        const ids = steps.map(({ id }) => id);
        expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
      }
    }
  });
});

describe('the arithmetic that checks it', () => {
  it('knows precedence, functions, roots and grouped thousands', () => {
    expect(evaluate('1,000 + 2 × 3^2 ÷ √(4)')).toEqual([1009, 1009]);
    expect(evaluate('max(1, round(2.2 × 1)) − min(5, 3)')[0]).toBe(-1);
    expect(printed('−0.5')).toEqual([-0.55, -0.45]);
  });

  it('tells a wrong result from a right one', () => {
    expect(agrees('0.43 × 1,185.7', '509.9')).toBe(true);
    expect(agrees('2 × 255.2', '511.5')).toBe(false);
    expect(MEDIUM_G * 5).toBeCloseTo(255.2);
  });
});
