/** How much buttercream, how much ganache, for the cake from each tin? The finishing chart's own amounts. */
import type { FinishKind } from '../domain/finish.ts';
import { formatLength } from '../wording/length.ts';
import type { WallWords } from '../wording/wall/index.ts';
import type { Named } from './figure.ts';
import type { FinishingChartView } from './finishing-chart.types.ts';
import { workingPath } from './nav.ts';
import type { WallView } from './wall.types.ts';
import { figureCell, wordCell } from './wall-cells.ts';

const ON_THE_WALL: readonly FinishKind[] = ['buttercream', 'ganache'];

/** Spread uses stand on the wall; rolled sheets and brushed syrup do not. */
type WallUse = 'filling' | 'dam' | 'coating';
const isWallUse = (use: string): use is WallUse => ['filling', 'dam', 'coating'].includes(use);

function wallFinish(finish: Named, chart: FinishingChartView, words: WallWords): WallView {
  const own = words.finish;
  const uses = chart.columns.flatMap(({ finish: { id }, use, useText }, index) =>
    id === finish.id && isWallUse(use) ? [{ use, useText, index }] : [],
  );
  const first = chart.rows.find(({ cells }) => uses.some(({ index }) => cells[index]));
  return {
    id: `finish-${finish.id}`,
    title: own.title(finish.name),
    lead: first ? own.lead(formatLength(first.cakeHeight.value, 'mm'), first.layers.value) : '',
    kitchenName: chart.kitchenName,
    edition: chart.edition,
    body: {
      form: 'table',
      columns: [
        { id: 'tin', name: own.tin, unit: '', weight: 'word' },
        ...uses.map(({ use }) => ({ id: use, name: own[use], unit: own.make, weight: 'key' as const })),
      ],
      rows: chart.rows.map((row) => ({
        id: row.id,
        cells: [
          wordCell(row.tinName),
          ...uses.map(({ index }) => {
            const cell = row.cells[index];
            return cell ? figureCell(cell.make) : wordCell(words.allergens.notThere, 'nothing');
          }),
        ],
      })),
      secondGroupAt: null,
    },
    notes: [`${uses.map(({ useText }) => useText).join('. ')}.`, own.note],
    cautions: chart.finishes.find(({ id }) => id === finish.id)?.cautions ?? [],
    path: workingPath(chart.id),
    pathText: words.working,
  };
}

/** One sheet for each buttercream and ganache that is spread. */
export function wallFinishes(chart: FinishingChartView, words: WallWords): WallView[] {
  return chart.finishes
    .filter(({ kind }) => ON_THE_WALL.includes(kind))
    .filter(({ id }) => chart.columns.some(({ finish, use }) => finish.id === id && isWallUse(use)))
    .map((finish) => wallFinish(finish, chart, words));
}
