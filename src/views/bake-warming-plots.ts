/** How a chosen tin warms: its middle with and without a core, and its edge against its middle. */
import { type BakeAdvice, boilingPointC, type CurvePoint, temperatureCurve } from '../compute/bake/index.ts';
import type { Kitchen } from '../domain/kitchen.ts';
import type { Tin } from '../domain/tin.ts';
import { type BakeWords, heatScaleOf, heatText, onScale } from '../wording/bake/index.ts';
import { formatNumber } from '../wording/number.ts';
import { dialTextsOf } from './bake-figures.ts';
import { layOutPlot } from './plot/lay-out-plot.ts';
import type { Plot } from './plot/plot.types.ts';
import { heightInTinMm, type RecipeBakes } from './recipe-bakes.ts';

const STEPS = 48;
const TABLE_ROWS = 8;

/** The widest round tin that takes this recipe to its full height, else the widest that there is. */
export function chosenTin(kitchen: Kitchen, bakes: RecipeBakes): Tin | null {
  const { recipe } = bakes;
  const acrossMm = ({ shape }: Tin): number => (shape.kind === 'round' ? shape.acrossMm : 0);
  const rounds = kitchen.tins.filter(({ shape, owned }) => shape.kind === 'round' && owned > 0);
  const full = rounds.filter((tin) => heightInTinMm(recipe, tin) === recipe.finishedHeightMm);
  const from = full.length > 0 ? full : rounds.length > 0 ? rounds : kitchen.tins;
  return from.reduce<Tin | null>((best, tin) => (best && acrossMm(best) >= acrossMm(tin) ? best : tin), null);
}

function curveOf(
  advice: BakeAdvice,
  { constants }: RecipeBakes,
  altitudeM: number,
  times: { stepMin: number; untilMin: number },
): CurvePoint[] {
  const { neutral, window, dialC } = advice;
  const timeFactor = (window.likelyMin - constants.lagMin) / neutral.seriesMin;
  const clock = { ovenC: dialC, timeFactor, boilingC: boilingPointC(altitudeM) };
  return temperatureCurve(neutral.solid, clock, constants, times);
}

/** Both pictures of a tin; none where nothing bakes. */
export function warmingPlots(bakes: RecipeBakes, tin: Tin, altitudeM: number, words: BakeWords): Plot[] {
  const heightMm = heightInTinMm(bakes.recipe, tin);
  const guidance = bakes.guidance(tin, heightMm);
  if (guidance === null) return [];
  const { plain, withCore } = guidance;
  const { guide } = words;
  const scale = heatScaleOf(bakes.oven);
  const heat = (celsius: number): number => onScale(celsius, scale);
  const degrees = (celsius: number): string => formatNumber(heat(celsius), 0);
  const stepMin = Math.max(1, Math.ceil(plain.window.expectedByMin / STEPS));
  const times = { stepMin, untilMin: stepMin * STEPS };
  const [bare, cored] = [plain, withCore].map((advice) =>
    advice ? curveOf(advice, bakes, altitudeM, times) : [],
  );
  const [points = [], corePoints = []] = [bare, cored];
  const [dial, coreDial] = [plain, withCore].map((advice) =>
    advice ? dialTextsOf(advice.dialC, bakes.oven, words).set : '',
  );
  const every = Math.max(1, Math.round(points.length / TABLE_ROWS));
  const told = points
    .map((point, at) => ({ point, core: corePoints[at] }))
    .filter((_, at) => at % every === 0);
  const { centreC: doneC } = bakes.constants;
  const done = { y: heat(doneC), text: guide.done(heatText(doneC, scale)) };
  const shared = {
    xLabel: guide.minutes,
    yLabel: guide.temperature(scale),
    yAtLeast: [heat(20), heat(100)] as const,
    marks: [],
    levels: [done],
  };
  const middle = points.map(({ minutes: x, centreC }) => ({ x, y: heat(centreC) }));
  const coreLine = {
    text: `${guide.middleCore}, ${coreDial}`,
    stroke: 'dashed' as const,
    points: corePoints.map(({ minutes: x, centreC }) => ({ x, y: heat(centreC) })),
  };
  return [
    layOutPlot({
      ...shared,
      id: 'warming',
      title: guide.curves(tin.name),
      description: guide.curvesText(tin.name, dial ?? ''),
      bands: [],
      lines: [
        { text: `${guide.middle}, ${dial}`, stroke: 'solid', points: middle },
        ...(withCore === null ? [] : [coreLine]),
      ],
      table: {
        head: [guide.minutes, guide.middle, ...(withCore === null ? [] : [guide.middleCore])],
        rows: told.map(({ point, core }) => [
          formatNumber(point.minutes, 0),
          degrees(point.centreC),
          ...(core === undefined ? [] : [degrees(core.centreC)]),
        ]),
      },
    }),
    layOutPlot({
      ...shared,
      id: 'edge',
      title: guide.edgeAgainstMiddle(tin.name),
      description: guide.edgeText(tin.name, dial ?? ''),
      bands: [
        {
          text: guide.between,
          tone: 'first',
          points: points.map(({ minutes, centreC, edgeC }) => ({
            x: minutes,
            low: heat(centreC),
            high: heat(edgeC),
          })),
        },
      ],
      lines: [
        { text: guide.middle, stroke: 'solid', points: middle },
        {
          text: guide.edge,
          stroke: 'dotted',
          points: points.map(({ minutes: x, edgeC }) => ({ x, y: heat(edgeC) })),
        },
      ],
      table: {
        head: [guide.minutes, guide.middle, guide.edge],
        rows: told.map(({ point }) => [
          formatNumber(point.minutes, 0),
          degrees(point.centreC),
          degrees(point.edgeC),
        ]),
      },
    }),
  ];
}
