/** All wall references of a kitchen: egg ladders, oven dials, tins, finishes and allergens. */
import type { Content } from '../domain/content.ts';
import { wordsFor } from '../wording/locales/index.ts';
import { wallWordsFor } from '../wording/wall/index.ts';
import { finishingCharts } from './finishing-chart.ts';
import type { TinChartView } from './tin-chart.types.ts';
import type { WallView } from './wall.types.ts';
import { wallAllergens } from './wall-allergens.ts';
import { wallEggLadder } from './wall-egg-ladder.ts';
import { wallFinishes } from './wall-finish.ts';
import { wallOvenDials } from './wall-oven-dials.ts';
import { mainChart, wallTins } from './wall-tins.ts';

/** A ladder for each plain recipe; flavours stand on the wall only where no plain one is asked for. */
export function wallReferences(content: Content, charts: readonly TinChartView[]): WallView[] {
  const { locale } = content.kitchen;
  const words = wallWordsFor(locale);
  const plain = charts.filter(({ flavours }) => flavours.length === 0);
  const shown = plain.length > 0 ? plain : charts;
  const main = mainChart(shown, content.bakeLog);
  return [
    ...shown.flatMap((chart) => wallEggLadder(chart, words) ?? []),
    wallOvenDials(content.kitchen, words),
    ...(main === null ? [] : [wallTins(main, words)]),
    ...finishingCharts(content).flatMap((chart) => wallFinishes(chart, words)),
    wallAllergens(content, wordsFor(locale), words),
  ];
}
