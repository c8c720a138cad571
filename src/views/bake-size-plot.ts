/** Minutes against tin size: windows with and without a core, and the baker's own bakes brought to this heat. */
import { type BakeGuidance, caseOfRow, neutralBake } from '../compute/bake/index.ts';
import type { BakeLogRow } from '../domain/bake-log.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import { quantiseMin, quantiseMm } from '../domain/quantise.ts';
import type { Tin, TinMaterial } from '../domain/tin.ts';
import type { LengthUnit } from '../domain/units.ts';
import { type BakeWords, formatBakeMinutes } from '../wording/bake/index.ts';
import { formatLength } from '../wording/length.ts';
import { dialTextsOf } from './bake-figures.ts';
import { layOutPlot } from './plot/lay-out-plot.ts';
import type { Plot } from './plot/plot.types.ts';
import type { RecipeBakes } from './recipe-bakes.ts';

/** Sizes along the axis, in the unit that most of the kitchen's tins were measured in. */
const SIZES: Record<'in' | 'cm', readonly number[]> = {
  in: [4, 5, 6, 7, 8, 9, 10, 11, 12],
  cm: [10, 12, 15, 18, 20, 23, 25, 28, 30],
};
/** From here on an axis reads better in hours. */
const HOURS_FROM_MIN = 150;

interface Sized {
  acrossMm: number;
  guidance: BakeGuidance;
}

const MM_PER = { in: 25.4, cm: 10 };

/** Inches where most tins were measured in inches, else centimetres. */
const axisUnit = ({ tins }: Kitchen): 'in' | 'cm' =>
  tins.filter(({ unit }) => unit === 'in').length * 2 > tins.length ? 'in' : 'cm';

/** What the sizes in between have in common with the kitchen's tins. */
interface Usual {
  unit: 'in' | 'cm';
  /** That most of the tins have; of equals the one that comes first. */
  material: TinMaterial | undefined;
}

function usualMaterial({ tins }: Kitchen): TinMaterial | undefined {
  const counts = new Map<TinMaterial | undefined, number>();
  for (const { material, owned } of tins) counts.set(material, (counts.get(material) ?? 0) + owned);
  const most = Math.max(...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0];
}

const usualOf = (kitchen: Kitchen): Usual => ({
  unit: axisUnit(kitchen),
  material: usualMaterial(kitchen),
});

function roundTin(acrossMm: number, depthMm: number, { unit, material }: Usual): Tin {
  const tin: Tin = {
    id: `round-${acrossMm}-mm`,
    name: formatLength(acrossMm, unit),
    owned: 0,
    unit,
    shape: { kind: 'round', acrossMm },
    depthMm,
  };
  return material === undefined ? tin : { ...tin, material };
}

/** A logged bake as it would have gone at this recipe's height and at the dial advised for its size. */
function brought(row: BakeLogRow, bakes: RecipeBakes, usual: Usual): { x: number; y: number } | null {
  const { recipe, constants } = bakes;
  const own = neutralBake(caseOfRow(row, recipe.finishedHeightMm, constants), constants);
  if (!own.ok) return null;
  const acrossMm = quantiseMm(own.value.solid.acrossMm);
  const tin = roundTin(acrossMm, recipe.finishedHeightMm, usual);
  const advice = bakes.guidance(tin, recipe.finishedHeightMm);
  const ovenC = row.core === 'none' ? advice?.plain.dialC : advice?.withCore?.dialC;
  if (ovenC === undefined) return null;
  const here = neutralBake(
    { tin, heightMm: recipe.finishedHeightMm, ovenC, core: row.core, band: false },
    constants,
  );
  if (!here.ok) return null;
  const minutes =
    constants.lagMin + ((row.minutes - constants.lagMin) * here.value.neutralMin) / own.value.neutralMin;
  return { x: quantiseMm(acrossMm / MM_PER[usual.unit]), y: quantiseMin(minutes) };
}

