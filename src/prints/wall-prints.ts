/** All wall references of a kitchen: each on its large papers, and on home paper to be joined. */
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { WallSize } from '../domain/printable.ts';
import { wallInOunces } from '../views/in-ounces.ts';
import type { TinChartView } from '../views/tin-chart.types.ts';
import { wallReferences } from '../views/wall-references.ts';
import { tilingWordsFor } from '../wording/tiling/index.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { tiledPrint } from './tiling/tiled-print.ts';
import { wantedWallPapers } from './wall/wall-paper.ts';
import { wallReferencePrint } from './wall-reference.ts';

export interface WallPrintsSource {
  content: Content;
  charts: readonly TinChartView[];
  style: HouseStyle;
  metrics: Metrics;
  mass: 'g' | 'oz';
  /** Null for those that go with the kitchen's papers. */
  wallSizes: readonly WallSize[] | null;
}

/** The sheet first, then its tiles. */
export function wallPrints({ content, charts, style, metrics, mass, wallSizes }: WallPrintsSource): Print[] {
  const { locale, paper: papers, siteUrl } = content.kitchen;
  const options = siteUrl === undefined ? {} : { siteUrl };
  const views = wallReferences(content, charts).map((view) => (mass === 'oz' ? wallInOunces(view) : view));
  const context = sheetContext(style, metrics);
  const words = tilingWordsFor(locale);
  return views.flatMap((view) =>
    wantedWallPapers(papers, wallSizes).flatMap((paper) => {
      const sheet = wallReferencePrint(view, style, metrics, paper, locale, options);
      return [sheet, tiledPrint(sheet, { sheetName: paper.name, paper: paper.homePaper, words }, context)];
    }),
  );
}
