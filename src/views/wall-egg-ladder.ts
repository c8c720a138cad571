/** How much batter do so many eggs make, and what does it fill? The chart's egg ladder, for the wall. */
import type { WallWords } from '../wording/wall/index.ts';
import { workingPath } from './nav.ts';
import type { TinChartView } from './tin-chart.types.ts';
import type { WallCell, WallView } from './wall.types.ts';
import { figureCell, wordCell } from './wall-cells.ts';

/** A count stays with its tin. */
const together = (fill: string): string => fill.replaceAll(/(\d) × /g, '$1\u00a0×\u00a0');

const fillCell = (fill: string | undefined, words: WallWords): WallCell =>
  fill === undefined ? wordCell(words.allergens.notThere, 'nothing') : wordCell(together(fill));

/** From two metres nobody reads more than the best fill. Null for a recipe without eggs. */
export function wallEggLadder(chart: TinChartView, words: WallWords): WallView | null {
  const { ladder } = chart;
  if (ladder === null) return null;
  const own = words.eggLadder;
  return {
    id: `egg-ladder-${chart.id}`,
    title: own.title(chart.title),
    lead: own.lead(chart.eggSizeText),
    kitchenName: chart.kitchenName,
    edition: chart.edition,
    body: {
      form: 'table',
      columns: [
        { id: 'eggs', name: own.eggs, unit: '', weight: 'key' },
        { id: 'batter', name: own.batter, unit: words.grams, weight: 'key' },
        { id: 'fills', name: own.fills, unit: '', weight: 'word' },
      ],
      rows: ladder.rungs.map((rung) => ({
        id: String(rung.eggs.value),
        cells: [figureCell(rung.eggs), figureCell(rung.batter), fillCell(rung.fills[0]?.text, words)],
      })),
      secondGroupAt: null,
    },
    notes: [own.note],
    cautions: chart.cautions.filter(({ code }) => code === 'raw-batter'),
    path: workingPath(chart.id),
    pathText: words.working,
  };
}