function tableOf(
  sizes: readonly Sized[],
  bakes: RecipeBakes,
  words: BakeWords,
  cored: boolean,
  unit: LengthUnit,
): Plot['table'] {
  const { columns, guide } = words;
  const times = (advice: BakeGuidance['plain'] | null): string[] =>
    advice === null
      ? ['–', '–', '–']
      : [
          dialTextsOf(advice.dialC, bakes.oven, words).set,
          formatBakeMinutes(advice.window.firstLookMin),
          formatBakeMinutes(advice.window.expectedByMin),
        ];
  const head = [columns.dial, columns.firstLook, columns.expectedBy];
  return {
    head: [
      guide.tin,
      ...head,
      ...(cored ? head.map((text) => `${text}, ${guide.withCore.toLowerCase()}`) : []),
    ],
    rows: sizes.map(({ acrossMm, guidance }) => [
      formatLength(acrossMm, unit),
      ...times(guidance.plain),
      ...(cored ? times(guidance.withCore) : []),
    ]),
  };
}

/** The picture; null for an oven in which nothing bakes. */
export function sizePlot(bakes: RecipeBakes, kitchen: Kitchen, words: BakeWords): Plot | null {
  const { recipe, oven } = bakes;
  const heightMm = recipe.finishedHeightMm;
  const usual = usualOf(kitchen);
  const across = usual.unit;
  const sizes = SIZES[across].flatMap((size) => {
    const acrossMm = quantiseMm(size * MM_PER[across]);
    const guidance = bakes.guidance(roundTin(acrossMm, heightMm, usual), heightMm);
    return guidance === null ? [] : [{ acrossMm, guidance }];
  });
  const last = sizes.at(-1);
  if (last === undefined) return null;
  const cored = oven.core !== 'none';
  const inHours =
    Math.max(...sizes.map(({ guidance }) => guidance.plain.window.expectedByMin)) > HOURS_FROM_MIN;
  const unit = inHours ? 60 : 1;
  const { guide } = words;
  const of = (pick: (guidance: BakeGuidance) => BakeGuidance['withCore']) =>
    sizes.flatMap(({ acrossMm, guidance }) => {
      const window = pick(guidance)?.window;
      if (window === undefined) return [];
      return [
        {
          x: quantiseMm(acrossMm / MM_PER[across]),
          low: window.firstLookMin / unit,
          y: window.likelyMin / unit,
          high: window.expectedByMin / unit,
        },
      ];
    });
  const [plain, core] = [of((guidance) => guidance.plain), of((guidance) => guidance.withCore)];
  const marksOf = (withCore: boolean) =>
    bakes.rows
      .filter((row) => (row.core !== 'none') === withCore)
      .flatMap((row) => brought(row, bakes, usual) ?? [])
      .map(({ x, y }) => ({ x, y: y / unit }));
  const [first] = sizes;
  const span = ({ guidance }: Sized): string =>
    `${formatBakeMinutes(guidance.plain.window.firstLookMin)} – ${formatBakeMinutes(guidance.plain.window.expectedByMin)}`;
  const ends =
    first === undefined
      ? ''
      : guide.tinTimeEnds(
          formatLength(first.acrossMm, across),
          span(first),
          formatLength(last.acrossMm, across),
          span(last),
        );
  return layOutPlot({
    id: 'size',
    title: guide.tinTime,
    description: `${guide.tinTimeText(formatLength(heightMm, 'mm'))} ${ends}`,
    xLabel: guide.across(across),
    yLabel: inHours ? guide.hours : guide.minutes,
    yAtLeast: [0, 0],
    bands: [
      { text: `${guide.withoutCore}: ${guide.window}`, tone: 'first', points: plain },
      ...(cored
        ? [{ text: `${guide.withCore}: ${guide.window}`, tone: 'second' as const, points: core }]
        : []),
    ],
    lines: [
      { text: `${guide.withoutCore}: ${guide.likely}`, stroke: 'solid', points: plain },
      ...(cored
        ? [{ text: `${guide.withCore}: ${guide.likely}`, stroke: 'dashed' as const, points: core }]
        : []),
    ],
    marks: [
      { text: guide.yourBakes, shape: 'diamond' as const, points: marksOf(false) },
      { text: guide.yourBakesCore, shape: 'triangle' as const, points: cored ? marksOf(true) : [] },
    ].filter(({ points }) => points.length > 0),
    levels: [],
    table: tableOf(sizes, bakes, words, cored, across),
  });
}
