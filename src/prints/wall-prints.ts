/** All wall references of a kitchen: each on its large papers, and on home paper to be joined. */
import type { Content } from '../domain/content.ts';
import type { HouseStyle } from '../domain/house-style.ts';
import type { Locale } from '../domain/kitchen.ts';
import type { WallSize } from '../domain/printable.ts';
import { inHomeUnits } from '../views/home-units.ts';
import { wallInOunces } from '../views/in-ounces.ts';
import type { TinChartView } from '../views/tin-chart.types.ts';
import type { WallView } from '../views/wall.types.ts';
import { wallReferences } from '../views/wall-references.ts';
import { tilingWordsFor } from '../wording/tiling/index.ts';
import { sheetContext } from './sheet/sheet-context.ts';
import type { Metrics, Print } from './sheet/surface.ts';
import { tiledPrint } from './tiling/tiled-print.ts';
import { type WallPaper, wantedWallPapers } from './wall/wall-paper.ts';
import { wallReferencePrint } from './wall-reference.ts';

export interface WallSource {
  content: Content;
  charts: readonly TinChartView[];
  mass: 'g' | 'oz';
  /** Null for those that go with the kitchen's papers. */
  wallSizes: readonly WallSize[] | null;
}

/** One reference on one large paper. */
export interface WallAsk {
  view: WallView;
  paper: WallPaper;
  lang: Locale;
  options: { siteUrl?: string };
}

/** Every reference on every large paper that is wanted. */
export function wallAsks({ content, charts, mass, wallSizes }: WallSource): WallAsk[] {
  const { locale: lang, paper: papers, siteUrl } = content.kitchen;
  const options = siteUrl === undefined ? {} : { siteUrl };
  const views = wallReferences(content, charts).map((view) =>
    inHomeUnits(mass === 'oz' ? wallInOunces(view) : view, content.kitchen, mass),
  );
  return views.flatMap((view) =>
    wantedWallPapers(papers, wallSizes).map((paper) => ({ view, paper, lang, options })),
  );
}

/** The sheet first, then its tiles. */
export function wallPrints(
  { view, paper, lang, options }: WallAsk,
  style: HouseStyle,
  metrics: Metrics,
): Print[] {
  const sheet = wallReferencePrint(view, style, metrics, paper, lang, options);
  const tiling = { sheetName: paper.name, paper: paper.homePaper, words: tilingWordsFor(lang) };
  return [sheet, tiledPrint(sheet, tiling, sheetContext(style, metrics))];
}
